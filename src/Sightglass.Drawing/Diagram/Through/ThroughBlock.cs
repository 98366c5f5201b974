using System.Collections.Immutable;

namespace Sightglass.Drawing.Diagram;

/// <summary>One vehicle as rows and columns: reservoirs above, cylinders below, the lines that go through between them, and columns of paths from row to row.</summary>
internal sealed class ThroughBlock
{
    private readonly Dictionary<string, ThroughRow> _rows = new(StringComparer.Ordinal);

    /// <param name="nodes">Of the vehicle.</param>
    /// <param name="buses">Lines that go through it, from the top; null where another vehicle has one that this one has not.</param>
    public ThroughBlock(IReadOnlyList<DiagramNode> nodes, IReadOnlyList<ThroughBus?> buses)
    {
        Nodes = nodes;
        HashSet<string> onBus = [.. buses.OfType<ThroughBus>().SelectMany(b => b.Nodes).Select(n => n.Id)];
        ILookup<string, DiagramNode> gauges = nodes.Where(n => n.Role == DiagramRole.Gauge && n.Of.Length > 0).ToLookup(n => n.Of[0], StringComparer.Ordinal);
        ImmutableArray<DiagramNode> rest =
        [
            .. nodes.Where(n => n.Symbol != DiagramSymbol.Coupling && !(n.Role == DiagramRole.Path && onBus.Contains(n.Id)))
                .Select(n => onBus.Contains(n.Id) || gauges.Contains(n.Id) ? n with { IsHeader = true } : n),
        ];
        DiagramGraph graph = new(new DiagramInput("", "", rest));
        MakeRows(graph, buses, onBus, gauges);
        foreach (DiagramChain chain in graph.Chains)
        {
            Add(chain);
        }

        foreach (DiagramNode node in Rows.Where(r => r.Sort != ThroughRowSort.Vessels).SelectMany(r => r.Nodes))
        {
            if (gauges[node.Id].OrderBy(g => g.Id, StringComparer.Ordinal).ToList() is { Count: > 0 } shown)
            {
                Columns.Add(new() { Upper = node.Id, Gauges = shown, IsAbove = node.Role == DiagramRole.Line, Order = shown[0].Order });
            }
        }

        foreach (ThroughBus bus in buses.OfType<ThroughBus>())
        {
            foreach (DiagramNode part in bus.Middle)
            {
                Columns.Add(new() { Upper = part.Id, InRow = part, Order = part.Order });
                _rows[part.Id] = _rows[bus.Nodes[0].Id];
            }
        }

        Dictionary<string, int> depths = Depths();
        List<ThroughColumn> sorted = [.. Columns.OrderBy(c => depths.GetValueOrDefault(c.Upper)).ThenBy(c => c.Order).ThenBy(NameOf, StringComparer.Ordinal)];
        Columns.Clear();
        Columns.AddRange(sorted);
    }

    public IReadOnlyList<DiagramNode> Nodes { get; }

    /// <summary>From the top.</summary>
    public List<ThroughRow> Rows { get; } = [];

    /// <summary>From left to right.</summary>
    public List<ThroughColumn> Columns { get; } = [];

    /// <summary>Rows of the lines that go through the train, from the top; of some this vehicle may have no part.</summary>
    public List<ThroughRow> Buses => [.. Rows.Where(r => r.Sort == ThroughRowSort.Bus)];

    public ThroughRow RowOf(string node) => _rows[node];

    /// <summary>Puts the lines that go through in the order that another vehicle has given them.</summary>
    public void SetBusOrder(IReadOnlyList<int> order)
    {
        List<ThroughRow> buses = [.. Buses.OrderBy(b => order.ToList().IndexOf(b.Number))];
        int at = Rows.FindIndex(r => r.Sort == ThroughRowSort.Bus);
        foreach (ThroughRow bus in buses)
        {
            Rows[at++] = bus;
        }
    }

    /// <summary>Puts all of a row into another.</summary>
    public void Merge(ThroughRow from, ThroughRow into)
    {
        foreach (DiagramNode node in from.Nodes)
        {
            into.Nodes.Add(node);
            _rows[node.Id] = into;
        }

        Rows.Remove(from);
    }

    public static string NameOf(ThroughColumn column) => column.InRow?.Id ?? (column.Gauges.Count > 0 ? column.Gauges[0].Id : column.Links.Count > 0 ? column.Links[0].Path.Id : column.Upper);

    /// <summary>Steps from where something is brought in from outside, along the paths: what is fed stands to the right of what feeds it. Nothing where nothing is brought in.</summary>
    private Dictionary<string, int> Depths()
    {
        Dictionary<string, int> depths = new(StringComparer.Ordinal);
        Queue<string> open = new(Columns.Where(c => c.BringsIn).Select(c => c.Upper).Distinct());
        foreach (string source in open)
        {
            depths[source] = 0;
        }

        while (open.TryDequeue(out string? here))
        {
            foreach (string next in Columns.Where(c => c.Upper == here && c.Lower is not null).Select(c => c.Lower!).Where(n => depths.TryAdd(n, depths[here] + 1)))
            {
                open.Enqueue(next);
            }
        }

        return depths;
    }

    private void MakeRows(DiagramGraph graph, IReadOnlyList<ThroughBus?> buses, HashSet<string> onBus, ILookup<string, DiagramNode> gauges)
    {
        ThroughRow vessels = new(ThroughRowSort.Vessels), cylinders = new(ThroughRowSort.Cylinders);
        Rows.Add(vessels);
        foreach (DiagramTerminal terminal in graph.Terminals.Where(t => t.IsTank))
        {
            Put(terminal.Node, terminal.Node.Symbol == DiagramSymbol.Cylinder ? cylinders : vessels);
        }

        foreach ((ThroughBus? bus, int number) in buses.Select((b, i) => (b, i)))
        {
            ThroughRow row = new(ThroughRowSort.Bus) { Bus = bus, Number = number };
            Rows.Add(row);
            foreach (DiagramNode line in bus?.Lines ?? [])
            {
                Put(line, row);
            }
        }

        // A line at which only one chain ends is the name at the end of that chain.
        foreach (DiagramTerminal terminal in graph.Terminals.Where(t => t.IsNet && !onBus.Contains(t.Id) && (t.In.Count + t.Out.Count > 1 || gauges.Contains(t.Id))))
        {
            NewLine(terminal.Node);
        }

        Rows.Add(cylinders);
    }

    private void Put(DiagramNode node, ThroughRow row)
    {
        row.Nodes.Add(node);
        _rows[node.Id] = row;
    }

    private void NewLine(DiagramNode node)
    {
        ThroughRow row = new(ThroughRowSort.Lines);
        Rows.Insert(1, row);
        Put(node, row);
    }

    private void Add(DiagramChain chain)
    {
        List<(string, int)> flow = chain.Links.Count > 0 ? [(chain.Links[0].Path.Id, chain.Links[0].Reversed ? -1 : 1)] : [];
        ThroughRow? from = chain.From is { } f ? _rows.GetValueOrDefault(f.Id) : null;
        ThroughRow? to = chain.To is { } t ? _rows.GetValueOrDefault(t.Id) : null;
        if (from is null && to is null)
        {
            // Joined to nothing else: what it takes from gets a row, so that it is drawn.
            NewLine(chain.From?.Node ?? new DiagramNode("before " + chain.Links[0].Path.Id, DiagramRole.Line, DiagramSymbol.Line, ""));
            from = Rows[1];
        }

        string start = chain.From?.Id ?? (from is not null ? from.Nodes[^1].Id : "");
        if (from is not null && to is not null && from == to)
        {
            // Both ends in one row: down to a line of its own and up again.
            DiagramNode lane = new("way of " + chain.Links[0].Path.Id, DiagramRole.Line, DiagramSymbol.Line, "");
            NewLine(lane);
            int half = (chain.Links.Count + 1) / 2;
            Columns.Add(ThroughColumn.Of(start, lane.Id, chain.Links.Take(half), chain.Lines.Where(l => l.Gap < half), flow));
            Columns.Add(ThroughColumn.Of(lane.Id, chain.To!.Id, chain.Links.Skip(half), chain.Lines.Where(l => l.Gap >= half).Select(l => l with { Gap = l.Gap - half }), flow));
        }
        else if (from is not null)
        {
            Columns.Add(ThroughColumn.Of(start, to is null ? null : chain.To!.Id, chain.Links, chain.Lines, flow, to is null ? chain.To?.Node : null));
        }
        else
        {
            ThroughColumn column = ThroughColumn.Of("", chain.To!.Id, chain.Links, chain.Lines, flow, chain.From?.Node, chain.From is null);
            column.TurnOver();
            column.Lower = null;
            Columns.Add(column);
        }
    }
}
