using System.Collections.Immutable;

namespace Sightglass.Drawing.Lanes;

/// <summary>What one person went through, in lanes over the same time: what was true, what instruments showed, where they stood, what they did.</summary>
public sealed record LaneChart
{
    /// <summary>What a reader who does not see it is told.</summary>
    public required string Title { get; init; }

    /// <summary>From the top.</summary>
    public ImmutableArray<Lane> Lanes { get; init; } = [];

    /// <summary>What came about at a moment, through all lanes.</summary>
    public ImmutableArray<LaneEvent> Events { get; init; } = [];

    /// <summary>Seconds since the start; a heavy line stands there.</summary>
    public required double Now { get; init; }

    /// <summary>Seconds at the right edge. Default: a little beyond <see cref="Now"/>.</summary>
    public double? To { get; init; }

    /// <summary>Pixels. Default 560.</summary>
    public double Width { get; init; } = 560;
}
