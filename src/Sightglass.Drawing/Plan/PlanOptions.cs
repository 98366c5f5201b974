using System.Collections.Immutable;
using Sightglass.Basics.Language;

namespace Sightglass.Drawing.Plan;

/// <summary>What a plan view shows.</summary>
public sealed record PlanOptions
{
    public string? CurrentPlace { get; init; }

    public ImmutableHashSet<string> Visited { get; init; } = [];

    /// <summary>Width in pixels. Default 336.</summary>
    public double Width { get; init; } = 336;

    /// <summary>Size of labels in pixels; numbers at stops are a little smaller. Default 13.</summary>
    public double LabelSize { get; init; } = 13;

    /// <summary>A way of its own instead of the one round the machine: places one after the other, each joined to the next. Empty for none.</summary>
    public ImmutableArray<string> Way { get; init; } = [];

    /// <summary>Numbers at the stops of that way.</summary>
    public ImmutableDictionary<string, string> Numbers { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Words at the current place, or empty.</summary>
    public string You { get; init; } = Say.It("you");
}
