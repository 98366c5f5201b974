using Sightglass.Network.Step;

namespace Sightglass.Network.Compile;

/// <summary>
/// Which terms each of a row of sums is made of: for every sum in order, how many are added, how many taken away, then where they stand. Gathering sums one by one
/// beats adding every term to its two sums: nothing has to be cleared, and no sum waits for its own last store.
/// </summary>
/// <param name="sums">How many.</param>
/// <param name="factors">A term is a product of so many.</param>
internal sealed class SumPlan(int sums, int factors = 1)
{
    private readonly List<int>[] _added = Empty(sums);
    private readonly List<int>[] _taken = Empty(sums);

    public void Add(int sum, params ReadOnlySpan<int> term) => Note(_added[sum], term);

    public void Take(int sum, params ReadOnlySpan<int> term) => Note(_taken[sum], term);

    public IndexStream ToStream() =>
        new(_added.Zip(_taken, (added, taken) => (int[])[added.Count / factors, taken.Count / factors, .. added, .. taken]).SelectMany(s => s));

    private static List<int>[] Empty(int count) => [.. Enumerable.Range(0, count).Select(_ => new List<int>())];

    private static void Note(List<int> terms, ReadOnlySpan<int> term)
    {
        foreach (int factor in term)
        {
            terms.Add(IndexStream.Offset(factor));
        }
    }
}
