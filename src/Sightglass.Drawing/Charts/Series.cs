using System.Collections.Immutable;

namespace Sightglass.Drawing.Charts;

/// <summary>One line of a chart.</summary>
/// <param name="Name">What it is, such as <c>fuel gauge</c>; truth says <c>truth</c> by itself.</param>
/// <param name="Points">Seconds (or whatever runs along the chart) and value, ascending.</param>
/// <param name="IsTruth">Hidden truth: violet, dashed, with the word.</param>
public sealed record Series(string Name, ImmutableArray<(double X, double Y)> Points, bool IsTruth = false)
{
    /// <summary>As written at the end of the line; made from the last value where it is null.</summary>
    public string? End { get; init; }
}
