namespace Sightglass.Paper.Photos;

/// <summary>How a picture's file is written.</summary>
public enum PhotoSort
{
    Svg,
    Jpeg,
    Png,

    /// <summary>Shown on pages; the library of PDFs does not read it.</summary>
    WebP,
}
