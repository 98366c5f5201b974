using System.Collections.Immutable;
using Sightglass.Network.Phasors;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Feeders;

/// <summary>A feeder of the book, between the slots that it follows from and those that tell what it came to.</summary>
internal sealed class FeederResolver(string name, Func<LoadFlow> build, Terminal frame, ResolverInput[] inputs, FeederOutput[] outputs, FeederLimit[] limits) : Resolver(name)
{
    private readonly Lazy<LoadFlow> _flow = new(build);

    /// <summary>Compiled when first asked for: who only checks a book solves nothing.</summary>
    public LoadFlow Flow => _flow.Value;

    public Terminal Frame => frame;

    public ReadOnlyMemory<ResolverInput> Inputs => inputs;

    public ReadOnlySpan<FeederOutput> Outputs => outputs;

    public ReadOnlySpan<FeederLimit> Limits => limits;

    public override ImmutableArray<Slot> Sets { get; } = [.. outputs.Select(o => o.Slot)];

    public override ResolverRoom NewRoom() => new FeederRoom(this);
}
