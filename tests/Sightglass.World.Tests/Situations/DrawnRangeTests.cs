using Sightglass.Basics.Draws;
using Sightglass.Basics.Quantities;
using Sightglass.World.Situations;

namespace Sightglass.World.Tests.Situations;

public sealed class DrawnRangeTests
{
    private const int Cases = 3000;

    /// <summary>Each of three as likely: 1000 ± 26 (a binomial deviation, any text of statistics); five deviations are allowed.</summary>
    [Fact]
    public void Value_WholeRange_EachNumberAsLikelyAndNoneBetween()
    {
        DrawnRange range = new(4, "open phase, phase", 1, 3, UnitTable.Find("1"), []) { IsWhole = true };
        double[] drawn = [.. Enumerable.Range(0, Cases).Select(c => range.Value(new CaseDraws(7, (ulong)c)))];
        Assert.Equal([1, 2, 3], drawn.Distinct().Order());
        Assert.All(drawn.GroupBy(d => d), g => Assert.InRange(g.Count(), 870, 1130));
        Assert.True(range.Varies);
    }

    [Fact]
    public void Value_WholeWithoutWidth_IsThatNumber() =>
        Assert.Equal(2, new DrawnRange(4, "open phase, phase", 2, 2, UnitTable.Find("1"), []) { IsWhole = true }.Value(new CaseDraws(7, 1)));

    /// <summary>Whatever is not whole goes on along the straight line from end to end.</summary>
    [Fact]
    public void Value_OtherRange_IsTheShareOfItsWidth()
    {
        DrawnRange range = new(4, "fill", 1, 3, UnitTable.Find("1"), []);
        CaseDraws draws = new(7, 12);
        Assert.Equal(Draw.Between(draws.Uniform(4), 1, 3), range.Value(draws));
    }
}
