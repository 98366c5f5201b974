using System.Runtime.InteropServices;

namespace Sightglass.Basics.Numbers;

/// <summary>Eight-lane numbers on lines of the processor's cache, zero at first.</summary>
public sealed class LaneRoom
{
    private const int Line = 64;

    private readonly byte[] _bytes;
    private readonly int _offset;
    private readonly int _count;

    /// <param name="count">How many.</param>
    public unsafe LaneRoom(int count)
    {
        _count = count;
        _bytes = GC.AllocateArray<byte>((count * sizeof(Lanes)) + Line, pinned: true);
        nuint at = (nuint)Marshal.UnsafeAddrOfPinnedArrayElement(_bytes, 0);
        _offset = (int)((Line - (at % Line)) % Line);
    }

    public unsafe Span<Lanes> All => MemoryMarshal.Cast<byte, Lanes>(_bytes.AsSpan(_offset, _count * sizeof(Lanes)));
}
