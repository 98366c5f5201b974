using Sightglass.Cli.Output;
using Sightglass.Paper.Document;

namespace Sightglass.Cli.Tests;

/// <summary>Sheets by their lengths (ISO 216: A4 297, A3 420, A2 594 mm; letter 279, tabloid 432 mm).</summary>
public sealed class SheetAdviceTests
{
    [Theory]
    [InlineData("letter", 7.5, null)]
    [InlineData("letter", 7.4, "a4")] // 7.4 × 297 / 279 = 7.9
    [InlineData("letter", 5.2, "a3")] // × 420 / 279 = 7.8, and A4 is not enough
    [InlineData("letter", 4.9, "tabloid")] // × 432 / 279 = 7.6, where A3 gives 7.4
    [InlineData("letter", 4.0, "a2")]
    [InlineData("letter", 1.0, "a2")] // none does: the largest
    [InlineData("a3", 7.4, "tabloid")] // × 432 / 420 = 7.6
    public void Of_NamesOfASize_NamesTheSmallestSheetThatDoes(string sheet, double letters, string? named)
    {
        string? advice = SheetAdvice.Of(PaperLook.Sheet, PaperSheet.Find(sheet)!, letters);
        if (named is null)
        {
            Assert.Null(advice);
        }
        else
        {
            Assert.EndsWith($"take a larger sheet: --size {named}.", advice, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Of_TheLargestSheet_LeadsToThePage() =>
        Assert.Equal("Names on the drawing come out at 6.9 pt, and 7.5 is the least that is read well; no sheet here is larger: look at it on the page.", SheetAdvice.Of(PaperLook.Poster, PaperSheet.A2, 6.94));
}
