namespace Sightglass.Drawing.Svg;

/// <summary>In which light a drawing that stands alone is shown.</summary>
public enum Theme
{
    /// <summary>As the reader's system has it; black on white in print.</summary>
    Reader,
    Light,
    Dark,

    /// <summary>Black on white, media by pattern.</summary>
    Print,
}
