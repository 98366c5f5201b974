namespace Sightglass.Drawing.Timelines;

/// <summary>How what lasts is drawn.</summary>
public enum TimelineBarSort
{
    /// <summary>A box with its words: a place where somebody stood.</summary>
    Box,

    /// <summary>A dotted line: on the way.</summary>
    Way,

    /// <summary>A heavy line: something wanted holds.</summary>
    Holds,
}
