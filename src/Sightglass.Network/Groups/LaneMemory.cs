using System.Runtime.InteropServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Groups;

/// <summary>One block of memory on 64-byte boundaries, dealt out in arrays of eight-lane numbers.</summary>
internal sealed unsafe class LaneMemory : IDisposable
{
    private readonly int _size;
    private Lanes* _start;
    private int _used;

    /// <param name="size">Eight-lane numbers in all.</param>
    public LaneMemory(int size)
    {
        _size = size;
        nuint bytes = (nuint)Math.Max(size, 1) * (nuint)sizeof(Lanes);
        _start = (Lanes*)NativeMemory.AlignedAlloc(bytes, 64);
        NativeMemory.Clear(_start, bytes);
    }

    ~LaneMemory() => Free();

    /// <summary>The next array; zero at first.</summary>
    public Lanes* Take(int count)
    {
        if (_used + count > _size)
        {
            throw new InvalidOperationException("The lane memory was made too small.");
        }

        Lanes* taken = _start + _used;
        _used += count;
        return taken;
    }

    public void Dispose()
    {
        Free();
        GC.SuppressFinalize(this);
    }

    private void Free()
    {
        NativeMemory.AlignedFree(_start);
        _start = null;
    }
}
