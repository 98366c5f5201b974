using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Loads;
using Sightglass.Paper.Document;
using Sightglass.Paper.Pdf;

namespace Sightglass.Paper.Papers;

/// <summary>The wheels of a system for a sheet: what each may carry, with a rule to write on what it does.</summary>
internal static class LoadPlates
{
    /// <param name="book">Whose system.</param>
    /// <param name="system">A name of the book's.</param>
    /// <param name="sheet">What it is for.</param>
    /// <param name="notice">At the foot of the sheet.</param>
    /// <returns>One picture; none where the system has no axles that something weighs on.</returns>
    public static IEnumerable<PaperBlock.Picture> Of(ClassBook book, string system, PaperSheet sheet, string notice)
    {
        // In large print its letters would not be large enough beside each other.
        if (sheet.Large || !LoadInput.Has(book, system) || LoadInput.Of(book, system) is not { Axles.IsEmpty: false } input)
        {
            yield break;
        }

        PdfRoom room = PdfRoom.Of(sheet, PaperLook.Sheet, notice);
        LoadOptions options = new() { WriteIn = true };
        LoadState state = LoadState.Unknown with { ShowTruth = false };
        yield return new PaperBlock.Picture(LoadDrawing.Render(LoadLayout.Of(input, state, options), state), Say.With($"Wheel loads of {system}: {string.Join(", ", input.Axles.Select(a => a.Label))}."))
        {
            Caption = PaperText.Strong(Say.It("Wheel loads.")).And(" " + LoadWords.Key(input) + " " + Say.It("Write beside each what its scale shows.")),
            Scale = Math.Min(1, room.Width / options.Width),
        };
    }
}
