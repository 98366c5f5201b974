namespace Sightglass.Drawing.Loads;

/// <summary>How a plan of loads is drawn.</summary>
public sealed record LoadOptions
{
    /// <summary>Its front is at the top, for narrow pages; else to the left. Default false.</summary>
    public bool Upright { get; init; }

    /// <summary>Pixels from edge to edge. Default 860.</summary>
    public double Width { get; init; } = 860;

    /// <summary>A rule beside each bar of which nothing is known, to write its load on: for paper. Default false.</summary>
    public bool WriteIn { get; init; }

    /// <summary>For the width of a phone, so that its words stay as large as they must be.</summary>
    public static LoadOptions Narrow { get; } = new() { Upright = true, Width = 352 };
}
