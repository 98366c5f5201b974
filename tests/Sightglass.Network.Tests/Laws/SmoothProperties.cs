using CsCheck;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

/// <summary>The errors that the smoothing functions state of themselves, and their slopes.</summary>
public sealed class SmoothProperties
{
    private delegate Scalar Rounded(Scalar x, Scalar width, out Scalar slope);

    [Fact]
    public void SignedRoot_AnyNumber_IsShortByLessThanStated() =>
        Gen.Select(Draw.Difference(1e6), Draw.Decades(1e-6, 10)).Holds((x, epsilon) =>
        {
            double size = Math.Abs(x), root = Math.Sign(x) * Math.Sqrt(size);
            double short_ = Math.Abs(root - Value(Smooth.SignedRoot, x, epsilon).Value);
            Assert.True(size == 0 || short_ <= (epsilon / (2 * size) * Math.Sqrt(size)) + (1e-15 * Math.Sqrt(size)));
        });

    [Fact]
    public void Positive_AnyNumber_IsExactOutsideAndNoMoreThanAQuarterTooLarge() =>
        Gen.Select(Gen.Double[-3, 3], Draw.Decades(1e-3, 1)).Holds((x, delta) =>
        {
            double over = Value(Smooth.Positive, x, delta).Value - Math.Max(0, x);
            Assert.InRange(over, -1e-15, (delta / 4) + 1e-15);
            if (Math.Abs(x) > delta) Assert.Equal(0, over, 1e-15);
        });

    [Fact]
    public void RoundedRoot_AnyNumber_IsExactAboveAndShortByLessThanStatedBelow() =>
        Gen.Select(Gen.Double[0, 3], Draw.Decades(1e-3, 1)).Holds((x, root) =>
        {
            double short_ = Math.Sqrt(x) - Value(Smooth.RoundedRoot, x, root).Value;
            Assert.InRange(short_, -1e-15, 0.175 * root);
            if (x >= root * root * 1.000001) Assert.Equal(0, short_, 1e-15);
        });

    [Fact]
    public void Slopes_OfEach_AreThoseOfTheFunction() =>
        Gen.Select(Gen.Double[-3, 3], Draw.Decades(1e-2, 1)).Holds((x, width) =>
        {
            foreach (Rounded f in new Rounded[] { Smooth.SignedRoot, Smooth.Positive, Smooth.RoundedRoot, (Scalar t, Scalar _, out Scalar s) => Smooth.Step(t, out s) })
            {
                Slope.Check(
                    t =>
                    {
                        (double value, double slope) = Value(f, t, width);
                        return ([value], [slope]);
                    },
                    [x],
                    1e-5,
                    0);
            }
        });

    private static (double Value, double Slope) Value(Rounded function, double x, double width)
    {
        double value = function(new Scalar(x), new Scalar(width), out Scalar slope).V;
        return (value, slope.V);
    }
}
