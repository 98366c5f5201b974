using Sightglass.Basics.Numbers;

namespace Sightglass.Basics.Tests.Numbers;

public sealed class ScalarTests
{
    [Theory]
    [InlineData(1.0, 0)]
    [InlineData(1.999, 0)]
    [InlineData(2.0, 1)]
    [InlineData(0.75, -1)]
    [InlineData(1e300, 996)]
    [InlineData(2.2250738585072014e-308, -1022)]
    public void ExponentOf_NormalNumber_IsTheWholeLogarithm(double x, double exponent)
    {
        Assert.Equal(exponent, Scalar.ExponentOf(new(x)).V);
        Assert.Equal(x, Scalar.ScaleByPowerOfTwo(Scalar.SignificandOf(new(x)), new(exponent)).V);
    }

    [Theory]
    [InlineData(1.5, 10, 1536)]
    [InlineData(-1.5, -1, -0.75)]
    [InlineData(1.0, 1023, 8.98846567431158e307)]
    [InlineData(8.98846567431158e307, -2045, 2.2250738585072014e-308)]
    public void ScaleByPowerOfTwo_WholeNumber_IsExact(double x, double n, double expected) =>
        Assert.Equal(expected, Scalar.ScaleByPowerOfTwo(new(x), new(n)).V);

    [Fact]
    public void CbrtSeed_NormalNumber_IsWithinSixPercent()
    {
        for (int i = 0; i < 100_000; i++)
        {
            double x = Eight.Positive(i / 100_000.0);
            Assert.InRange(Scalar.CbrtSeed(new(x)).V / Math.Cbrt(x), 0.94, 1.06);
        }
    }

    [Fact]
    public void MinAndMax_NotANumber_GiveTheSecond()
    {
        Assert.Equal(2, Scalar.Min(new(double.NaN), new(2)).V);
        Assert.Equal(2, Scalar.Max(new(double.NaN), new(2)).V);
        Assert.True(double.IsNaN(Scalar.Min(new(2), new(double.NaN)).V));
    }
}
