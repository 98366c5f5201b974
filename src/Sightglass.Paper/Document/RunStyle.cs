namespace Sightglass.Paper.Document;

/// <summary>How words stand out from those beside them.</summary>
public enum RunStyle
{
    Plain,
    Strong,

    /// <summary>Italic: an answer, a caption, what is not to be read aloud.</summary>
    Aside,
}
