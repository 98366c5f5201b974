using Sightglass.Basics.Draws;

namespace Sightglass.Basics.Tests.Draws;

public sealed class DrawTests
{
    private static readonly DrawKey s_key = DrawKey.Of("fill of forward compartment");

    [Fact]
    public void Uniform_SameQuestion_SameAnswer()
    {
        Assert.Equal(Draw.Uniform(7, 3, "fill"), Draw.Uniform(7, 3, DrawKey.Of("fill")));
        Assert.NotEqual(Draw.Uniform(7, 3, "fill"), Draw.Uniform(8, 3, "fill"));
        Assert.NotEqual(Draw.Uniform(7, 3, "fill"), Draw.Uniform(7, 4, "fill"));
        Assert.NotEqual(Draw.Uniform(7, 3, "fill"), Draw.Uniform(7, 3, "full"));
    }

    [Fact]
    public void Uniform_ManyCases_FillsTheRangeEvenly()
    {
        const int Cells = 64;
        const int Draws = 64_000;
        int[] count = new int[Cells];
        for (int i = 0; i < Draws; i++)
        {
            double u = Draw.Uniform(1, (ulong)i, s_key);
            Assert.True(u is >= 0 and < 1);
            count[(int)(u * Cells)]++;
        }

        double chiSquare = count.Sum(c => (c - 1000.0) * (c - 1000.0) / 1000.0);
        Assert.InRange(chiSquare, 30, 110);
    }

    [Fact]
    public void Uniform_NeighbouringCasesAndNames_AreUncorrelated()
    {
        const int Draws = 20_000;
        DrawKey other = DrawKey.Of("fill of forward compartmenu");
        (double byCase, double byName, double bySeed) = (0, 0, 0);
        for (ulong i = 0; i < Draws; i++)
        {
            double u = Draw.Uniform(1, i, s_key) - 0.5;
            byCase += u * (Draw.Uniform(1, i + 1, s_key) - 0.5);
            byName += u * (Draw.Uniform(1, i, other) - 0.5);
            bySeed += u * (Draw.Uniform(2, i, s_key) - 0.5);
        }

        double fourSigma = 4 * Math.Sqrt(Draws) / 12;
        Assert.All([byCase, byName, bySeed], sum => Assert.InRange(sum, -fourSigma, fourSigma));
    }

    [Fact]
    public void Between_Range_StaysInside()
    {
        for (ulong i = 0; i < 10_000; i++)
        {
            Assert.InRange(Draw.Between(1, i, s_key, 0.1, 0.1 + 1e-16), 0.1, 0.1 + 1e-16);
            Assert.InRange(Draw.Between(1, i, s_key, -3, 5), -3, 5);
        }

        Assert.Equal(0.3, Draw.Between(1, 1, s_key, 0.3, 0.3));
    }

    [Fact]
    public void OneOf_Choices_AreEquallyLikely()
    {
        int[] count = new int[3];
        for (ulong i = 0; i < 30_000; i++)
        {
            count[Draw.OneOf(1, i, s_key, 3)]++;
        }

        Assert.All(count, c => Assert.InRange(c, 10_000 - 330, 10_000 + 330));
        Assert.Throws<ArgumentOutOfRangeException>(() => Draw.OneOf(1, 1, s_key, 0));
    }

    [Fact]
    public void Happens_ChanceZeroAndOne_IsSure()
    {
        Assert.All(Enumerable.Range(0, 1000), i => Assert.True(Draw.Happens(1, (ulong)i, s_key, 1) && !Draw.Happens(1, (ulong)i, s_key, 0)));
    }

    [Fact]
    public void At_Indices_GiveDifferentKeys() =>
        Assert.Equal(1000, Enumerable.Range(0, 1000).Select(i => s_key.At(i)).Distinct().Count());
}
