using System.Collections.Immutable;

namespace Sightglass.Drawing.Lanes;

/// <summary>What was done, each at its moment.</summary>
public sealed record LaneMarks(string Name, ImmutableArray<LaneMark> Marks) : Lane(Name, false)
{
    internal override double Height => 34;
}
