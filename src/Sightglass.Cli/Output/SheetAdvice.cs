using System.Globalization;
using Sightglass.Paper.Document;
using Sightglass.Paper.Pdf;

namespace Sightglass.Cli.Output;

/// <summary>What is said of a drawing whose names come out too small to be read well.</summary>
internal static class SheetAdvice
{
    /// <param name="look">Of the paper.</param>
    /// <param name="sheet">That it was written for.</param>
    /// <param name="letters">The least size of words on its drawings, pt; infinite where there is none.</param>
    /// <param name="on">What that comes to on another sheet: how a drawing lies on it is its own.</param>
    /// <returns>Null where they can be read.</returns>
    public static string? Of(PaperLook look, PaperSheet sheet, double letters, Func<PaperSheet, double> on)
    {
        if (letters >= PdfFile.Readable)
        {
            return null;
        }

        static double Area(PaperSheet s) => s.Width * s.Height;
        PaperSheet? larger = PaperSheet.All.Where(s => s.Fits(look) && Area(s) > Area(sheet)).OrderBy(Area).Select(s => s with { Large = sheet.Large }).FirstOrDefault(s => on(s) >= PdfFile.Readable);
        string take = larger is null ? "no sheet here is large enough: look at it on the page" : $"take a larger sheet: --size {larger.Name}";
        return string.Create(CultureInfo.InvariantCulture, $"Names on the drawing come out at {letters:0.0} pt, and {PdfFile.Readable:0.0} is the least that is read well; {take}.");
    }
}
