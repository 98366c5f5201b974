using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Sightglass.Basics.Numbers;

/// <summary>Eight numbers side by side, one for each lane.</summary>
public readonly struct Lanes(Vector512<double> v) : IReal<Lanes>
{
    /// <summary>How many lanes a group has.</summary>
    public const int Count = 8;

    public readonly Vector512<double> V = v;

    /// <summary>The number of one lane.</summary>
    /// <param name="lane">0…7.</param>
    public double this[int lane] => V.GetElement(lane);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes operator +(Lanes a, Lanes b) => new(a.V + b.V);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes operator -(Lanes a, Lanes b) => new(a.V - b.V);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes operator *(Lanes a, Lanes b) => new(a.V * b.V);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes operator /(Lanes a, Lanes b) => new(a.V / b.V);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes operator -(Lanes a) => new(-a.V);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Of(double value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Sqrt(Lanes a) => new(Vector512.Sqrt(a.V));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Abs(Lanes a) => new(Vector512.AndNot(a.V, Vector512.Create(-0.0)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Fma(Lanes a, Lanes b, Lanes c) => new(Vector512.FusedMultiplyAdd(a.V, b.V, c.V));

    /// <summary>x86's own minimum is a &lt; b ? a : b to the bit, not numbers and signed zeros included; others' are not.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Min(Lanes a, Lanes b) => new(
        X86Base.IsSupported ? Vector512.MinNative(a.V, b.V) : Vector512.ConditionalSelect(Vector512.LessThan(a.V, b.V), a.V, b.V));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Max(Lanes a, Lanes b) => new(
        X86Base.IsSupported ? Vector512.MaxNative(a.V, b.V) : Vector512.ConditionalSelect(Vector512.GreaterThan(a.V, b.V), a.V, b.V));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Less(Lanes a, Lanes b) => new(Vector512.LessThan(a.V, b.V));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes LessOrEqual(Lanes a, Lanes b) => new(Vector512.LessThanOrEqual(a.V, b.V));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Select(Lanes mask, Lanes yes, Lanes no) => new(Vector512.ConditionalSelect(mask.V, yes.V, no.V));

    /// <summary>A mask of all ones in the lanes whose bits are set.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes MaskOf(uint lanes)
    {
        Vector512<ulong> own = Vector512.Create(1UL, 2, 4, 8, 16, 32, 64, 128);
        return new(Vector512.Equals(Vector512.Create((ulong)lanes) & own, own).AsDouble());
    }

    /// <summary>The lanes in which a mask is ones, a bit each.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static uint BitsOf(Lanes mask) => (uint)mask.V.ExtractMostSignificantBits();

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes And(Lanes a, Lanes b) => new(Vector512.BitwiseAnd(a.V, b.V));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Or(Lanes a, Lanes b) => new(Vector512.BitwiseOr(a.V, b.V));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Floor(Lanes a) => new(Vector512.Floor(a.V));

    /// <summary>A third of the upper half by multiplying with 2³³/3 rounded up: exact for 32-bit numbers.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes CbrtSeed(Lanes a)
    {
        Vector512<ulong> upper = Vector512.ShiftRightLogical(a.V.AsUInt64(), 32);
        Vector512<ulong> third = Vector512.ShiftRightLogical(upper * Vector512.Create(0xAAAAAAABUL), 33);
        return new(Vector512.ShiftLeft(third + Vector512.Create(DoubleBits.CbrtOffset), 32).AsDouble());
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes ScaleByPowerOfTwo(Lanes a, Lanes n)
    {
        Vector512<ulong> whole = (n.V + Vector512.Create(DoubleBits.RoundingShift)).AsUInt64();
        return new((a.V.AsUInt64() + Vector512.ShiftLeft(whole, DoubleBits.FractionWidth)).AsDouble());
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes ExponentOf(Lanes a)
    {
        Vector512<ulong> field = Vector512.ShiftRightLogical(a.V.AsUInt64(), DoubleBits.FractionWidth);
        return new((field | Vector512.Create(DoubleBits.TwoTo52Bits)).AsDouble() - Vector512.Create(DoubleBits.TwoTo52PlusBias));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes SignificandOf(Lanes a) =>
        new(((a.V.AsUInt64() & Vector512.Create(DoubleBits.FractionMask)) | Vector512.Create(DoubleBits.OneBits)).AsDouble());

    public static Lanes Lookup(ReadOnlySpan<double> table, Lanes index)
    {
        Vector512<double> i = index.V;
        return new(Vector512.Create(
            table[(int)i.GetElement(0)],
            table[(int)i.GetElement(1)],
            table[(int)i.GetElement(2)],
            table[(int)i.GetElement(3)],
            table[(int)i.GetElement(4)],
            table[(int)i.GetElement(5)],
            table[(int)i.GetElement(6)],
            table[(int)i.GetElement(7)]));
    }

    public override string ToString() => V.ToString();
}
