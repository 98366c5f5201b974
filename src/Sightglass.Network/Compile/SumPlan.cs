using Sightglass.Network.Step;

namespace Sightglass.Network.Compile;

/// <summary>
/// Which terms each of a row of sums is made of: for every sum in order, how many are added, how many taken away, then where they stand. Gathering sums one by one
/// beats adding every term to its two sums: nothing has to be cleared, and no sum waits for its own last store.
/// </summary>
internal sealed class SumPlan
{
    private readonly List<int>[] _added;
    private readonly List<int>[] _taken;

    public SumPlan(int sums)
    {
        _added = [.. Enumerable.Range(0, sums).Select(_ => new List<int>())];
        _taken = [.. Enumerable.Range(0, sums).Select(_ => new List<int>())];
    }

    public void Add(int sum, int term) => _added[sum].Add(IndexStream.Offset(term));

    public void Take(int sum, int term) => _taken[sum].Add(IndexStream.Offset(term));

    public IndexStream ToStream() => new(_added.Zip(_taken, (added, taken) => (int[])[added.Count, taken.Count, .. added, .. taken]).SelectMany(s => s));
}
