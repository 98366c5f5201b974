using System.Collections.Immutable;
using Sightglass.Network.Springs;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Gear;

/// <summary>Running gear of the book, between the slots that its weights and springs follow from and those that tell how it stands.</summary>
internal sealed class GearResolver(string name, Func<Suspension> build, ResolverInput[] inputs, GearOutput[] outputs) : Resolver(name)
{
    private readonly Lazy<Suspension> _suspension = new(build);

    public Suspension Suspension => _suspension.Value;

    public ReadOnlyMemory<ResolverInput> Inputs => inputs;

    public ReadOnlySpan<GearOutput> Outputs => outputs;

    public override ImmutableArray<Slot> Sets { get; } = [.. outputs.Select(o => o.Slot)];

    public override ResolverRoom NewRoom() => new GearRoom(this);
}
