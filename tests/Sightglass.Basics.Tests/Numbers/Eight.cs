using System.Runtime.Intrinsics;
using Sightglass.Basics.Draws;
using Sightglass.Basics.Numbers;

namespace Sightglass.Basics.Tests.Numbers;

/// <summary>Runs a function over many drawn numbers, eight at a time and one by one, and demands the same bits.</summary>
internal static class Eight
{
    public delegate Lanes OnLanes(Lanes a, Lanes b);

    public delegate Scalar OnScalar(Scalar a, Scalar b);

    public const int Count = 100_000;

    public static void MustAgree(string name, Func<double, double> first, Func<double, double> second, OnLanes lanes, OnScalar scalar)
    {
        Span<double> a = stackalloc double[Lanes.Count];
        Span<double> b = stackalloc double[Lanes.Count];
        DrawKey key = DrawKey.Of(name);
        for (ulong i = 0; i < Count; i += Lanes.Count)
        {
            for (int lane = 0; lane < Lanes.Count; lane++)
            {
                a[lane] = first(Draw.Uniform(1, i + (ulong)lane, key));
                b[lane] = second(Draw.Uniform(2, i + (ulong)lane, key));
            }

            Lanes together = lanes(new(Vector512.Create<double>(a)), new(Vector512.Create<double>(b)));
            for (int lane = 0; lane < Lanes.Count; lane++)
            {
                double alone = scalar(new(a[lane]), new(b[lane])).V;
                Assert.True(Bits(alone) == Bits(together[lane]), $"{name}({a[lane]:R}, {b[lane]:R}): alone {alone:R}, in a lane {together[lane]:R}");
            }
        }
    }

    /// <summary>Any finite number, every exponent as likely.</summary>
    public static double AnyMagnitude(double u) => (u < 0.5 ? -1 : 1) * Positive(u < 0.5 ? 2 * u : (2 * u) - 1);

    /// <summary>Any normal number above 0, every exponent as likely.</summary>
    public static double Positive(double u) => Math.ScaleB(1 + ((u * 65536) % 1), (int)(-1022 + (u * 2045)));

    private static long Bits(double x) => double.IsNaN(x) ? long.MinValue : BitConverter.DoubleToInt64Bits(x);
}
