using System.Collections.Immutable;

namespace Sightglass.Drawing.Lanes;

/// <summary>One lane: what lasts as bars, what happens as marks, a number as a line.</summary>
/// <param name="Name">What it shows.</param>
/// <param name="IsTruth">Known to the instructor alone.</param>
public sealed record TimeLane(string Name, bool IsTruth = false)
{
    public ImmutableArray<LaneBar> Bars { get; init; } = [];

    public ImmutableArray<LaneMark> Marks { get; init; } = [];

    public LaneTrace? Trace { get; init; }
}
