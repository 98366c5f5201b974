namespace Sightglass.Drawing.Ladder;

/// <summary>A piece of a circuit that hangs together without the rails, laid out by itself: columns from 0, levels from 0 (upper rail).</summary>
internal sealed class LadderBlock(string plus, string minus, IReadOnlyList<LadderPart> parts)
{
    private readonly Dictionary<string, int> _level = new(StringComparer.Ordinal);
    private readonly HashSet<string> _visited = new(StringComparer.Ordinal);
    private readonly HashSet<LadderPart> _placed = [];

    public int Columns { get; private set; }

    /// <summary>Levels that its own wires take; the lower rail comes after them.</summary>
    public int Levels => _level.Values.DefaultIfEmpty(0).Max();

    /// <summary>Each part with its column and the wire that is up.</summary>
    public List<(LadderPart Part, int Column, string Upper, string Lower)> Rungs { get; } = [];

    public int LevelOf(string wire) => _level[wire];

    public LadderBlock Lay()
    {
        SetLevels();
        // What hangs on the upper rail first; what does not reach it hangs on the wire that is highest.
        Visit(plus, -1);
        foreach (string wire in _level.Keys.OrderBy(w => _level[w]).ToList())
        {
            Visit(wire, -1);
        }

        return this;
    }

    /// <summary>The longest way from the upper rail, along parts that lead away from it.</summary>
    private void SetLevels()
    {
        Dictionary<string, int> near = Order();
        foreach (string wire in parts.SelectMany(p => new[] { p.Plus, p.Minus }).Where(w => w != plus && w != minus).Distinct(StringComparer.Ordinal))
        {
            _level[wire] = 1;
        }

        bool moved = true;
        for (int round = 0; moved && round < parts.Count; round++)
        {
            moved = false;
            foreach (LadderPart part in parts)
            {
                (string upper, string lower) = Ends(part, near);
                if (_level.TryGetValue(lower, out int level) && _level.TryGetValue(upper, out int above) && above + 1 > level)
                {
                    _level[lower] = above + 1;
                    moved = true;
                }
            }
        }
    }

    private Dictionary<string, int> Distances()
    {
        Dictionary<string, int> near = new(StringComparer.Ordinal) { [plus] = 0, [minus] = int.MaxValue };
        Queue<string> open = new([plus]);
        while (open.TryDequeue(out string? wire))
        {
            foreach (LadderPart part in parts)
            {
                string? other = part.Plus == wire ? part.Minus : part.Minus == wire ? part.Plus : null;
                if (other is not null && near.TryAdd(other, near[wire] + 1))
                {
                    open.Enqueue(other);
                }
            }
        }

        foreach (string wire in parts.SelectMany(p => new[] { p.Plus, p.Minus }))
        {
            near.TryAdd(wire, int.MaxValue - 1);
        }

        return near;
    }

    /// <summary>
    /// Every wire its own place from the upper rail down: by distance, and among those as far away the plus side of a part first; where that goes round, as the book has them. Then no two wires are at one height
    /// that a part joins.
    /// </summary>
    private Dictionary<string, int> Order()
    {
        Dictionary<string, int> near = Distances();
        List<string> left = [.. parts.SelectMany(p => new[] { p.Plus, p.Minus }).Distinct(StringComparer.Ordinal).OrderBy(w => near[w])];
        Dictionary<string, int> order = new(StringComparer.Ordinal);
        while (left.Count > 0)
        {
            string[] next = [.. left.TakeWhile(w => near[w] == near[left[0]])];
            string first = next.FirstOrDefault(w => !parts.Any(p => p.Minus == w && p.Plus != w && next.Contains(p.Plus))) ?? next[0];
            order[first] = order.Count;
            left.Remove(first);
        }

        order.TryAdd(plus, -1);
        order[minus] = int.MaxValue;
        return order;
    }

    private static (string Upper, string Lower) Ends(LadderPart part, Dictionary<string, int> near) =>
        near[part.Minus] < near[part.Plus] ? (part.Minus, part.Plus) : (part.Plus, part.Minus);

    private void Visit(string wire, int column)
    {
        if (wire == minus || !_visited.Add(wire))
        {
            return;
        }

        bool first = column >= 0;
        foreach (LadderPart part in parts.Where(p => (p.Plus == wire || p.Minus == wire) && !_placed.Contains(p)))
        {
            string other = part.Plus == wire ? part.Minus : part.Plus;
            if (other == plus || (other != minus && _level[other] <= LevelOrRail(wire)))
            {
                continue; // drawn from its other end
            }

            int at = first ? column : Columns++;
            first = false;
            _placed.Add(part);
            Rungs.Add((part, at, wire, other));
            Visit(other, at);
        }
    }

    private int LevelOrRail(string wire) => wire == plus ? 0 : _level[wire];
}
