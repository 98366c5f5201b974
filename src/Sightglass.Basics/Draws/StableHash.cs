using System.Globalization;
using System.Numerics;

namespace Sightglass.Basics.Draws;

/// <summary>
/// A 128-bit hash fed number by number, the same on every machine; a struct that allocates nothing and can be taken up again from its state.
/// The result is MurmurHash3_x64_128 (A. Appleby, public domain; from memory) with seed 0 over the numbers' bytes, lowest first.
/// For telling trajectories apart, not against an adversary.
/// </summary>
/// <param name="First">First half of the state.</param>
/// <param name="Second">Second half of the state.</param>
/// <param name="Waiting">The last number, while it waits for a partner.</param>
/// <param name="Count">Numbers taken so far.</param>
public record struct StableHash(ulong First, ulong Second, ulong Waiting, ulong Count)
{
    private const ulong C1 = 0x87C37B91114253D5;
    private const ulong C2 = 0x4CF5AD432745937F;

    public void Add(long value) => Add((ulong)value);

    public void Add(ulong value)
    {
        if ((Count++ & 1) == 0)
        {
            Waiting = value;
            return;
        }

        First = BitOperations.RotateLeft(First ^ MixFirst(Waiting), 27) + Second;
        First = (First * 5) + 0x52DCE729;
        Second = BitOperations.RotateLeft(Second ^ MixSecond(value), 31) + First;
        Second = (Second * 5) + 0x38495AB5;
        Waiting = 0;
    }

    /// <summary>Takes the bits of a number; all that are not numbers count as one, and −0 differs from 0.</summary>
    public void Add(double value) => Add(double.IsNaN(value) ? 0x7FF8000000000000UL : BitConverter.DoubleToUInt64Bits(value));

    public void Add(ReadOnlySpan<double> values)
    {
        foreach (double value in values)
        {
            Add(value);
        }
    }

    /// <summary>Takes a text by its <see cref="NameHash"/>.</summary>
    public void Add(string text) => Add(NameHash.Of(text));

    /// <summary>The hash of all that was added; more can be added afterwards.</summary>
    public readonly UInt128 Result()
    {
        (ulong first, ulong second) = (First, Second);
        if ((Count & 1) != 0)
        {
            first ^= MixFirst(Waiting);
        }

        ulong bytes = Count * sizeof(ulong);
        first ^= bytes;
        second ^= bytes;
        first += second;
        second += first;
        first = Avalanche(first);
        second = Avalanche(second);
        first += second;
        return new(second + first, first);
    }

    /// <summary>Sixteen hexadecimal digits: the lower half of <see cref="Result"/>.</summary>
    public readonly string ToText() => ((ulong)Result()).ToString("x16", CultureInfo.InvariantCulture);

    private static ulong MixFirst(ulong k) => BitOperations.RotateLeft(k * C1, 31) * C2;

    private static ulong MixSecond(ulong k) => BitOperations.RotateLeft(k * C2, 33) * C1;

    private static ulong Avalanche(ulong k)
    {
        k = (k ^ (k >> 33)) * 0xFF51AFD7ED558CCD;
        k = (k ^ (k >> 33)) * 0xC4CEB9FE1A85EC53;
        return k ^ (k >> 33);
    }
}
