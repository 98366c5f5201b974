using Sightglass.Network.Step;

namespace Sightglass.Network.Compile;

/// <summary>
/// The pattern of the factored matrix and the index streams by which it is factored and solved, without pivoting.
/// Rows are in elimination order; those of boundaries are not among them. Made in time proportional to the streams.
/// </summary>
internal sealed class FactorPlan
{
    private readonly int[][] _columns;
    private readonly int[] _diagonal;
    private readonly int[] _firstPlace;
    private readonly int[] _firstLeft;
    private readonly int[] _firstRight;

    /// <param name="pattern">For each row the columns it has, each once; the diagonal is one of them whether told or not.</param>
    public FactorPlan(IReadOnlyList<IEnumerable<int>> pattern)
    {
        Size = pattern.Count;
        _columns = new int[Size][];
        _diagonal = new int[Size];
        _firstPlace = new int[Size];
        _firstLeft = new int[Size];
        _firstRight = new int[Size];
        Fill(pattern);
        for (int i = 0; i < Size; i++)
        {
            _firstPlace[i] = Values;
            _firstLeft[i] = Left;
            Values += _columns[i].Length;
            Left += _diagonal[i];
        }

        Kept = Left;
        for (int i = Size - 1; i >= 0; i--)
        {
            _firstRight[i] = Kept;
            Kept += RightOf(i).Length;
        }

        Eliminate = new(EliminationStream());
        Lower = new(Enumerable.Range(0, Size).SelectMany(i => Row(LeftOf(i))));
        Upper = new(Enumerable.Range(0, Size).Reverse().SelectMany(i => Row(RightOf(i))));
    }

    /// <summary>How many rows are factored: all but those of boundaries.</summary>
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
    public int PlaceOf(int row, int column) => _firstPlace[row] + Array.BinarySearch(_columns[row], column);

    private ReadOnlySpan<int> LeftOf(int row) => _columns[row].AsSpan(0, _diagonal[row]);

    private ReadOnlySpan<int> RightOf(int row) => _columns[row].AsSpan(_diagonal[row] + 1);

    /// <summary>Row by row: what stands right of the diagonal in a row k is added to every later row that has k among its columns, k in rising order.</summary>
    private void Fill(IReadOnlyList<IEnumerable<int>> pattern)
    {
        int[] seenIn = new int[Size];
        Array.Fill(seenIn, -1);
        PriorityQueue<int, int> left = new();
        List<int> row = [];
        for (int i = 0; i < Size; i++)
        {
            row.Clear();
            Meet(i);
            foreach (int j in pattern[i])
            {
                Meet(j);
            }

            while (left.TryDequeue(out int k, out _))
            {
                foreach (int j in RightOf(k))
                {
                    Meet(j);
                }
            }

            row.Sort();
            _columns[i] = [.. row];
            _diagonal[i] = Array.BinarySearch(_columns[i], i);

            void Meet(int j)
            {
                if (seenIn[j] == i)
                {
                    return;
                }

                seenIn[j] = i;
                row.Add(j);
                if (j < i)
                {
                    left.Enqueue(j, j);
                }
            }
        }
    }

    private List<int> EliminationStream()
    {
        List<int> stream = [];
        int[] indexOf = new int[Size];
        List<int>[] products = new List<int>[Size];
        for (int i = 0; i < products.Length; i++)
        {
            products[i] = [];
        }

        for (int i = 0; i < Size; i++)
        {
            int[] columns = _columns[i];
            for (int at = 0; at < columns.Length; at++)
            {
                indexOf[columns[at]] = at;
                products[at].Clear();
            }

            for (int at = 0; at < _diagonal[i]; at++)
            {
                int k = columns[at];
                ReadOnlySpan<int> right = RightOf(k);
                for (int next = 0; next < right.Length; next++)
                {
                    products[indexOf[right[next]]].AddRange([IndexStream.Offset(_firstLeft[i] + at), IndexStream.Offset(_firstRight[k] + next)]);
                }
            }

            stream.AddRange([_diagonal[i], columns.Length - _diagonal[i] - 1]);
            for (int at = 0; at < columns.Length; at++)
            {
                if (at < _diagonal[i])
                {
                    stream.Add(IndexStream.Offset(columns[at]));
                }

                stream.Add(products[at].Count / 2);
                stream.AddRange(products[at]);
            }
        }

        return stream;
    }

    private static int[] Row(ReadOnlySpan<int> columns)
    {
        int[] row = new int[columns.Length + 1];
        row[0] = columns.Length;
        for (int i = 0; i < columns.Length; i++)
        {
            row[i + 1] = IndexStream.Offset(columns[i]);
        }

        return row;
    }
}
