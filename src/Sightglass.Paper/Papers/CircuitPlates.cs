using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Ladder;
using Sightglass.Paper.Document;
using Sightglass.Paper.Pdf;

namespace Sightglass.Paper.Papers;

/// <summary>The circuits of a system for a sheet: laid out as wide as it is, row by row, with letters that can be read.</summary>
internal static class CircuitPlates
{
    /// <param name="book">Whose system.</param>
    /// <param name="system">A name of the book's.</param>
    /// <param name="sheet">What it is for.</param>
    /// <param name="notice">At the foot of the sheet.</param>
    /// <returns>One picture a row; none where the system has no circuit.</returns>
    public static IEnumerable<PaperBlock.Picture> Of(ClassBook book, string system, PaperSheet sheet, string notice)
    {
        LadderInput input = LadderInput.Of(book, system);
        if (input.Parts.IsEmpty)
        {
            yield break;
        }

        PdfRoom room = PdfRoom.Of(sheet, PaperLook.Sheet, notice);
        LadderOptions options = new() { Interactive = false, Truth = false };
        // The smallest letters are 0.92 of the labels.
        double scale = (sheet.Large ? room.Type.Small : PdfFile.Readable) / (options.LabelSize * 0.92);
        options = options with { MostWide = room.Width / scale, MostHigh = room.ForDrawing(sheet.Large ? 4 : 2) / scale };
        LadderLayout layout = LadderLayout.Of(input, options);
        LadderState state = LadderState.Usual(book);
        for (int i = 0; i < layout.Rows.Length; i++)
        {
            LadderLayout row = layout.Row(i);
            bool all = layout.Rows.Length == 1;
            string parts = string.Join(", ", row.Rungs.Select(r => r.Part.Label).Distinct(StringComparer.Ordinal));
            PaperText caption = PaperText.Strong(all ? Say.It("Plate.") : Say.With($"Plate, part {i + 1} of {layout.Rows.Length}."));
            yield return new PaperBlock.Picture(LadderDrawing.Render(row, state, options), all ? Say.With($"System diagram of {system}: {parts}.") : Say.With($"System diagram of {system}, part {i + 1} of {layout.Rows.Length}: {parts}."))
            {
                Caption = i == 0 ? caption.And(" " + Say.It("Switches and breakers stand as usual, contacts as they do without current.")) : caption,
                // Only a row that no sheet holds has smaller letters.
                Scale = Math.Min(scale, room.Width / row.Sheet.Width),
            };
        }
    }
}
