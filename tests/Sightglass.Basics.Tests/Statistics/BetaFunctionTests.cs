using CsCheck;
using MathNet.Numerics;
using Sightglass.Basics.Statistics;

namespace Sightglass.Basics.Tests.Statistics;

/// <summary>Expected values: mpmath with 40 digits, by numerical integration of the density (the last row by its hypergeometric series).</summary>
public sealed class BetaFunctionTests
{
    [Theory]
    [InlineData(0.5, 0.5, 0.3, -0.996931211020778085)]
    [InlineData(1, 300, 0.001, -1.3497967065742573)]
    [InlineData(3, 48, 0.13713763, -0.025317803120231054)]
    [InlineData(60.5, 940.5, 0.05, -2.57172300352109128)]
    [InlineData(60.5, 940.5, 0.08, -0.00792620318785500825)]
    [InlineData(10000.0, 1000000.0, 0.0101, -0.0224628684312452792)]
    [InlineData(2, 1000000.0, 1e-07, -5.36470396509170025)]
    [InlineData(5000000.0, 5000000.0, 0.5003, -0.0293153026417729548)]
    [InlineData(200.5, 0.5, 0.9, -23.2180966931111586)]
    [InlineData(40, 2000, 0.0001, -174.505721213027104)]
    public void LogRegularized_Integral_IsIt(double a, double b, double x, double expected) =>
        Assert.Equal(expected, BetaFunction.LogRegularized(a, b, x), Math.Max(1, Math.Abs(expected)) * 1e-12);

    [Theory]
    [InlineData(0.5, 0.5, 1.14472988584940017)]
    [InlineData(1, 300, -5.70378247465620106)]
    [InlineData(1000000.0, 0.5, -6.33539021105743696)]
    [InlineData(12.5, 3000, -81.3691735362061909)]
    public void Log_GammaFunctions_AreIt(double a, double b, double expected) =>
        Assert.Equal(expected, BetaFunction.Log(a, b), Math.Abs(expected) * 1e-13);

    [Fact]
    public void Regularized_AnyParameters_AgreesWithAnotherLibrary() =>
        Gen.Select(Gen.Double[0.5, 500], Gen.Double[0.5, 500], Gen.Double[0.001, 0.999]).Holds((a, b, x) =>
        {
            double other = SpecialFunctions.BetaRegularized(a, b, x);
            Assert.Equal(other, BetaFunction.Regularized(a, b, x), (other * 1e-9) + 1e-14);
        });

    [Fact]
    public void Regularized_Mirrored_AddsToOne() =>
        Gen.Select(Gen.Double[0.5, 1e5], Gen.Double[0.5, 1e5], Gen.Double[0, 1]).Holds((a, b, x) =>
            Assert.Equal(1, BetaFunction.Regularized(a, b, x) + BetaFunction.Regularized(b, a, 1 - x), 1e-9));

    [Fact]
    public void Quantile_Regularized_ComesBack() =>
        Gen.Select(Gen.Double[0.5, 1e4], Gen.Double[0.5, 1e4], Gen.Double[1e-6, 1 - 1e-6]).Holds((a, b, chance) =>
            Assert.Equal(chance, BetaFunction.Regularized(a, b, BetaFunction.Quantile(a, b, chance)), 1e-10));

    [Fact]
    public void Regularized_OutsideItsRange_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => BetaFunction.Regularized(0, 1, 0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => BetaFunction.Regularized(1, 1, double.NaN));
        Assert.Equal(0, BetaFunction.Regularized(2, 3, 0));
        Assert.Equal(1, BetaFunction.Regularized(2, 3, 1));
    }
}
