using System.Collections.Immutable;
using Sightglass.Network.Compile;
using Sightglass.Network.Phasors;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Feeders;

/// <summary>A slot that a feeder sets.</summary>
internal sealed record FeederOutput(Slot Slot, FeederOutputKind Kind)
{
    /// <summary>Of a voltage; of a line's power, its first end.</summary>
    public Busbar? Bus { get; init; }

    public Line Line { get; init; }

    public Input Input { get; init; }

    /// <summary>The place of a limit among those of the feeder.</summary>
    public int Limit { get; init; } = -1;

    public ImmutableArray<Load> Loads { get; init; } = [];
}
