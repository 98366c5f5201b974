using System.Collections.Immutable;

namespace Sightglass.Drawing.Charts;

/// <summary>One value over another, with the place at which somebody stands on it.</summary>
public sealed record CurveChart
{
    /// <summary>What runs along: name and unit, as written below the axis.</summary>
    public required string Across { get; init; }

    /// <summary>What follows: name and unit, as written over the axis.</summary>
    public required string Upwards { get; init; }

    /// <summary>x rising; a value that is no number is a gap.</summary>
    public required ImmutableArray<(double X, double Y)> Points { get; init; }

    /// <summary>What was put in and what came out.</summary>
    public required (double X, double Y) Mark { get; init; }

    /// <summary>Both of them as people read them: <c>79 mph</c> and <c>798.3 m</c>.</summary>
    public required (string X, string Y) MarkWords { get; init; }

    /// <summary>Least and greatest value to show; what is beyond is cut.</summary>
    public required (double From, double To) Up { get; init; }

    /// <summary>Whether only the points themselves can be: they are drawn as dots.</summary>
    public bool IsCounted { get; init; }

    /// <summary>Pixels.</summary>
    public required double Width { get; init; }

    public required double Height { get; init; }
}
