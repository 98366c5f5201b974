namespace Sightglass.Drawing.Timelines;

/// <summary>How what lasts is drawn.</summary>
public enum TimelineBarSort
{
    /// <summary>A box with its words: a place where somebody stood.</summary>
    Box,

    /// <summary>A box that is lit: where somebody stands now.</summary>
    Here,

    /// <summary>A hatched box, dashed: something that is so and that only the instructor knows.</summary>
    Truth,

    /// <summary>A dotted line: on the way.</summary>
    Way,

    /// <summary>A heavy line: something wanted holds.</summary>
    Holds,
}
