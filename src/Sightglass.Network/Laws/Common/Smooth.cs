using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Common;

/// <summary>Named smooth replacements for kinks, each with its derivative and its error.</summary>
public static class Smooth
{
    /// <summary>
    /// x/√(|x|+ε): the signed square root, made finite in slope at zero. Differs from sgn(x)√|x| by less than
    /// a share ε/(2|x|); slope ε^-½ at zero.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SignedRoot<T>(T x, T epsilon, out T slope)
        where T : struct, IReal<T>
    {
        T a = T.Abs(x);
        T r = T.Of(1) / T.Sqrt(a + epsilon);
        slope = r * T.Fma(T.Of(-0.5) * a, r * r, T.Of(1));
        return x * r;
    }

    /// <summary>t²(3−2t) with t clamped to 0…1: a step of width 1. Slope by t; exact outside 0…1.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Step<T>(T t, out T slope)
        where T : struct, IReal<T>
    {
        T c = T.Min(T.Max(t, T.Of(0)), T.Of(1));
        T square = c * c;
        T bulge = c - square;
        slope = T.Of(6) * bulge;
        return T.Fma(c + c, bulge, square);
    }

    /// <summary>
    /// max(0, x) rounded over ±δ: t²/4δ + max(0, x−δ) with t = clamp(x+δ, 0, 2δ). Exact outside ±δ; too large by at most δ/4 at x = 0.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Positive<T>(T x, T delta, out T slope)
        where T : struct, IReal<T> => Positive(x, delta, T.Of(0.5) / delta, out slope);

    /// <summary>The same for who has <paramref name="perTwo"/> = 1/(2δ) at hand: without a division.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Positive<T>(T x, T delta, T perTwo, out T slope)
        where T : struct, IReal<T>
    {
        T above = T.Max(x + delta, T.Of(0));
        T t = T.Min(above, delta + delta);
        slope = t * perTwo;
        return T.Fma(T.Of(0.5) * t, slope, above - t);
    }

    /// <summary>
    /// √x for x ≥ root²; below, the parabola through the origin that joins it with the same value and slope, and below zero that parabola's
    /// tangent: a square root whose slope never exceeds 3/(2·root). Exact from root² up; lower by at most 0.175·root (near 0.14·root²).
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RoundedRoot<T>(T x, T root, out T slope)
        where T : struct, IReal<T>
    {
        T inverse = T.Of(1) / root;
        T s = x * inverse * inverse;
        T t = T.Max(s, T.Of(0));
        T exact = T.Sqrt(T.Max(x, root * root));
        T above = T.LessOrEqual(T.Of(1), s);
        slope = T.Select(above, T.Of(0.5) / exact, (T.Of(1.5) - t) * inverse);
        return T.Select(above, exact, root * ((T.Of(1.5) * s) - (T.Of(0.5) * t * t)));
    }
}
