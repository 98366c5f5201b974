using System.Collections.Immutable;

namespace Sightglass.Drawing.Charts;

/// <summary>A chart of values over time.</summary>
public sealed record TimeChart
{
    /// <summary>Said to people who cannot see it.</summary>
    public required string Title { get; init; }

    public required ImmutableArray<Series> Series { get; init; }

    public ImmutableArray<ChartEvent> Events { get; init; } = [];

    /// <summary>Unit of the values, written behind them.</summary>
    public string Unit { get; init; } = "";

    /// <summary>First and last x; by default those of the points.</summary>
    public (double From, double To)? Across { get; init; }

    /// <summary>Lowest and highest value; by default round numbers round the points.</summary>
    public (double From, double To)? Up { get; init; }

    /// <summary>Whether x is seconds, written as a clock. Default true.</summary>
    public bool IsClock { get; init; } = true;

    /// <summary>Unit of x where it is no clock.</summary>
    public string AcrossUnit { get; init; } = "";

    /// <summary>Pixels. Default 580 × 190.</summary>
    public double Width { get; init; } = 580;

    public double Height { get; init; } = 190;

    /// <summary>Whether names stand in rows over the plot, each with its line, as a narrow page needs it. Default false: where the lines end.</summary>
    public bool NamesAbove { get; init; }

    /// <summary>Whether hidden truth is drawn. Default true.</summary>
    public bool Truth { get; init; } = true;
}
