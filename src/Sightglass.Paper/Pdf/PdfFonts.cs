using System.Collections.Concurrent;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace Sightglass.Paper.Pdf;

/// <summary>Fonts of paper and how wide words are in them.</summary>
internal static class PdfFonts
{
    private const double Measured = 1000;

    private static readonly ConcurrentDictionary<(PaperFace, char), double> s_advances = new();
    private static readonly XPdfFontOptions s_embedded = new(PdfFontEncoding.Unicode);
    private static readonly Lock s_measuring = new();
    private static readonly XGraphics s_ruler = Ruler();

    public static XFont Font(PaperFace face, double size) => new(face.ToString(), size, XFontStyleEx.Regular, s_embedded);

    /// <summary>The face nearest to what a drawing asks for.</summary>
    public static PaperFace FaceOf(bool serif, bool italic, int weight) =>
        serif ? (italic ? PaperFace.SerifItalic400 : weight >= 500 ? PaperFace.Serif600 : PaperFace.Serif400)
        : weight >= 650 ? PaperFace.Sans700 : weight >= 550 ? PaperFace.Sans600 : PaperFace.Sans400;

    /// <summary>What is put on the page for a text: spaces and signs that the typefaces lack are drawn by their nearest.</summary>
    public static string Drawn(string text) =>
        text.Replace('\u202F', '\u00A0').Replace('\u2009', '\u00A0').Replace('\u2011', '-').Replace("\u00AD", "", StringComparison.Ordinal);

    /// <summary>Width in the unit of the size.</summary>
    public static double Width(string text, PaperFace face, double size)
    {
        double sum = 0;
        foreach (char c in Drawn(text))
        {
            sum += s_advances.GetOrAdd((face, c), Advance);
        }

        return sum * size / Measured;
    }

    private static double Advance((PaperFace Face, char Character) key)
    {
        lock (s_measuring)
        {
            return s_ruler.MeasureString(key.Character.ToString(), Font(key.Face, Measured)).Width;
        }
    }

    private static XGraphics Ruler()
    {
        GlobalFontSettings.FontResolver ??= new PaperFontFiles();
        return XGraphics.CreateMeasureContext(new XSize(Measured, Measured), XGraphicsUnit.Point, XPageDirection.Downwards);
    }
}
