using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Stores;

/// <summary>
/// How high a circle of radius 1 is filled when a share f of its area is: the inverse of f = (θ − sinθ·cosθ)/π, height 1 − cosθ. Up to half it is a
/// polynomial in f^⅔, fitted for this project to 4e-12 and exact at empty and half; above half the same upside down. The first and the last
/// <see cref="RoundedShare"/> are a parabola that ends in nothing with a finite slope.
/// </summary>
internal static class CircularSegment
{
    /// <summary>Share of the area below which the root is rounded: 0.65 thousandths of the radius deep.</summary>
    public const double RoundedShare = 1e-5;

    /// <summary>½^⅔: f^⅔ at half.</summary>
    private const double Half = 0.62996052494743658;

    /// <summary>
    /// r in height = v/<see cref="Half"/> + v·(<see cref="Half"/> − v)·r, v = f^⅔, as a polynomial in x = 2v/<see cref="Half"/> − 1: interpolation at 14
    /// Chebyshev nodes in 40 digits.
    /// </summary>
    private static ReadOnlySpan<double> Fit =>
    [
        -0.3464107568514538, -0.07280740262962383, -0.020009527520144683, -0.006250809844974078, -0.0021069540170987437, -0.0007470088963763253,
        -0.00027421913767259525, -0.00010356890835560052, -4.105734144004534e-05, -1.614135308922504e-05, -4.819626056900161e-06,
        -1.9182469403143345e-06, -1.9461508338223656e-06, -8.05455184149485e-07,
    ];

    private static readonly double s_roundedHeight = Fitted(new Scalar(RoundedShare)).V;

    private static readonly double s_roundedRise = RoundedShare * Slope(new Scalar(s_roundedHeight)).V;

    /// <summary>Height of the fill, 0…2, and its slope by the share.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Height<T>(T share, out T slope)
        where T : struct, IReal<T>
    {
        T left = T.Of(1) - share;
        T upper = T.Less(left, share);
        T nearer = T.Min(share, left);
        T fitted = Fitted(T.Max(nearer, T.Of(RoundedShare)));
        T s = nearer * T.Of(1 / RoundedShare);
        T t = T.Max(s, T.Of(0));
        T bend = T.Of(s_roundedHeight - s_roundedRise);
        T rise = T.Of((2 * s_roundedHeight) - s_roundedRise);
        T rounded = T.Less(s, T.Of(1));
        slope = T.Select(rounded, (rise - (T.Of(2) * bend * t)) * T.Of(1 / RoundedShare), Slope(fitted));
        T height = T.Select(rounded, (rise * s) - (bend * t * t), fitted);
        return T.Select(upper, T.Of(2) - height, height);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Fitted<T>(T share)
        where T : struct, IReal<T>
    {
        T root = Cube.Root(share);
        T v = root * root;
        T r = Polynomial.Of((v * T.Of(2 / Half)) - T.Of(1), Fit);
        return v * (T.Of(1 / Half) + ((T.Of(Half) - v) * r));
    }

    /// <summary>π over the width of the surface.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Slope<T>(T height)
        where T : struct, IReal<T> =>
        T.Of(Math.PI / 2) / T.Sqrt(height * (T.Of(2) - height));
}
