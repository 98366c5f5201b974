using System.Runtime.Intrinsics;

namespace Sightglass.Basics.Numbers;

/// <summary>
/// The arithmetic a law may use: one number (<see cref="Scalar"/>) or eight lanes of them (<see cref="Lanes"/>).
/// Only operations whose results are the same bits on every processor: + − × ÷ √ fma, comparison and choice.
/// </summary>
public interface IReal<T>
    where T : struct, IReal<T>
{
    static abstract T operator +(T a, T b);

    static abstract T operator -(T a, T b);

    static abstract T operator *(T a, T b);

    static abstract T operator /(T a, T b);

    static abstract T operator -(T a);

    /// <summary>The same number in every lane.</summary>
    static abstract T Of(double value);

    static abstract T Sqrt(T a);

    static abstract T Abs(T a);

    /// <summary>a·b + c rounded once.</summary>
    static abstract T Fma(T a, T b, T c);

    /// <summary>a &lt; b ? a : b, so the second where either is not a number.</summary>
    static abstract T Min(T a, T b);

    /// <summary>a &gt; b ? a : b, so the second where either is not a number.</summary>
    static abstract T Max(T a, T b);

    /// <summary>A mask of all ones where a &lt; b, else all zeros.</summary>
    static abstract T Less(T a, T b);

    /// <summary>A mask of all ones where a ≤ b, else all zeros.</summary>
    static abstract T LessOrEqual(T a, T b);

    /// <summary>Bits of <paramref name="yes"/> where the mask is ones, of <paramref name="no"/> where zeros.</summary>
    static abstract T Select(T mask, T yes, T no);

    static abstract T And(T a, T b);

    static abstract T Or(T a, T b);

    /// <summary>The largest whole number not above a (|a| &lt; 2⁵¹).</summary>
    static abstract T Floor(T a);

    /// <summary>Upper half of the bit pattern divided by three, plus a constant: the seed of a cube root, within 6 % for normal numbers (a ≥ 0).</summary>
    static abstract T CbrtSeed(T a);

    /// <summary>a·2ⁿ exactly, for whole n, where a and the result are normal numbers.</summary>
    static abstract T ScaleByPowerOfTwo(T a, T n);

    /// <summary>The whole number e with 2ᵉ ≤ a &lt; 2ᵉ⁺¹, for normal a &gt; 0.</summary>
    static abstract T ExponentOf(T a);

    /// <summary>a·2⁻ᵉ with e of <see cref="ExponentOf"/>: 1 ≤ result &lt; 2, for normal a &gt; 0.</summary>
    static abstract T SignificandOf(T a);

    /// <summary>table[index] per lane, for whole indices within the table.</summary>
    static abstract T Lookup(ReadOnlySpan<double> table, T index);
}
