using System.Collections.Immutable;

namespace Sightglass.Drawing.Lanes;

/// <summary>A quantity over time.</summary>
/// <param name="Name">Said at its left.</param>
/// <param name="IsTruth">Hidden truth.</param>
/// <param name="Points">Seconds and value, in the order of time.</param>
/// <param name="Scale">Values at the lane's foot and head.</param>
/// <param name="End">Said of the last value.</param>
public sealed record LaneCurve(string Name, bool IsTruth, ImmutableArray<(double X, double Y)> Points, (double From, double To) Scale, string End) : Lane(Name, IsTruth)
{
    internal override double Height => 46;
}
