using System.Collections.Immutable;

namespace Sightglass.Drawing.Charts;

/// <summary>A gauge with its past: the trace runs into its own scale, the number stands to the right.</summary>
public sealed record TraceGauge
{
    /// <summary>Said to people who cannot see it.</summary>
    public required string Title { get; init; }

    /// <summary>Seconds and reading; empty where nobody can read it.</summary>
    public ImmutableArray<(double X, double Y)> Reading { get; init; } = [];

    /// <summary>Seconds and hidden truth, in the unit of the gauge; empty for a trainee.</summary>
    public ImmutableArray<(double X, double Y)> Truth { get; init; } = [];

    /// <summary>Ends of the scale.</summary>
    public required double From { get; init; }

    public required double To { get; init; }

    /// <summary>The grey bar on the scale.</summary>
    public (double From, double To)? Normal { get; init; }

    public string Unit { get; init; } = "";

    /// <summary>Decimals that the instrument shows.</summary>
    public int Decimals { get; init; }

    /// <summary>What the instrument shows in steps of: truth within a step of the reading is not told. Default 0.</summary>
    public double Step { get; init; }

    /// <summary>How much of the past is drawn, seconds. Default a quarter of an hour.</summary>
    public double Seconds { get; init; } = 900;

    /// <summary>What else is hidden from its reader, in words; empty for nothing, and for a trainee.</summary>
    public string TruthNote { get; init; } = "";

    /// <summary>From this difference on it says by how much it misleads; null for never.</summary>
    public double? Misleading { get; init; }
}
