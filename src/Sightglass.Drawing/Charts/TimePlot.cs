using System.Collections.Immutable;

namespace Sightglass.Drawing.Charts;

/// <summary>A run as a picture that stands alone: charts and bands one below the other over the same time, or whatever runs along.</summary>
public sealed record TimePlot
{
    public required string Title { get; init; }

    /// <summary>Below the title.</summary>
    public string Lead { get; init; } = "";

    /// <summary>One for each unit; their own widths and stretches are not used.</summary>
    public ImmutableArray<TimeChart> Charts { get; init; } = [];

    public ImmutableArray<TimeBand> Bands { get; init; } = [];

    /// <summary>First and last second, or x.</summary>
    public required (double From, double To) Across { get; init; }

    /// <summary>Whether x is seconds, written as a clock below the bands. Default true.</summary>
    public bool IsClock { get; init; } = true;

    /// <summary>Unit of x where it is no clock.</summary>
    public string AcrossUnit { get; init; } = "";

    /// <summary>Pixels. Default 1000.</summary>
    public double Width { get; init; } = 1000;
}
