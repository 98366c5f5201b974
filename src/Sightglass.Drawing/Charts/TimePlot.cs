using System.Collections.Immutable;

namespace Sightglass.Drawing.Charts;

/// <summary>A run as a picture that stands alone: charts and bands one below the other over the same time.</summary>
public sealed record TimePlot
{
    public required string Title { get; init; }

    /// <summary>Below the title.</summary>
    public string Lead { get; init; } = "";

    /// <summary>One for each unit; their own widths and stretches are not used.</summary>
    public ImmutableArray<TimeChart> Charts { get; init; } = [];

    public ImmutableArray<TimeBand> Bands { get; init; } = [];

    /// <summary>First and last second.</summary>
    public required (double From, double To) Across { get; init; }

    /// <summary>Pixels. Default 1000.</summary>
    public double Width { get; init; } = 1000;
}
