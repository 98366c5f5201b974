namespace Sightglass.Paper.Document;

/// <summary>What a paragraph is for.</summary>
public enum ParagraphSort
{
    Body,

    /// <summary>A line over the title.</summary>
    Eyebrow,

    /// <summary>The sentence that opens a paper.</summary>
    Lead,

    /// <summary>Labels and sentences about the paper itself.</summary>
    Small,

    /// <summary>A head line of a card.</summary>
    Head,

    /// <summary>What must not be overlooked: that a card is a draft.</summary>
    Loud,
}
