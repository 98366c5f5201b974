using System.Collections.Immutable;
using Sightglass.Paper.Document;

namespace Sightglass.Paper.Pdf;

/// <summary>What a page of a paper has room for between its head and its foot, pt.</summary>
/// <param name="Type">Its sizes of type.</param>
/// <param name="Furniture">Size of the words at head and foot.</param>
/// <param name="Notice">The notice at the foot in lines; none in large print, where it is read at the end.</param>
/// <param name="Width">Of a frame.</param>
/// <param name="Height">Of a frame.</param>
/// <param name="Head">Height of the head.</param>
/// <param name="Foot">Height of the foot.</param>
internal sealed record PdfRoom(PdfType Type, double Furniture, ImmutableArray<ImmutableArray<PdfSegment>> Notice, double Width, double Height, double Head, double Foot)
{
    private const double PointsPerMillimetre = 72 / 25.4;
    private const double LeastFurniture = 7.6;

    /// <summary>Room beside the notice for the day and the number of the page.</summary>
    private const double BesideNotice = 70;

    public static double Mm(double millimetres) => millimetres * PointsPerMillimetre;

    public static PdfRoom Of(PaperSheet sheet, PaperLook look, string notice)
    {
        PdfType type = PdfType.Of(look, sheet.Large);
        bool framed = look != PaperLook.Pocket;
        double size = sheet.Large ? type.Small : LeastFurniture;
        double whole = Mm(sheet.Width - (2 * sheet.Margin));
        ImmutableArray<ImmutableArray<PdfSegment>> lines = framed && !sheet.Large ? PdfLines.Break(notice, PaperFace.Sans400, size, whole - BesideNotice) : [];
        double head = framed ? (size * 1.8) + 12 : 0;
        double foot = framed ? (Math.Max(1, lines.Length) * size * 1.25) + 10 : size * 1.5;
        return new(type, size, lines, Mm((sheet.Width / sheet.Panels) - (2 * sheet.Margin)), Mm(sheet.Height - (2 * sheet.Margin)) - head - foot, head, foot);
    }

    /// <summary>The most height of a drawing with so many lines under it on a page of its own.</summary>
    public double ForDrawing(int caption) => Height - (Type.Gap * 0.6) - (caption * Type.Caption * 1.25);

    /// <summary>The same under the paper's title, the word above it and the opening sentence.</summary>
    public double UnderTitle(string lead, int caption) =>
        ForDrawing(caption) - (Type.Small * PdfType.Leading) - Type.Gap - (Type.Title * 1.28) - Type.Gap - (PdfLines.Break(lead, PaperFace.Serif400, Type.Lead, Width).Length * Type.Lead * PdfType.Leading) - (Type.Body * 1.4);
}
