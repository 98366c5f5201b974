using PdfSharp.Pdf;
using Sightglass.Paper.Document;

namespace Sightglass.Paper.Pdf;

/// <summary>Writes a paper as a tagged PDF: language, title, structure, what pictures show, drawings as lines. The same bytes for the same paper and day.</summary>
public static class PdfPaper
{
    /// <summary>The file, with what it came to.</summary>
    /// <param name="paper">What is written.</param>
    /// <param name="sheet">The sheet; the usual one of its look where null.</param>
    public static PdfFile Write(PaperDocument paper, PaperSheet? sheet = null)
    {
        ArgumentNullException.ThrowIfNull(paper);
        sheet ??= PaperSheet.Default(paper.Look);
        sheet = paper.Lying ? sheet.Turned : sheet;
        int count;
        using (PdfDocument counted = Lay(paper, sheet, 0).Document)
        {
            count = counted.PageCount;
        }

        PdfPages pages = Lay(paper, sheet, count);
        using PdfDocument pdf = pages.Document;
        DateTime day = (paper.Printed ?? DateOnly.MinValue.AddYears(1999)).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        pdf.Info.Title = paper.Title;
        pdf.Info.Subject = paper.Machine;
        pdf.Info.Creator = "Sightglass";
        pdf.Info.CreationDate = day;
        using MemoryStream bytes = new();
        pdf.Save(bytes);
        return new PdfFile(PdfSettled.Settle(bytes.ToArray(), day), count, pages.LeastLetters);
    }

    private static PdfPages Lay(PaperDocument paper, PaperSheet sheet, int count)
    {
        PdfPages pages = new(paper, sheet, count);
        PdfPieces pieces = new(pages, pages.Type, sheet.Large);
        PaperBlock[] last = sheet.Large && paper.Notice.Length > 0 ? [new PaperBlock.Paragraph(paper.Notice, ParagraphSort.Small)] : [];
        PdfFlow.Lay(pages, [.. paper.Blocks.Concat(last).SelectMany(b => pieces.Of(b, pages.Frame.Width))]);
        return pages;
    }
}
