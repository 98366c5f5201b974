namespace Sightglass.Drawing.Svg;

/// <summary>What a drawing carries with it.</summary>
public enum Embedding
{
    /// <summary>Nothing: it stands in a page that has the sheet.</summary>
    None,

    /// <summary>The colours and classes; text falls back to the reader's own fonts.</summary>
    Style,

    /// <summary>Colours, classes and both typefaces: looks the same everywhere, about 250–450 kB.</summary>
    StyleAndFonts,
}
