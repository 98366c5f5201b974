using System.Collections.Immutable;

namespace Sightglass.Drawing.Plan;

/// <summary>What a plan view shows.</summary>
public sealed record PlanOptions
{
    public string? CurrentPlace { get; init; }

    public ImmutableHashSet<string> Visited { get; init; } = [];

    /// <summary>Width in pixels. Default 336.</summary>
    public double Width { get; init; } = 336;

    /// <summary>Words at the current place, or empty.</summary>
    public string You { get; init; } = "you";
}
