using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Step;

/// <summary>Whole numbers that stay where they are in memory for as long as they are held, so that loops read them by pointer. Never changed.</summary>
internal sealed unsafe class IndexStream
{
    private readonly int[] _numbers;

    public IndexStream(IEnumerable<int> numbers)
    {
        int[] all = [.. numbers];
        _numbers = GC.AllocateUninitializedArray<int>(all.Length + 1, pinned: true);
        all.CopyTo(_numbers, 0);
        _numbers[^1] = 0;
        fixed (int* start = _numbers)
        {
            Start = start;
        }
    }

    /// <summary>How far the eight lanes of an index lie from the first in bytes: multiplied once here instead of at every use.</summary>
    public static int Offset(int index) => checked(index * sizeof(Lanes));

    /// <summary>The eight lanes whose <see cref="Offset"/> stands in a stream.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Read(Lanes* array, int* offset) => *(Lanes*)((byte*)array + *(uint*)offset);

    public int* Start { get; }

    public int Length => _numbers.Length - 1;
}
