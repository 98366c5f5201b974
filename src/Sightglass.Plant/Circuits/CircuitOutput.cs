using Sightglass.Network.Circuits;
using Sightglass.Network.Compile;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Circuits;

/// <summary>A slot that a circuit sets: a voltage between two nodes, the current of a branch, or whether a coil is up or comes to no rest.</summary>
internal sealed record CircuitOutput(Slot Slot, CircuitOutputKind Kind)
{
    public Node Plus { get; init; }

    public Node Minus { get; init; }

    public Branch Branch { get; init; }

    public Coil Coil { get; init; }

    /// <summary>Of a slope: the electromotive force.</summary>
    public Input Force { get; init; }

    /// <summary>Of a coil: whose it is.</summary>
    public string Name { get; init; } = "";
}
