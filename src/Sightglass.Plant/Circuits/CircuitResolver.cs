using System.Collections.Immutable;
using Sightglass.Network.Circuits;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Circuits;

/// <summary>A circuit of the book, between the slots that it follows from and those that tell what it came to.</summary>
internal sealed class CircuitResolver(string name, Func<Circuit> build, ResolverInput[] inputs, CircuitOutput[] outputs) : Resolver(name)
{
    private readonly Lazy<Circuit> _circuit = new(build);

    /// <summary>Compiled when first asked for: who only checks a book solves nothing.</summary>
    public Circuit Circuit => _circuit.Value;

    public ReadOnlyMemory<ResolverInput> Inputs => inputs;

    public ReadOnlySpan<CircuitOutput> Outputs => outputs;

    public override ImmutableArray<Slot> Sets { get; } = [.. outputs.Select(o => o.Slot)];

    public override ResolverRoom NewRoom() => new CircuitRoom(this);

    public override FormattableString? Telling(int index, double value) => (outputs[index].Kind, value > 0.5) switch
    {
        (CircuitOutputKind.Up, true) => $"{outputs[index].Name} picks up.",
        (CircuitOutputKind.Up, false) => $"{outputs[index].Name} drops.",
        (CircuitOutputKind.Chatters, true) => $"{outputs[index].Name} chatters.",
        _ => null,
    };
}
