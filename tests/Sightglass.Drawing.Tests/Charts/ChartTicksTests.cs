using CsCheck;
using Sightglass.Drawing.Charts;

namespace Sightglass.Drawing.Tests.Charts;

public sealed class ChartTicksTests
{
    [Theory]
    [InlineData(0, 100, 5, new double[] { 0, 20, 40, 60, 80, 100 })]
    [InlineData(60, 85, 6, new double[] { 60, 65, 70, 75, 80, 85 })]
    [InlineData(-0.3, 0.3, 3, new double[] { -0.2, 0, 0.2 })]
    public void Round_ARange_IsRoundNumbers(double from, double to, int most, double[] expected)
    {
        double[] ticks = [.. ChartTicks.Round(from, to, most)];
        Assert.Equal(expected.Length, ticks.Length);
        Assert.All(expected.Zip(ticks), t => Assert.Equal(t.First, t.Second, 12));
    }

    [Fact]
    public void Round_AnyRange_LiesInsideAndIsFew() => Gen.Select(Gen.Double[-1e6, 1e6], Gen.Double[1e-3, 1e6], Gen.Int[2, 12]).Holds((from, span, most) =>
    {
        var ticks = ChartTicks.Round(from, from + span, most);
        Assert.InRange(ticks.Length, 0, most + 1);
        Assert.All(ticks, t => Assert.InRange(t, from - (span * 1e-6), from + (span * (1 + 1e-6))));
    });

    [Theory]
    [InlineData(0, 1800, 6, 300)]
    [InlineData(0, 50, 6, 10)]
    [InlineData(0, 36000, 6, 7200)]
    public void Clock_ARange_StepsByWholeTimes(double from, double to, int most, double step)
    {
        var ticks = ChartTicks.Clock(from, to, most);
        Assert.Equal(step, ticks[1] - ticks[0]);
    }

    [Theory]
    [InlineData(5, "0:05")]
    [InlineData(3760, "1:02:40")]
    [InlineData(-90, "−1:30")]
    public void Clock_Seconds_AreWrittenAsAClock(double seconds, string text) => Assert.Equal(text, ChartNumber.Clock(seconds));

    [Theory]
    [InlineData(12345.6, 0, "12\u202F346")]
    [InlineData(1258, 0, "1258")]
    [InlineData(-0.04, 1, "0.0")]
    [InlineData(-1.25, 1, "−1.3")]
    public void Text_ANumber_HasNarrowThousandsAndARealMinus(double value, int decimals, string text) => Assert.Equal(text, ChartNumber.Text(value, decimals));
}
