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
    /// <returns>Null where they can be read.</returns>
    public static string? Of(PaperLook look, PaperSheet sheet, double letters)
    {
        if (letters >= PdfFile.Readable)
        {
            return null;
        }

        string larger = Larger(look, sheet, letters) is { } named ? $"take a larger sheet: --size {named}" : "no sheet here is larger: look at it on the page";
        return string.Create(CultureInfo.InvariantCulture, $"Names on the drawing come out at {letters:0.0} pt, and {PdfFile.Readable:0.0} is the least that is read well; {larger}.");
    }

    /// <summary>The smallest sheet on which words of this size come out well; the largest there is where none does, null where this is it.</summary>
    private static string? Larger(PaperLook look, PaperSheet sheet, double letters)
    {
        static double Long(PaperSheet s) => Math.Max(s.Width, s.Height);
        PaperSheet[] larger = [.. PaperSheet.All.Where(s => s.Fits(look) && Long(s) > Long(sheet)).OrderBy(Long)];
        return (Array.Find(larger, s => letters * Long(s) / Long(sheet) >= PdfFile.Readable) ?? larger.LastOrDefault())?.Name;
    }
}
