namespace Sightglass.Basics.Draws;

/// <summary>
/// A running 64-bit hash of a trajectory: every committed moment and amount, bit for bit. Mixing steps as in SplitMix64 (Steele, Lea,
/// Flood 2014, from memory).
/// </summary>
public static class TrajectoryHash
{
    public const ulong Start = 0x9E3779B97F4A7C15;

    public static ulong Add(ulong hash, long value)
    {
        ulong z = (hash ^ unchecked((ulong)value)) + 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    public static ulong Add(ulong hash, double value) => Add(hash, BitConverter.DoubleToInt64Bits(value));
}
