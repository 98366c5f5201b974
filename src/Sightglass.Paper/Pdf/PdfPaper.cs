using PdfSharp.Pdf;
using Sightglass.Paper.Document;

namespace Sightglass.Paper.Pdf;

/// <summary>Writes a paper as a tagged PDF: language, title, structure, what pictures show, drawings as lines. The same bytes for the same paper and day.</summary>
public static class PdfPaper
{
    /// <summary>Lines that stay with a stamp or a code: a step before the last tells where one is.</summary>
    private const int WithStamp = 2;

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
        PaperBlock[] blocks = [.. paper.Blocks, .. last];
        PdfFlow.Lay(pages, [.. blocks.SelectMany((b, i) => Kept(pieces.Of(b, pages.Frame.Width), i + 1 < blocks.Length ? blocks[i + 1] : null))]);
        return pages;
    }

    /// <summary>A stamp or a code stands on no page alone: what is read before it goes with it.</summary>
    private static IEnumerable<PdfPiece> Kept(IEnumerable<PdfPiece> pieces, PaperBlock? next)
    {
        if (next is not (PaperBlock.Box or PaperBlock.Code))
        {
            return pieces;
        }

        PdfPiece[] all = [.. pieces];
        int read = 0;
        for (int i = all.Length - 1; i >= 0 && read < WithStamp; i--)
        {
            all[i] = all[i] with { WithNext = true };
            read += all[i].Height > 0 ? 1 : 0;
        }

        return all;
    }
}
