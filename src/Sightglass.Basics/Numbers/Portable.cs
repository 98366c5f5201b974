using System.Runtime.CompilerServices;

namespace Sightglass.Basics.Numbers;

/// <summary>
/// Exponential, logarithm and power with the same bits on every processor, made of + − × ÷ fma and whole powers of two.
/// Relative error below 2e-16 (measured against exact values in the tests).
/// </summary>
public static class Portable
{
    private const double Ln2 = 0.6931471805599453;

    /// <summary>ln 2 − <see cref="Ln2"/>.</summary>
    private const double Ln2Rest = 2.3190468138462996e-17;

    /// <summary>The first 32 bits of ln 2: its product with an exponent is exact.</summary>
    private const double Ln2Head = 0.693147180369123816490;

    /// <summary>ln 2 − <see cref="Ln2Head"/>.</summary>
    private const double Ln2Tail = 1.90821492927058770002e-10;

    private const double Sqrt2 = 1.4142135623730951;
    private const double SmallestNormal = 2.2250738585072014e-308;
    private const double TwoTo54 = 18014398509481984.0;
    private const double LargestExponent = 709.782712893384;
    private const double SmallestExponent = -708.0;

    /// <summary>eˣ. Infinite above 709.78, 0 below −708.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Exp<T>(T x)
        where T : struct, IReal<T> => ExpOfSum(x, T.Of(0));

    /// <summary>Natural logarithm: −∞ for 0, not a number for negative numbers, ∞ for ∞.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Log<T>(T a)
        where T : struct, IReal<T>
    {
        T log = LogInTwoParts(a, out T rest) + rest;
        log = T.Select(T.Less(a, T.Of(double.PositiveInfinity)), log, a);
        log = T.Select(T.Less(T.Of(0), a), log, T.Of(double.NaN));
        return T.Select(T.And(T.LessOrEqual(a, T.Of(0)), T.LessOrEqual(T.Of(0), a)), T.Of(double.NegativeInfinity), log);
    }

    /// <summary>
    /// aᵇ for finite a ≥ 0 and finite b: 0 for a = 0 (with b &gt; 0), 0 where the result would be below 3e-308, ∞ where it is too large.
    /// Not a number for negative a. The logarithm is carried in two parts, so that large powers stay as exact as small ones.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Pow<T>(T a, T b)
        where T : struct, IReal<T>
    {
        T high = LogInTwoParts(a, out T low);
        T log = high + low;
        low -= log - high;
        T product = b * log;
        T rest = T.Fma(b, log, -product) + (b * low);
        T power = ExpOfSum(product, rest);
        power = T.Select(T.Less(T.Of(0), a), power, T.Of(double.NaN));
        return T.Select(T.And(T.LessOrEqual(a, T.Of(0)), T.LessOrEqual(T.Of(0), a)), T.Of(0), power);
    }

    /// <summary>e^(x+rest) for |rest| much below 1: n = round(x/ln 2), r = x − n·ln 2, 2ⁿ times the Taylor series to r¹³ (|r| ≤ 0.35: error 4e-18).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T ExpOfSum<T>(T x, T rest)
        where T : struct, IReal<T>
    {
        T within = T.Max(T.Min(x, T.Of(LargestExponent)), T.Of(SmallestExponent));
        T n = T.Floor(T.Fma(within, T.Of(1 / Ln2), T.Of(0.5)));
        T r = T.Fma(-n, T.Of(Ln2), within);
        r = T.Fma(-n, T.Of(Ln2Rest), r) + rest;
        T series = ExpSeries(r);
        T value = T.ScaleByPowerOfTwo(T.Of(1) + T.Fma(r * r, series, r), n);
        value = T.Select(T.Less(x, T.Of(SmallestExponent)), T.Of(0), value);
        value = T.Select(T.Less(T.Of(LargestExponent), x), T.Of(double.PositiveInfinity), value);
        return T.Select(T.LessOrEqual(x, x), value, x);
    }

    /// <summary>(eʳ − 1 − r)/r² = 1/2! + r/3! + … + r¹¹/13!.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T ExpSeries<T>(T r)
        where T : struct, IReal<T>
    {
        T p = T.Of(1.0 / 6227020800);
        p = T.Fma(p, r, T.Of(1.0 / 479001600));
        p = T.Fma(p, r, T.Of(1.0 / 39916800));
        p = T.Fma(p, r, T.Of(1.0 / 3628800));
        p = T.Fma(p, r, T.Of(1.0 / 362880));
        p = T.Fma(p, r, T.Of(1.0 / 40320));
        p = T.Fma(p, r, T.Of(1.0 / 5040));
        p = T.Fma(p, r, T.Of(1.0 / 720));
        p = T.Fma(p, r, T.Of(1.0 / 120));
        p = T.Fma(p, r, T.Of(1.0 / 24));
        p = T.Fma(p, r, T.Of(1.0 / 6));
        return T.Fma(p, r, T.Of(1.0 / 2));
    }

    /// <summary>
    /// The logarithm of a &gt; 0 as a sum of two numbers: a = 2ᵉ·m with √½ &lt; m ≤ √2, s = (m−1)/(m+1),
    /// log a = e·ln 2 + 2s + 2s·(s²/3 + s⁴/5 + … + s²⁰/21); what rounding of m+1 and s leaves over goes to the second part.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T LogInTwoParts<T>(T a, out T rest)
        where T : struct, IReal<T>
    {
        T subnormal = T.Less(a, T.Of(SmallestNormal));
        T x = T.Select(subnormal, a * T.Of(TwoTo54), a);
        T m = T.SignificandOf(x);
        T e = T.ExponentOf(x) - T.Select(subnormal, T.Of(54), T.Of(0));
        T upper = T.Less(T.Of(Sqrt2), m);
        m = T.Select(upper, m * T.Of(0.5), m);
        e += T.Select(upper, T.Of(1), T.Of(0));

        T f = m - T.Of(1);
        T d = m + T.Of(1);
        T lost = m - (d - T.Of(1));
        T inverse = T.Of(1) / d;
        T s = f * inverse;
        T sRest = (T.Fma(-s, d, f) - (s * lost)) * inverse;

        T head = e * T.Of(Ln2Head);
        T twice = s + s;
        T sum = head + twice;
        T sumRest = twice - (sum - head);
        T series = T.Fma(twice, LogSeries(s * s), sRest + sRest);
        rest = sumRest + T.Fma(e, T.Of(Ln2Tail), series);
        return sum;
    }

    /// <summary>z/3 + z²/5 + … + z¹⁰/21 for z ≤ 0.0295: what is left out is below 6e-19.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T LogSeries<T>(T z)
        where T : struct, IReal<T>
    {
        T p = T.Of(1.0 / 21);
        p = T.Fma(p, z, T.Of(1.0 / 19));
        p = T.Fma(p, z, T.Of(1.0 / 17));
        p = T.Fma(p, z, T.Of(1.0 / 15));
        p = T.Fma(p, z, T.Of(1.0 / 13));
        p = T.Fma(p, z, T.Of(1.0 / 11));
        p = T.Fma(p, z, T.Of(1.0 / 9));
        p = T.Fma(p, z, T.Of(1.0 / 7));
        p = T.Fma(p, z, T.Of(1.0 / 5));
        p = T.Fma(p, z, T.Of(1.0 / 3));
        return p * z;
    }
}
