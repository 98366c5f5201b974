using System.Numerics;
using CsCheck;
using Sightglass.Basics.Numbers;

namespace Sightglass.Basics.Tests.Numbers;

public sealed class CubeProperties
{
    [Theory]
    [InlineData(0.0, 0.0)]
    [InlineData(27.0, 3.0)]
    [InlineData(-8.0, -2.0)]
    [InlineData(1e-300, 1e-100)]
    [InlineData(1e300, 1e100)]
    public void Root_Cube_IsItsSide(double cube, double side) => Assert.Equal(side, Cube.Root(new Scalar(cube)).V, Math.Abs(side) * 2.3e-16);

    [Fact]
    public void Root_NormalNumber_IsWithinOneUlp() => Gen.Double[0, 1].Holds(
        u =>
        {
            double a = Eight.Positive(u);
            double root = Cube.Root(new Scalar(a)).V;
            Assert.True(Cubed(Math.BitDecrement(root)) <= Whole(a) && Whole(a) <= Cubed(Math.BitIncrement(root)), $"{a:R}: {root:R}");
        },
        iter: 20_000);

    [Fact]
    public void Root_Negative_IsTheNegativeOfTheRoot() => Gen.Double[0, 1e6].Holds(a =>
        Assert.Equal(Cube.Root(new Scalar(a)).V, -Cube.Root(new Scalar(-a)).V));

    /// <summary>The cube, unrounded, in units of 2⁻³³⁰⁰.</summary>
    private static BigInteger Cubed(double x) => BigInteger.Pow(Fraction(x, 1100), 3);

    private static BigInteger Whole(double x) => Fraction(x, 3300);

    private static BigInteger Fraction(double x, int places)
    {
        int power = (int)Math.Floor(Math.Log2(x)) - 53;
        return new BigInteger(Math.ScaleB(x, -power)) << (power + places);
    }
}
