namespace Sightglass.Drawing.Diagram;

/// <summary>
/// Finds the lines that go through one vehicle. They begin and end at what can be coupled and pass only what a person opens and shuts, or a pipe: so a brake pipe in two halves
/// with a pipe between them is one line, and a line fed by a valve is another.
/// </summary>
internal static class ThroughBuses
{
    public static List<ThroughBus> Of(IReadOnlyList<DiagramNode> nodes)
    {
        Dictionary<string, DiagramNode> known = nodes.ToDictionary(n => n.Id, StringComparer.Ordinal);
        ILookup<string, (DiagramNode Path, string Other)> ways = nodes.Where(n => IsPassed(n) && IsLine(n.From, known) && IsLine(n.To, known))
            .SelectMany(n => new[] { (Here: n.From!, Way: (n, n.To!)), (Here: n.To!, Way: (n, n.From!)) }).ToLookup(w => w.Here, w => w.Way, StringComparer.Ordinal);
        ILookup<string, DiagramNode> ends = nodes.Where(n => n.Role == DiagramRole.Path && n.Symbol != DiagramSymbol.Coupling)
            .SelectMany(n => new[] { n.From, n.To }.OfType<string>().Select(e => (e, n))).ToLookup(e => e.e, e => e.n, StringComparer.Ordinal);
        List<DiagramNode> hoses = [.. nodes.Where(n => n.IsEnd).OrderBy(n => n.Order).ThenBy(n => n.Id, StringComparer.Ordinal)];
        double middle = hoses.Count > 0 ? (hoses[0].Order + hoses[^1].Order) / 2 : 0;
        List<List<DiagramNode>> pairs =
        [
            .. from left in hoses.Where(h => h.Order <= middle)
               from right in hoses.Where(h => h.Order > middle)
               let way = Way(left, n => n.Id == right.Id, ways, known)
               where way is not null
               orderby way.Count, left.Order, left.Id, right.Id
               select way,
        ];
        HashSet<string> taken = [];
        List<ThroughBus> buses = [];
        foreach (List<DiagramNode> way in pairs.Where(w => !w.Exists(n => taken.Contains(n.Id))))
        {
            taken.UnionWith(way.Select(n => n.Id));
            buses.Add(new(way, true, true));
        }

        foreach (DiagramNode hose in hoses.Where(h => !taken.Contains(h.Id)))
        {
            // To where the line branches or ends; a hose that hangs on a line which goes through already is a line of its own.
            List<DiagramNode>? way = Way(hose, n => n.Id != hose.Id && (ends[n.Id].Count() != 2 || ways[n.Id].Count() < 2), ways, known);
            List<DiagramNode> line = way is not null && !way.Exists(n => taken.Contains(n.Id)) ? way : [hose];
            taken.UnionWith(line.Select(n => n.Id));
            bool left = hose.Order <= middle;
            buses.Add(left ? new(line, true, false) : new([.. Enumerable.Reverse(line)], false, true));
        }

        return buses;
    }

    private static bool IsPassed(DiagramNode node) =>
        node.Role == DiagramRole.Path && (node.Symbol == DiagramSymbol.Pipe || (node.Symbol == DiagramSymbol.Valve && node.IsOperated));

    private static bool IsLine(string? id, Dictionary<string, DiagramNode> known) =>
        id is not null && known.TryGetValue(id, out DiagramNode? node) && node.Role == DiagramRole.Line;

    /// <summary>The shortest way, in paths; null where there is none.</summary>
    private static List<DiagramNode>? Way(DiagramNode from, Func<DiagramNode, bool> isGoal, ILookup<string, (DiagramNode Path, string Other)> ways, Dictionary<string, DiagramNode> known)
    {
        Dictionary<string, (DiagramNode? Path, string? Before)> came = new(StringComparer.Ordinal) { [from.Id] = (null, null) };
        Queue<string> open = new([from.Id]);
        while (open.TryDequeue(out string? here))
        {
            if (isGoal(known[here]))
            {
                List<DiagramNode> way = [];
                for (string? at = here; at is not null; at = came[at].Before)
                {
                    way.Add(known[at]);
                    if (came[at].Path is { } path)
                    {
                        way.Add(path);
                    }
                }

                way.Reverse();
                return way;
            }

            foreach ((DiagramNode path, string other) in ways[here].OrderBy(w => w.Path.Id, StringComparer.Ordinal))
            {
                if (came.TryAdd(other, (path, here)))
                {
                    open.Enqueue(other);
                }
            }
        }

        return null;
    }
}
