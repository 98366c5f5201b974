using Sightglass.Paper.Document;
using Sightglass.Paper.Papers;

namespace Sightglass.Paper.Tests;

/// <summary>What a gauge on a drawing works out is said in the units that are asked for too; factor as in <see cref="UnitWordsTests"/>.</summary>
public sealed class DrawingUnitsTests
{
    [Theory]
    [InlineData(PaperUnits.Us, true)]
    [InlineData(PaperUnits.Si, false)]
    [InlineData(PaperUnits.Book, false)]
    public void System_InUnits_SaysThemOnItsDrawing(PaperUnits units, bool gallons)
    {
        string drawn = string.Concat(SystemPaper.Of(Papers.Book, "fuel", units: units).Blocks.OfType<PaperBlock.Picture>().Select(p => p.Svg)).Replace('\u00A0', ' ').Replace('\u202F', ' ');
        Assert.Contains("5000 L", drawn, StringComparison.Ordinal);
        Assert.Equal(gallons, drawn.Contains("1 320 US gal", StringComparison.Ordinal));
    }
}
