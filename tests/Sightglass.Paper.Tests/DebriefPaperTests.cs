using Sightglass.Basics.Language;
using Sightglass.Paper.Document;
using Sightglass.Paper.Papers;
using Sightglass.Paper.Pdf;

namespace Sightglass.Paper.Tests;

public sealed class DebriefPaperTests
{
    /// <summary>Issue: the sheet is printed on two pages, on either paper and in either language.</summary>
    [Theory]
    [InlineData("debrief", "en")]
    [InlineData("debrief-a4", "en")]
    [InlineData("debrief", "es")]
    [InlineData("debrief-a4", "es")]
    public void Sheet_OfADrill_IsTwoPages(string name, string language)
    {
        using IDisposable spoken = Tongue.Find(language)!.Speak();
        Assert.Equal(2, PdfPaper.Write(Papers.Of(name), Papers.Sheet(name)).Pages);
    }

    /// <summary>What it was made from stands on it: the record, its hash, the version of the rules; and who decides.</summary>
    [Fact]
    public void Sheet_OfADrill_SaysWhatItWasMadeFrom()
    {
        PaperDocument paper = Papers.Of("debrief");
        string words = string.Join(' ', paper.Blocks.SelectMany(PaperWordsOf.Block));
        Assert.Contains("drill-0007.jsonl", words, StringComparison.Ordinal);
        Assert.Matches("with the hash [0-9a-f]{16}", words);
        Assert.Contains("version 1 of the rules", words, StringComparison.Ordinal);
        Assert.Contains(DebriefWords.StandsIn, words, StringComparison.Ordinal);
        Assert.Contains("Not passed", words, StringComparison.Ordinal);
        Assert.Contains("Look at the foot of every compartment", words, StringComparison.Ordinal);
    }
}
