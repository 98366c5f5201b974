using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Common;

/// <summary>Horner's scheme with one rounding a term.</summary>
public static class Polynomial
{
    /// <summary>c₀ + c₁x + c₂x² + …, coefficients the same in every lane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Of<T>(T x, ReadOnlySpan<double> coefficients)
        where T : struct, IReal<T>
    {
        T sum = T.Of(coefficients[^1]);
        for (int i = coefficients.Length - 2; i >= 0; i--) sum = T.Fma(sum, x, T.Of(coefficients[i]));
        return sum;
    }

    /// <summary>The cube root of a ≥ 0, to 1e-11 relative: two of Halley's steps from a seed within 6 %.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CubeRoot<T>(T a)
        where T : struct, IReal<T>
    {
        T y = Halley(T.CbrtSeed(a), a);
        return Halley(y, a);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Halley<T>(T y, T a)
        where T : struct, IReal<T>
    {
        T cube = y * y * y;
        return y * ((cube + a + a) / (cube + cube + a));
    }
}
