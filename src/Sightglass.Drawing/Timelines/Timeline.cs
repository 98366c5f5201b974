using System.Collections.Immutable;

namespace Sightglass.Drawing.Timelines;

/// <summary>What happened over one stretch of time, sorts of thing one below the other.</summary>
public sealed record Timeline
{
    /// <summary>Said to people who cannot see it.</summary>
    public required string Title { get; init; }

    /// <summary>First and last second.</summary>
    public required (double From, double To) Across { get; init; }

    public required ImmutableArray<TimelineLane> Lanes { get; init; }

    /// <summary>Moments that concern all of them, each a line from top to bottom; the words of those that stand first here have room first.</summary>
    public ImmutableArray<TimelineMoment> Moments { get; init; } = [];

    /// <summary>Second at which it stands now, a heavy line; null where it is over.</summary>
    public double? Now { get; init; }

    /// <summary>Pixels. Default 1100.</summary>
    public double Width { get; init; } = 1100;

    /// <summary>Whether names stand over their lanes, as a narrow page needs it. Default false: to the left.</summary>
    public bool NamesAbove { get; init; }

    /// <summary>Pixels for names that stand to the left. Default 150.</summary>
    public double Names { get; init; } = 150;

    /// <summary>Whether the ends of a number's scale stand to the right. Default true.</summary>
    public bool Scales { get; init; } = true;
}
