namespace Sightglass.Basics.Draws;

/// <summary>
/// Independent draws that depend on nothing but (seed, case, name): in any order, on any machine, however many beside it.
/// The counter is (case, hash of the name), the key the seed. Nothing is allocated for a <see cref="DrawKey"/>.
/// </summary>
public static class Draw
{
    private const double TwoToMinus53 = 1.0 / (1L << 53);

    /// <summary>64 bits.</summary>
    public static ulong Bits(ulong seed, ulong caseNumber, DrawKey key) => Philox.Bits(caseNumber, key.Hash, seed).Low;

    /// <summary>A multiple of 2⁻⁵³ in 0 ≤ u &lt; 1.</summary>
    public static double Uniform(ulong seed, ulong caseNumber, DrawKey key) => (Bits(seed, caseNumber, key) >> 11) * TwoToMinus53;

    /// <inheritdoc cref="Uniform(ulong, ulong, DrawKey)"/>
    public static double Uniform(ulong seed, ulong caseNumber, string name) => Uniform(seed, caseNumber, DrawKey.Of(name));

    /// <summary>Uniform from one value to another; exactly the value where both are equal.</summary>
    public static double Between(ulong seed, ulong caseNumber, DrawKey key, double from, double to) =>
        Between(Uniform(seed, caseNumber, key), from, to);

    /// <inheritdoc cref="Between(ulong, ulong, DrawKey, double, double)"/>
    public static double Between(ulong seed, ulong caseNumber, string name, double from, double to) =>
        Between(seed, caseNumber, DrawKey.Of(name), from, to);

    /// <summary>One of <paramref name="count"/> choices, each as likely to 2⁻⁶⁴·count: its index from 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No choices.</exception>
    public static int OneOf(ulong seed, ulong caseNumber, DrawKey key, int count)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(count);
        return (int)Math.BigMul(Bits(seed, caseNumber, key), (ulong)count, out _);
    }

    /// <inheritdoc cref="OneOf(ulong, ulong, DrawKey, int)"/>
    public static int OneOf(ulong seed, ulong caseNumber, string name, int count) => OneOf(seed, caseNumber, DrawKey.Of(name), count);

    /// <summary>True with this chance: never for 0, always for 1.</summary>
    public static bool Happens(ulong seed, ulong caseNumber, DrawKey key, double chance) => Uniform(seed, caseNumber, key) < chance;

    /// <summary>A point of 0…1 (from a draw or a low-discrepancy sequence) carried over to a range.</summary>
    public static double Between(double u, double from, double to) => Math.Clamp(from + (u * (to - from)), Math.Min(from, to), Math.Max(from, to));
}
