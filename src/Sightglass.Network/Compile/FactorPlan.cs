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
        Diagonal = [.. Enumerable.Range(0, Size).Select(i => _place[Key(i, i)])];
        Eliminate = EliminationStream(pattern);
        (Lower, LowerStart) = Rows(pattern, (row, column) => column < row);
        (Upper, UpperStart) = Rows(pattern, (row, column) => column > row);
    }

    public int Size { get; }

    /// <summary>How many places the factored matrix has.</summary>
    public int Values { get; }

    public int[] Diagonal { get; }

    /// <summary>Runs of: pivot row, place of the multiplier, count, then (target, source) pairs.</summary>
    public int[] Eliminate { get; }

    /// <summary>Pairs (place, column) below the diagonal, row by row.</summary>
    public int[] Lower { get; }

    public int[] LowerStart { get; }

    /// <summary>Pairs (place, column) above the diagonal, row by row.</summary>
    public int[] Upper { get; }

    public int[] UpperStart { get; }

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

    private int[] EliminationStream(SortedSet<int>[] pattern)
    {
        List<int> stream = [];
        List<int>[] below = [.. pattern.Select(_ => new List<int>())];
        for (int i = 0; i < Size; i++)
        {
            foreach (int j in pattern[i].Where(j => j < i))
            {
                below[j].Add(i);
            }
        }

        for (int k = 0; k < Size; k++)
        {
            int[] right = [.. pattern[k].Where(j => j > k)];
            foreach (int i in below[k])
            {
                stream.AddRange([k, PlaceOf(i, k), right.Length]);
                foreach (int j in right)
                {
                    stream.AddRange([PlaceOf(i, j), PlaceOf(k, j)]);
                }
            }
        }

        return [.. stream];
    }

    private (int[] Pairs, int[] Start) Rows(SortedSet<int>[] pattern, Func<int, int, bool> wanted)
    {
        List<int> pairs = [];
        int[] start = new int[Size + 1];
        for (int i = 0; i < Size; i++)
        {
            foreach (int j in pattern[i].Where(j => wanted(i, j)))
            {
                pairs.AddRange([PlaceOf(i, j), j]);
            }

            start[i + 1] = pairs.Count / 2;
        }

        return ([.. pairs], start);
    }
}
