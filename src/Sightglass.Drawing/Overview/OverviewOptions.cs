using System.Collections.Immutable;

namespace Sightglass.Drawing.Overview;

/// <summary>What a small strip shows.</summary>
public sealed record OverviewOptions
{
    public string? CurrentPlace { get; init; }

    public ImmutableHashSet<string> Visited { get; init; } = [];

    /// <summary>Pixels a metre. Default 14.</summary>
    public double Scale { get; init; } = 14;

    /// <summary>The part of the large strip that is in view, as shares of its width 0…1; null for no frame.</summary>
    public (double From, double To)? Window { get; init; }

    /// <summary>Whether stops stand below the rail. Default true.</summary>
    public bool Stops { get; init; } = true;

    /// <summary>Whether the person stands at the current place, as in a list of many machines. Default false: only the stop is larger.</summary>
    public bool Person { get; init; }
}
