namespace Sightglass.Basics.Draws;

/// <summary>
/// Philox4x32-10: 128 random bits from a counter and a key, without any state. J. Salmon et al., 'Parallel random numbers: as easy
/// as 1, 2, 3', SC11 (from memory; checked against the published known answers of Random123).
/// </summary>
public static class Philox
{
    private const int Rounds = 10;
    private const uint FirstMultiplier = 0xD2511F53;
    private const uint SecondMultiplier = 0xCD9E8D57;
    private const uint FirstWeyl = 0x9E3779B9;
    private const uint SecondWeyl = 0xBB67AE85;

    /// <summary>Four words for a counter of four words and a key of two, each as two 64-bit numbers, low word first.</summary>
    public static (ulong Low, ulong High) Bits(ulong counterLow, ulong counterHigh, ulong key)
    {
        (uint c0, uint c1) = ((uint)counterLow, (uint)(counterLow >> 32));
        (uint c2, uint c3) = ((uint)counterHigh, (uint)(counterHigh >> 32));
        (uint k0, uint k1) = ((uint)key, (uint)(key >> 32));
        for (int i = 0; i < Rounds; i++)
        {
            ulong first = (ulong)FirstMultiplier * c0;
            ulong second = (ulong)SecondMultiplier * c2;
            c0 = (uint)(second >> 32) ^ c1 ^ k0;
            c1 = (uint)second;
            c2 = (uint)(first >> 32) ^ c3 ^ k1;
            c3 = (uint)first;
            k0 += FirstWeyl;
            k1 += SecondWeyl;
        }

        return (c0 | ((ulong)c1 << 32), c2 | ((ulong)c3 << 32));
    }
}
