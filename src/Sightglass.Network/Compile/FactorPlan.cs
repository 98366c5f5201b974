using Sightglass.Network.Step;

namespace Sightglass.Network.Compile;

/// <summary>
/// The pattern of the factored matrix and the index streams by which it is factored and solved, without pivoting.
/// Rows are in elimination order.
/// </summary>
internal sealed class FactorPlan
{
    private readonly Dictionary<long, int> _place = [];
    private readonly Dictionary<long, int> _stand = [];

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
        int left = 0;
        int right = 0;
        foreach (int i in Enumerable.Range(0, Size))
        {
            foreach (int j in pattern[i].Where(j => j < i))
            {
                _stand[Key(i, j)] = left++;
            }
        }

        foreach (int i in Enumerable.Range(0, Size).Reverse())
        {
            foreach (int j in pattern[i].Where(j => j > i))
            {
                _stand[Key(i, j)] = left + right++;
            }
        }

        Left = left;
        Kept = left + right;
        Eliminate = new(EliminationStream(pattern));
        Lower = new(Enumerable.Range(0, Size).SelectMany(i => Row(pattern[i].Where(j => j < i))));
        Upper = new(Enumerable.Range(0, Size).Reverse().SelectMany(i => Row(pattern[i].Where(j => j > i))));
    }

    public int Size { get; }

    /// <summary>How many places the factored matrix has, the diagonal included: numbered row by row.</summary>
    public int Values { get; }

    /// <summary>How many of them are left of the diagonal.</summary>
    public int Left { get; }

    /// <summary>
    /// How many are kept once factored: those left of the diagonal row by row, then those right of it, the last row first, each as the substitutions come by.
    /// </summary>
    public int Kept { get; }

    /// <summary>
    /// For each row how many places it has left and right of the diagonal, then for each of its places from left to right how many products are taken off it and so
    /// many pairs of kept factors; places left of the diagonal have their column in front.
    /// </summary>
    public IndexStream Eliminate { get; }

    /// <summary>For each row a count, then so many columns left of the diagonal.</summary>
    public IndexStream Lower { get; }

    /// <summary>The same right of the diagonal, the last row first.</summary>
    public IndexStream Upper { get; }

    /// <summary>The number of the place in a row and column.</summary>
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
            stream.AddRange([left.Length, pattern[i].Count - left.Length - 1]);
            foreach (int j in pattern[i])
            {
                int[] factors = [.. left.Where(k => k < j && pattern[k].Contains(j)).SelectMany(k => new[] { Stand(i, k), Stand(k, j) })];
                stream.AddRange([.. j < i ? new[] { IndexStream.Offset(j) } : [], factors.Length / 2, .. factors]);
            }
        }

        return stream;
    }

    private int Stand(int row, int column) => IndexStream.Offset(_stand[Key(row, column)]);

    private static IEnumerable<int> Row(IEnumerable<int> columns) => columns.Select(IndexStream.Offset).Prepend(columns.Count());
}
