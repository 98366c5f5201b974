namespace Sightglass.Drawing.Svg;

/// <summary>How a drawing is written.</summary>
public sealed record SvgOptions
{
    /// <summary>Default: nothing is embedded, the page has the sheet.</summary>
    public Embedding Embedding { get; init; } = Embedding.None;

    /// <summary>Only for a drawing that stands alone.</summary>
    public Theme Theme { get; init; } = Theme.Reader;

    /// <summary>Put before every id, so that several drawings can stand in one page. Letters, digits and hyphens.</summary>
    public string IdPrefix { get; init; } = "";

    /// <summary>Paints the paper behind a drawing that stands alone. Default true.</summary>
    public bool Paper { get; init; } = true;

    public static SvgOptions Inline { get; } = new();

    public static SvgOptions Alone { get; } = new() { Embedding = Embedding.StyleAndFonts };
}
