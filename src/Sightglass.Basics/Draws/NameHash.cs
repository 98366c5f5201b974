using System.Text;

namespace Sightglass.Basics.Draws;

/// <summary>
/// A hash of a name that is the same on every machine and for ever: 64-bit FNV-1a over its UTF-8 bytes
/// (Fowler, Noll, Vo; constants from memory, checked against their published test values).
/// </summary>
public static class NameHash
{
    private const ulong OffsetBasis = 0xCBF29CE484222325;
    private const ulong Prime = 0x00000100000001B3;

    public static ulong Of(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        ulong h = OffsetBasis;
        Span<byte> bytes = stackalloc byte[4];
        foreach (Rune rune in name.EnumerateRunes())
        {
            int count = rune.EncodeToUtf8(bytes);
            foreach (byte b in bytes[..count])
            {
                h = (h ^ b) * Prime;
            }
        }

        return h;
    }
}
