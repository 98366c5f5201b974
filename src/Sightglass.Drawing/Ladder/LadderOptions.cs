namespace Sightglass.Drawing.Ladder;

/// <summary>How a circuit is laid out and drawn.</summary>
public sealed record LadderOptions
{
    /// <summary>Size of letters in pixels. Default 13.</summary>
    public double LabelSize { get; init; } = 13;

    /// <summary>A row is no wider than this where it can be helped, pixels. Default 1240.</summary>
    public double MostWide { get; init; } = 1240;

    /// <summary>A row is no higher than this where it can be helped, pixels: its parts move together. Default: as high as it is.</summary>
    public double MostHigh { get; init; } = double.PositiveInfinity;

    /// <summary>Whether what is operated is a switch or a button that a keyboard reaches. Default true.</summary>
    public bool Interactive { get; init; } = true;

    /// <summary>Whether elements for hidden truth are in the drawing at all: false on a trainee's page. Default true.</summary>
    public bool Truth { get; init; } = true;
}
