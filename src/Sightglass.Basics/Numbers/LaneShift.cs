using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Sightglass.Basics.Numbers;

/// <summary>Puts some lanes of one row of eight numbers into lanes of another.</summary>
/// <param name="index">For each lane, which lane goes there; any from 0 to 7 where none does.</param>
/// <param name="lanes">The lanes into which one goes, a bit each.</param>
public readonly struct LaneShift(Vector512<long> index, uint lanes)
{
    private readonly Lanes _mask = Lanes.MaskOf(lanes);

    /// <summary>A row with lanes of another put in; the other lanes stay.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Lanes Apply(Lanes from, Lanes to) =>
        Lanes.Select(_mask, new(Vector512.IsHardwareAccelerated ? Vector512.ShuffleNative(from.V, index) : Vector512.Shuffle(from.V, index)), to);
}
