using Sightglass.Paper.Document;

namespace Sightglass.Paper.Tests;

/// <summary>Factors: NIST SP 811, appendix B.8, from memory (1 US gal = 3.785 412 L, 1 psi = 6.894 757 kPa, 1 ft = 0.3048 m).</summary>
public sealed class UnitWordsTests
{
    [Theory]
    [InlineData("The pump moves about 15 L/min, no more.", "The pump moves about 15 L/min (4.0 US gal/min), no more.")]
    [InlineData("7300 L", "7300 L (1 930 US gal)")]
    [InlineData("stands 75 mm above", "stands 75 mm (3.0 in) above")]
    [InlineData("130 to 140 psi", "130 to 140 psi")]
    [InlineData("−40 °C", "−40 °C (−40 °F)")]
    [InlineData("4 of 12 m²", "4 of 12 m²")]
    public void In_UsUnits_StandInBracketsAfterOthers(string text, string wanted) => Assert.Equal(wanted, Plain(UnitWords.In(text, PaperUnits.Us)));

    [Theory]
    [InlineData("stored at 130 to 140 psi for brakes", "stored at 130 to 140 psi (896 to 965 kPa) for brakes")]
    [InlineData("10 mph", "10 mph (16 km/h)")]
    [InlineData("15 L/min", "15 L/min")]
    public void In_SiUnits_StandInBracketsAfterOthers(string text, string wanted) => Assert.Equal(wanted, Plain(UnitWords.In(text, PaperUnits.Si)));

    /// <summary>The text of a card is what was tried: not a letter of it changes.</summary>
    [Fact]
    public void In_AnyUnits_LeaveTheCardAlone()
    {
        PaperDocument card = Papers.Of("card-psi");
        string[] before = [.. Steps(card)];
        Assert.Equal(before, Steps(card.In(PaperUnits.Si)));
        Assert.Contains(before, l => l.Contains("psi", StringComparison.Ordinal));
    }

    private static IEnumerable<string> Steps(PaperDocument paper) => paper.Blocks.SelectMany(PaperWordsOf.Block);

    private static string Plain(string text) => text.Replace('\u00A0', ' ').Replace('\u202F', ' ');
}
