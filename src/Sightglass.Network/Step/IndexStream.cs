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

    public int* Start { get; }

    public int Length => _numbers.Length - 1;
}
