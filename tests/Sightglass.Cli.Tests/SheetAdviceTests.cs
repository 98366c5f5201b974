using Sightglass.Cli.Output;
using Sightglass.Paper.Document;

namespace Sightglass.Cli.Tests;

/// <summary>Sheets by their lengths (ISO 216: A4 297, A3 420, A2 594 mm; letter 279, tabloid 432 mm).</summary>
public sealed class SheetAdviceTests
{
    [Theory]
    [InlineData("letter", 7.5, null)]
    [InlineData("letter", 7.4, "a4")] // 7.4 × 297 / 279 = 7.9
    [InlineData("letter", 5.2, "tabloid")] // × 432 / 279 = 8.1, and A4 is not enough; tabloid is smaller than A3
    [InlineData("letter", 4.9, "tabloid")] // × 432 / 279 = 7.6
    [InlineData("letter", 4.0, "a2")]
    [InlineData("letter", 1.0, "")] // none does
    public void Of_NamesOfASize_NamesTheSmallestSheetThatDoes(string sheet, double letters, string? named)
    {
        PaperSheet asked = PaperSheet.Find(sheet)!;
        string? advice = SheetAdvice.Of(PaperLook.Sheet, asked, letters, s => letters * Long(s) / Long(asked));
        if (named is null)
        {
            Assert.Null(advice);
        }
        else
        {
            Assert.EndsWith(named.Length == 0 ? "no sheet here is large enough: look at it on the page." : $"take a larger sheet: --size {named}.", advice, StringComparison.Ordinal);
        }

        static double Long(PaperSheet s) => Math.Max(s.Width, s.Height);
    }

    [Fact]
    public void Of_TheLargestSheet_LeadsToThePage() =>
        Assert.Equal("Names on the drawing come out at 6.9 pt, and 7.5 is the least that is read well; no sheet here is large enough: look at it on the page.", SheetAdvice.Of(PaperLook.Poster, PaperSheet.A2, 6.94, _ => 100));
}
