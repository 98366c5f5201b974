using CsCheck;
using Sightglass.Basics.Numbers;

namespace Sightglass.Basics.Tests.Numbers;

/// <summary>Errors judged by the same functions with 320 binary places.</summary>
public sealed class PortableProperties
{
    private const double Bound = 2e-16;

    [Fact]
    public void Ln2_OfTheJudge_IsRight() => Assert.Equal(0.6931471805599453, (double)Exact.Ln2.Scaled / Math.Pow(2, 320), 1e-16);

    [Fact]
    public void Exp_AnyNumber_IsNearlyExact() => Gen.Double[-708, 709].Holds(
        x => Within(Exact.Of(x).Exp(), Portable.Exp(new Scalar(x)).V, $"exp {x:R}"), iter: 3_000);

    [Fact]
    public void Exp_SmallNumber_IsNearlyExact() => Gen.Double[-1, 1].Holds(
        x => Within(Exact.Of(x).Exp(), Portable.Exp(new Scalar(x)).V, $"exp {x:R}"), iter: 3_000);

    [Fact]
    public void Log_AnyMagnitude_IsNearlyExact() => Gen.Double[0, 1].Holds(u => LogWithin(Eight.Positive(u)), iter: 3_000);

    [Fact]
    public void Log_NearOne_KeepsItsRelativeError() => Gen.Double[-40, -1].Holds(e =>
    {
        LogWithin(1 + Math.Pow(2, e));
        LogWithin(1 - Math.Pow(2, e));
    });

    [Fact]
    public void Pow_LargeResult_IsNearlyExact() => Gen.Select(Gen.Double[0, 1], Gen.Double[-0.99, 0.99]).Holds(
        (u, b) => PowWithin(Eight.Positive(u), b), iter: 3_000);

    [Fact]
    public void Pow_GasExponents_IsNearlyExact() => Gen.Select(Gen.Double[0.01, 100], Gen.Double[0, 3.5]).Holds(PowWithin, iter: 3_000);

    [Fact]
    public void Exp_EdgesAndStrangers_AreDefined()
    {
        Assert.Equal(1, Exp(0));
        Assert.Equal(0, Exp(-709));
        Assert.Equal(0, Exp(double.NegativeInfinity));
        Assert.Equal(double.PositiveInfinity, Exp(710));
        Assert.Equal(double.PositiveInfinity, Exp(double.PositiveInfinity));
        Assert.True(double.IsNaN(Exp(double.NaN)));
        Assert.Equal(1.7976931348622732E+308, Exp(709.782712893384), 1e295);
    }

    [Fact]
    public void Log_EdgesAndStrangers_AreDefined()
    {
        Assert.Equal(0, Log(1));
        Assert.Equal(double.NegativeInfinity, Log(0));
        Assert.Equal(double.NegativeInfinity, Log(-0.0));
        Assert.Equal(double.PositiveInfinity, Log(double.PositiveInfinity));
        Assert.True(double.IsNaN(Log(-1)));
        Assert.True(double.IsNaN(Log(double.NaN)));
        Assert.Equal(-744.4400719213812, Log(5e-324), 1e-12);
    }

    [Fact]
    public void Pow_EdgesAndStrangers_AreDefined()
    {
        Assert.Equal(0, Pow(0, 1.4));
        Assert.Equal(1, Pow(1, 1e300));
        Assert.Equal(1, Pow(5, 0));
        Assert.Equal(0, Pow(10, -400));
        Assert.Equal(double.PositiveInfinity, Pow(10, 400));
        Assert.True(double.IsNaN(Pow(-1, 2)));
        Assert.True(double.IsNaN(Pow(double.NaN, 2)));
    }

    private static double Exp(double x) => Portable.Exp(new Scalar(x)).V;

    private static double Log(double x) => Portable.Log(new Scalar(x)).V;

    private static double Pow(double a, double b) => Portable.Pow(new Scalar(a), new Scalar(b)).V;

    private static void LogWithin(double a)
    {
        double error = Exact.Log(a).RelativeErrorOf(Log(a));
        Assert.True(Math.Abs(error) < Bound, $"log {a:R}: error {error}");
    }

    private static void PowWithin(double a, double b)
    {
        Exact product = Exact.Log(a) * Exact.Of(b);
        if (!product.Scaled.IsZero)
        {
            Within(product.Exp(), Pow(a, b), $"{a:R}^{b:R}");
        }
    }

    private static void Within((Exact Value, int Power) exact, double rounded, string what)
    {
        double error = exact.Value.RelativeErrorOf(rounded, exact.Power);
        Assert.True(Math.Abs(error) < Bound, $"{what}: error {error}");
    }
}
