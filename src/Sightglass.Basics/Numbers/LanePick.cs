using System.Runtime.Intrinsics;

namespace Sightglass.Basics.Numbers;

/// <summary>Which lanes of several groups of eight are the lanes of another group for a while, from its first on.</summary>
/// <param name="groups">How many groups there are to pick from.</param>
public sealed class LanePick(int groups)
{
    private readonly (int Group, int Lane)[] _picked = new (int, int)[Lanes.Count];
    private readonly long[] _index = new long[groups * Lanes.Count];
    private readonly long[] _back = new long[groups * Lanes.Count];
    private readonly uint[] _into = new uint[groups];
    private readonly uint[] _from = new uint[groups];

    public int Count { get; private set; }

    public bool IsFull => Count == Lanes.Count;

    /// <summary>The group and lane that a lane comes from.</summary>
    public (int Group, int Lane) this[int lane] => _picked[lane];

    public void Clear()
    {
        Count = 0;
        Array.Clear(_into);
        Array.Clear(_from);
    }

    /// <summary>Picks the next lane.</summary>
    /// <exception cref="IndexOutOfRangeException">Eight are picked already.</exception>
    public void Add(int group, int lane)
    {
        _picked[Count] = (group, lane);
        _index[(group * Lanes.Count) + Count] = lane;
        _back[(group * Lanes.Count) + lane] = Count;
        _into[group] |= 1u << Count;
        _from[group] |= 1u << lane;
        Count++;
    }

    /// <summary>Whether a lane of a group is picked.</summary>
    public bool Has(int group) => _from[group] != 0;

    /// <summary>From a group to the picked.</summary>
    public LaneShift From(int group) => new(Vector512.Create(_index.AsSpan(group * Lanes.Count, Lanes.Count)), _into[group]);

    /// <summary>From the picked back to a group.</summary>
    public LaneShift BackTo(int group) => new(Vector512.Create(_back.AsSpan(group * Lanes.Count, Lanes.Count)), _from[group]);
}
