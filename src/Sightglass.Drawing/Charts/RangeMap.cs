using System.Collections.Immutable;

namespace Sightglass.Drawing.Charts;

/// <summary>Every case over two ranges.</summary>
/// <param name="Title">Said to people who cannot see it.</param>
public sealed record RangeMap(string Title, MapAxis Across, MapAxis Up, ImmutableArray<MapPoint> Points)
{
    /// <summary>Names of the mechanisms, for the legend; empty for none.</summary>
    public ImmutableArray<string> Mechanisms { get; init; } = [];

    /// <summary>Lines where failing begins, each with the polygon beyond it hatched: the line's points, then the other corners.</summary>
    public ImmutableArray<(ImmutableArray<(double X, double Y)> Line, ImmutableArray<(double X, double Y)> Beyond)> Bounds { get; init; } = [];

    public double Width { get; init; } = 470;

    public double Height { get; init; } = 300;
}
