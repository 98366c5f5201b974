using Sightglass.Network.Step;

namespace Sightglass.Network.Compile;

/// <summary>
/// The pattern of the factored matrix and the index streams by which it is factored and solved, without pivoting.
/// Rows are in elimination order.
/// </summary>
internal sealed class FactorPlan
{
    private readonly Dictionary<long, int> _place = [];

    public FactorPlan(SortedSet<int>[] pattern)
    {
        Size = pattern.Length;
        Fill(pattern);
        foreach ((SortedSet<int> columns, int row) in pattern.Select((c, i) => (c, i)))
        {
            foreach (int column in columns)
            {
                _place[Key(row, column)] = _place.Count;
            }
        }

        Values = _place.Count;
        Eliminate = new(EliminationStream(pattern));
        Lower = new(Enumerable.Range(0, Size).SelectMany(i => Row(i, pattern[i].Where(j => j < i))));
        Upper = new(Enumerable.Range(0, Size).Reverse().SelectMany(i => Row(i, pattern[i].Where(j => j > i))));
    }

    public int Size { get; }

    /// <summary>How many places the factored matrix has.</summary>
    public int Values { get; }

    /// <summary>
    /// For each row: how many places it has, the place of its diagonal, how many rows are taken off it; then for each of these its number, the place of the multiplier, a
    /// count, and so many pairs (target, source).
    /// </summary>
    public IndexStream Eliminate { get; }

    /// <summary>For each row a count, then so many pairs (place, column) left of the diagonal.</summary>
    public IndexStream Lower { get; }

    /// <summary>The same right of the diagonal, the last row first.</summary>
    public IndexStream Upper { get; }

    /// <summary>Where row, column stands among the values.</summary>
    public int PlaceOf(int row, int column) => _place[Key(row, column)];

    private static long Key(int row, int column) => ((long)row << 32) | (uint)column;

    private static void Fill(SortedSet<int>[] pattern)
    {
        int n = pattern.Length;
        List<int>[] below = new List<int>[n];
        for (int i = 0; i < n; i++)
        {
            pattern[i].Add(i);
            below[i] = [];
        }

        for (int i = 0; i < n; i++)
        {
            foreach (int j in pattern[i].Where(j => j < i))
            {
                below[j].Add(i);
            }
        }

        for (int k = 0; k < n; k++)
        {
            int[] right = [.. pattern[k].Where(j => j > k)];
            foreach (int i in below[k].Distinct().ToArray())
            {
                foreach (int j in right)
                {
                    if (pattern[i].Add(j) && j < i)
                    {
                        below[j].Add(i);
                    }
                }
            }
        }
    }

    private IEnumerable<int> EliminationStream(SortedSet<int>[] pattern)
    {
        List<int> stream = [];
        for (int i = 0; i < Size; i++)
        {
            int[] left = [.. pattern[i].Where(k => k < i)];
            stream.AddRange([pattern[i].Count, PlaceOf(i, i), left.Length]);
            foreach (int k in left)
            {
                int[] right = [.. pattern[k].Where(j => j > k)];
                stream.AddRange([k, PlaceOf(i, k), right.Length, .. right.SelectMany(j => new[] { PlaceOf(i, j), PlaceOf(k, j) })]);
            }
        }

        return stream;
    }

    private IEnumerable<int> Row(int row, IEnumerable<int> columns) => columns.SelectMany(j => new[] { PlaceOf(row, j), j }).Prepend(columns.Count());
}
