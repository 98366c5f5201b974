using System.Collections.Immutable;

namespace Sightglass.Drawing.Timelines;

/// <summary>One lane: what lasts as bars, what happens as marks, a number as a line.</summary>
/// <param name="Name">What it shows.</param>
/// <param name="IsTruth">Known to the instructor alone.</param>
public sealed record TimelineLane(string Name, bool IsTruth = false)
{
    public ImmutableArray<TimelineBar> Bars { get; init; } = [];

    public ImmutableArray<TimelineMark> Marks { get; init; } = [];

    public TimelineTrace? Trace { get; init; }
}
