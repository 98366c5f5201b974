using System.Runtime.CompilerServices;

namespace Sightglass.Basics.Numbers;

/// <summary>Cube roots with the same bits on every processor.</summary>
public static class Cube
{
    /// <summary>
    /// The cube root of a finite number: 0 for 0, within 1 ulp for normal numbers, of the same sign. Numbers below 2.3e-308 (subnormal) lose digits.
    /// </summary>
    /// <remarks>
    /// The reciprocal root y of |a| is refined twice by y·(1−e)^-⅓ with e = 1−a·y³ to the third power of e (error 0.15·e⁴: 0.16 → 1e-4 → 1e-15),
    /// so that only one division is needed; then one Newton step on t = a·y² with the residual rounded once.
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Root<T>(T a)
        where T : struct, IReal<T>
    {
        T x = T.Abs(a);
        T y = T.Of(1) / T.CbrtSeed(x);
        y = Refined(x, y);
        y = Refined(x, y);
        T square = y * y;
        T t = x * square;
        T residual = T.Fma(-(t * t), t, x);
        t = T.Fma(residual, square * T.Of(1.0 / 3), t);
        return T.Select(T.Less(a, T.Of(0)), -t, t);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Refined<T>(T x, T y)
        where T : struct, IReal<T>
    {
        T e = T.Fma(-(x * y * y), y, T.Of(1));
        T series = T.Fma(T.Fma(T.Of(14.0 / 81), e, T.Of(2.0 / 9)), e, T.Of(1.0 / 3));
        return T.Fma(y * e, series, y);
    }
}
