namespace Sightglass.Drawing.Diagram;

/// <summary>
/// Finds an order of a vehicle's rows and columns in which lines are short and cross seldom: from the order in which things stand on the machine, each row and column is
/// tried at every other place, as long as that helps. Deterministic.
/// </summary>
internal sealed class ThroughOrder
{
    /// <summary>What a column on the wrong side of a part that divides a line costs: never worth it.</summary>
    private const double Wrong = 1000;

    private const double VesselOverlap = 4;
    private const double Tie = 0.04;
    private const int Passes = 40;

    private readonly ThroughBlock _block;
    private readonly bool _busesStand;
    private readonly Dictionary<string, int> _node = new(StringComparer.Ordinal);
    private readonly ThroughRow[] _rowOf;
    private readonly bool[] _isBus;
    private readonly (int A, int B, int Rank)[] _ends;
    private readonly List<(int Part, int[] Left, int[] Right)> _dividers = [];
    private readonly int[] _first;
    private readonly int[] _last;
    private readonly Dictionary<ThroughRow, int> _height = [];

    private ThroughOrder(ThroughBlock block, bool busesStand)
    {
        (_block, _busesStand) = (block, busesStand);
        List<ThroughRow> rows = [];
        List<bool> isBus = [];
        foreach (ThroughRow row in block.Rows)
        {
            foreach (DiagramNode node in row.Nodes)
            {
                _node[node.Id] = rows.Count;
                rows.Add(row);
                isBus.Add(row.Sort == ThroughRowSort.Bus);
            }
        }

        (_rowOf, _isBus) = ([.. rows], [.. isBus]);
        _ends = [.. block.Columns.Select((c, i) => (c.InRow is null ? _node[c.Upper] : -1, c.Lower is { } l ? _node[l] : -1, i))];
        (_first, _last) = (new int[rows.Count], new int[rows.Count]);
        for (int i = 0; i < block.Columns.Count; i++)
        {
            if (block.Columns[i].InRow is { } part)
            {
                IReadOnlyList<DiagramNode> line = block.RowOf(part.Id).Bus!.Nodes;
                int at = line.ToList().FindIndex(n => n.Id == part.Id);
                _dividers.Add((i, [.. line.Take(at).Where(n => _node.ContainsKey(n.Id)).Select(n => _node[n.Id])], [.. line.Skip(at).Where(n => _node.ContainsKey(n.Id)).Select(n => _node[n.Id])]));
            }
        }
    }

    /// <summary>Puts rows and columns in order; upper ends are upper ends afterwards.</summary>
    /// <param name="busesStand">Whether the lines that go through keep their order: another vehicle has given it.</param>
    /// <returns>Whether every column stands on its side of what divides a line.</returns>
    public static bool Apply(ThroughBlock block, bool busesStand)
    {
        ThroughOrder order = new(block, busesStand);
        int[] columns = [.. Enumerable.Range(0, block.Columns.Count)];
        double best = order.Cost(columns);
        for (int pass = 0; pass < Passes; pass++)
        {
            double before = best;
            best = order.MoveColumns(columns, best);
            best = order.MoveRows(columns, best);
            if (best > before - 1e-9)
            {
                break;
            }
        }

        List<ThroughColumn> sorted = [.. columns.Select(c => block.Columns[c])];
        block.Columns.Clear();
        block.Columns.AddRange(sorted);
        foreach (ThroughColumn column in sorted.Where(c => c.Lower is not null && block.Rows.IndexOf(block.RowOf(c.Upper)) > block.Rows.IndexOf(block.RowOf(c.Lower))))
        {
            column.TurnOver();
        }

        return best < Wrong;
    }

    private double MoveColumns(int[] columns, double best)
    {
        for (int c = 0; c < columns.Length; c++)
        {
            int at = Array.IndexOf(columns, c), bestAt = at;
            for (int to = 0; to < columns.Length; to++)
            {
                Move(columns, Array.IndexOf(columns, c), to);
                double cost = Cost(columns);
                if (cost < best - 1e-9)
                {
                    (best, bestAt) = (cost, to);
                }
            }

            Move(columns, Array.IndexOf(columns, c), bestAt);
        }

        return best;
    }

    private double MoveRows(int[] columns, double best)
    {
        foreach (ThroughRow row in _block.Rows.Where(r => r.Sort == ThroughRowSort.Lines || (r.Sort == ThroughRowSort.Bus && !_busesStand)).ToList())
        {
            int bestAt = _block.Rows.IndexOf(row);
            for (int to = 1; to < _block.Rows.Count - 1; to++)
            {
                Place(row, to);
                if (IsAllowed())
                {
                    double cost = Cost(columns);
                    if (cost < best - 1e-9)
                    {
                        (best, bestAt) = (cost, to);
                    }
                }
            }

            Place(row, bestAt);
        }

        return best;
    }

    private void Place(ThroughRow row, int at)
    {
        _block.Rows.Remove(row);
        _block.Rows.Insert(at, row);
    }

    /// <summary>Lines that go through lie side by side.</summary>
    private bool IsAllowed()
    {
        int first = _block.Rows.FindIndex(r => r.Sort == ThroughRowSort.Bus), last = _block.Rows.FindLastIndex(r => r.Sort == ThroughRowSort.Bus);
        return first < 0 || last - first + 1 == _block.Rows.Count(r => r.Sort == ThroughRowSort.Bus);
    }

    private static void Move(int[] columns, int from, int to)
    {
        int moved = columns[from];
        if (from < to)
        {
            Array.Copy(columns, from + 1, columns, from, to - from);
        }
        else
        {
            Array.Copy(columns, to, columns, to + 1, from - to);
        }

        columns[to] = moved;
    }

    private double Cost(int[] columns)
    {
        for (int i = 0; i < _block.Rows.Count; i++)
        {
            _height[_block.Rows[i]] = i;
        }

        Array.Fill(_first, int.MaxValue);
        Array.Fill(_last, -1);
        for (int i = 0; i < columns.Length; i++)
        {
            (int a, int b, _) = _ends[columns[i]];
            Reach(a, i);
            Reach(b, i);
        }

        double cost = 0;
        for (int n = 0; n < _rowOf.Length; n++)
        {
            if (!_isBus[n] && _last[n] >= 0)
            {
                cost += _last[n] - _first[n];
                cost += VesselOverlap * Overlaps(n, columns);
            }
        }

        for (int i = 0; i < columns.Length; i++)
        {
            (int a, int b, int rank) = _ends[columns[i]];
            cost += Tie * Math.Abs(rank - i);
            if (a >= 0 && b >= 0)
            {
                int top = Math.Min(_height[_rowOf[a]], _height[_rowOf[b]]), foot = Math.Max(_height[_rowOf[a]], _height[_rowOf[b]]);
                cost += foot - top + Crossings(i, top, foot);
            }
        }

        return cost + (Wrong * Strays(columns));
    }

    private void Reach(int node, int at)
    {
        if (node >= 0)
        {
            _first[node] = Math.Min(_first[node], at);
            _last[node] = Math.Max(_last[node], at);
        }
    }

    // Of two vessels in a row, how many columns of one stand on the wrong side of a column of the other.
    private int Overlaps(int node, int[] columns)
    {
        int found = 0;
        if (_rowOf[node].Sort is ThroughRowSort.Vessels or ThroughRowSort.Cylinders)
        {
            for (int other = 0; other < node; other++)
            {
                if (_rowOf[other] == _rowOf[node] && Math.Min(_last[node], _last[other]) > Math.Max(_first[node], _first[other]))
                {
                    found += Mixed(node, other, columns);
                }
            }
        }

        return found;
    }

    private int Mixed(int one, int two, int[] columns)
    {
        int ones = 0, twos = 0, before = 0;
        foreach (int c in columns)
        {
            bool first = _ends[c].A == one || _ends[c].B == one;
            bool second = _ends[c].A == two || _ends[c].B == two;
            ones += first ? 1 : 0;
            twos += second ? 1 : 0;
            before += second ? ones : 0;
        }

        return Math.Min(before, (ones * twos) - before);
    }

    private int Crossings(int at, int top, int foot)
    {
        int found = 0;
        for (int n = 0; n < _rowOf.Length; n++)
        {
            int height = _height[_rowOf[n]];
            found += height > top && height < foot && (_isBus[n] || (_first[n] < at && _last[n] > at)) ? 1 : 0;
        }

        return found;
    }

    // Counted by columns, so that each one that is put right is a step forward.
    private int Strays(int[] columns)
    {
        int found = 0;
        foreach ((int part, int[] left, int[] right) in _dividers)
        {
            int at = Array.IndexOf(columns, part);
            for (int i = 0; i < columns.Length; i++)
            {
                (int a, int b, _) = _ends[columns[i]];
                int[] wrong = i > at ? left : right;
                found += i != at && (Array.IndexOf(wrong, a) >= 0 || Array.IndexOf(wrong, b) >= 0) ? 1 : 0;
            }
        }

        return found;
    }
}
