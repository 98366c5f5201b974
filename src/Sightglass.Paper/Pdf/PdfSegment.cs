namespace Sightglass.Paper.Pdf;

/// <summary>Words of one face beside each other in a line.</summary>
/// <param name="Text">As drawn.</param>
/// <param name="Face">Its typeface.</param>
/// <param name="X">From the line's start, pt.</param>
internal readonly record struct PdfSegment(string Text, PaperFace Face, double X);
