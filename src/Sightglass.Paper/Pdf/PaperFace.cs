namespace Sightglass.Paper.Pdf;

/// <summary>The typefaces of paper: one file of the project each.</summary>
internal enum PaperFace
{
    Sans400,
    Sans600,
    Sans700,
    Serif400,
    Serif600,
    SerifItalic400,
}
