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
}
