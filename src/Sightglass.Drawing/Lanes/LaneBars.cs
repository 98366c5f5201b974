using System.Collections.Immutable;

namespace Sightglass.Drawing.Lanes;

/// <summary>Where somebody was, or what was so: a bar for as long; between bars a dotted line.</summary>
public sealed record LaneBars(string Name, bool IsTruth, ImmutableArray<LaneBar> Bars) : Lane(Name, IsTruth)
{
    internal override double Height => 40;
}
