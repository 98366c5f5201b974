using System.Runtime.CompilerServices;

namespace Sightglass.Basics.Numbers;

/// <summary>One number: the scalar twin of <see cref="Lanes"/>, giving the same bits.</summary>
public readonly struct Scalar(double v) : IReal<Scalar>
{
    public readonly double V = v;

    private static readonly double s_ones = BitConverter.Int64BitsToDouble(-1L);

    public static Scalar operator +(Scalar a, Scalar b) => new(a.V + b.V);

    public static Scalar operator -(Scalar a, Scalar b) => new(a.V - b.V);

    public static Scalar operator *(Scalar a, Scalar b) => new(a.V * b.V);

    public static Scalar operator /(Scalar a, Scalar b) => new(a.V / b.V);

    public static Scalar operator -(Scalar a) => new(-a.V);

    public static Scalar Of(double value) => new(value);

    public static Scalar Sqrt(Scalar a) => new(Math.Sqrt(a.V));

    public static Scalar Abs(Scalar a) => new(Math.Abs(a.V));

    public static Scalar Fma(Scalar a, Scalar b, Scalar c) => new(Math.FusedMultiplyAdd(a.V, b.V, c.V));

    public static Scalar Min(Scalar a, Scalar b) => a.V < b.V ? a : b;

    public static Scalar Max(Scalar a, Scalar b) => a.V > b.V ? a : b;

    public static Scalar Less(Scalar a, Scalar b) => new(a.V < b.V ? s_ones : 0.0);

    public static Scalar LessOrEqual(Scalar a, Scalar b) => new(a.V <= b.V ? s_ones : 0.0);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Scalar Select(Scalar mask, Scalar yes, Scalar no)
    {
        long m = BitConverter.DoubleToInt64Bits(mask.V);
        long y = BitConverter.DoubleToInt64Bits(yes.V);
        long n = BitConverter.DoubleToInt64Bits(no.V);
        return new(BitConverter.Int64BitsToDouble((y & m) | (n & ~m)));
    }

    public static Scalar And(Scalar a, Scalar b) =>
        new(BitConverter.Int64BitsToDouble(BitConverter.DoubleToInt64Bits(a.V) & BitConverter.DoubleToInt64Bits(b.V)));

    public static Scalar Or(Scalar a, Scalar b) =>
        new(BitConverter.Int64BitsToDouble(BitConverter.DoubleToInt64Bits(a.V) | BitConverter.DoubleToInt64Bits(b.V)));

    public static Scalar Floor(Scalar a) => new(Math.Floor(a.V));

    /// <summary>Seed within 6 % of the cube root, by dividing the exponent by three in whole numbers (W. Kahan's device, from memory).</summary>
    public static Scalar CbrtSeed(Scalar a) =>
        new(BitConverter.Int64BitsToDouble((BitConverter.DoubleToInt64Bits(a.V) / 3) + 0x2A9F7893_00000000L));

    public static Scalar Lookup(ReadOnlySpan<double> table, Scalar index) => new(table[(int)index.V]);

    public override string ToString() => V.ToString("R", System.Globalization.CultureInfo.InvariantCulture);
}
