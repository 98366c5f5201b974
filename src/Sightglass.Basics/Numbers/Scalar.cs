using System.Runtime.CompilerServices;

namespace Sightglass.Basics.Numbers;

/// <summary>One number: the scalar twin of <see cref="Lanes"/>, giving the same bits.</summary>
public readonly struct Scalar(double v) : IReal<Scalar>
{
    public readonly double V = v;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar operator +(Scalar a, Scalar b) => new(a.V + b.V);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar operator -(Scalar a, Scalar b) => new(a.V - b.V);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar operator *(Scalar a, Scalar b) => new(a.V * b.V);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar operator /(Scalar a, Scalar b) => new(a.V / b.V);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar operator -(Scalar a) => new(-a.V);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar Of(double value) => new(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar Sqrt(Scalar a) => new(Math.Sqrt(a.V));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar Abs(Scalar a) => new(Math.Abs(a.V));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar Fma(Scalar a, Scalar b, Scalar c) => new(Math.FusedMultiplyAdd(a.V, b.V, c.V));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar Min(Scalar a, Scalar b) => a.V < b.V ? a : b;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar Max(Scalar a, Scalar b) => a.V > b.V ? a : b;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar Less(Scalar a, Scalar b) => new(a.V < b.V ? DoubleBits.Ones : 0.0);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar LessOrEqual(Scalar a, Scalar b) => new(a.V <= b.V ? DoubleBits.Ones : 0.0);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar Select(Scalar mask, Scalar yes, Scalar no)
    {
        long m = BitConverter.DoubleToInt64Bits(mask.V);
        long y = BitConverter.DoubleToInt64Bits(yes.V);
        long n = BitConverter.DoubleToInt64Bits(no.V);
        return new(BitConverter.Int64BitsToDouble((y & m) | (n & ~m)));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar And(Scalar a, Scalar b) =>
        new(BitConverter.Int64BitsToDouble(BitConverter.DoubleToInt64Bits(a.V) & BitConverter.DoubleToInt64Bits(b.V)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar Or(Scalar a, Scalar b) =>
        new(BitConverter.Int64BitsToDouble(BitConverter.DoubleToInt64Bits(a.V) | BitConverter.DoubleToInt64Bits(b.V)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar Floor(Scalar a) => new(Math.Floor(a.V));

    /// <summary>Seed within 6 % of the cube root, by dividing the exponent by three in whole numbers (W. Kahan's device, from memory).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar CbrtSeed(Scalar a) =>
        new(BitConverter.UInt64BitsToDouble((((BitConverter.DoubleToUInt64Bits(a.V) >> 32) / 3) + DoubleBits.CbrtOffset) << 32));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar ScaleByPowerOfTwo(Scalar a, Scalar n)
    {
        ulong whole = BitConverter.DoubleToUInt64Bits(n.V + DoubleBits.RoundingShift);
        return new(BitConverter.UInt64BitsToDouble(BitConverter.DoubleToUInt64Bits(a.V) + (whole << DoubleBits.FractionWidth)));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar ExponentOf(Scalar a)
    {
        ulong field = BitConverter.DoubleToUInt64Bits(a.V) >> DoubleBits.FractionWidth;
        return new(BitConverter.UInt64BitsToDouble(field | DoubleBits.TwoTo52Bits) - DoubleBits.TwoTo52PlusBias);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar SignificandOf(Scalar a) =>
        new(BitConverter.UInt64BitsToDouble((BitConverter.DoubleToUInt64Bits(a.V) & DoubleBits.FractionMask) | DoubleBits.OneBits));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar Lookup(ReadOnlySpan<double> table, Scalar index) => new(table[(int)index.V]);

    public override string ToString() => V.ToString("R", System.Globalization.CultureInfo.InvariantCulture);
}
