namespace Sightglass.Drawing.Diagram;

/// <summary>A network as terminals and chains: lines with just two ends are only pipe between two paths.</summary>
internal sealed class DiagramGraph
{
    private readonly Dictionary<string, DiagramNode> _nodes;
    private readonly Dictionary<string, List<DiagramNode>> _ends = new(StringComparer.Ordinal);
    private readonly Dictionary<string, DiagramTerminal> _terminals = new(StringComparer.Ordinal);
    private readonly HashSet<string> _used = [];

    public DiagramGraph(DiagramInput input)
    {
        _nodes = input.Nodes.ToDictionary(n => n.Id, StringComparer.Ordinal);
        foreach (DiagramNode node in input.Nodes.Where(n => n.Role is DiagramRole.Path or DiagramRole.Machine))
        {
            foreach (string end in Ends(node))
            {
                (_ends.TryGetValue(end, out List<DiagramNode>? list) ? list : _ends[end] = []).Add(node);
            }
        }

        foreach (DiagramNode node in input.Nodes.Where(IsTerminal))
        {
            _terminals[node.Id] = new DiagramTerminal(node);
        }

        foreach (DiagramNode path in input.Nodes.Where(n => n.Role == DiagramRole.Path && (IsTerminalId(Known(n.From)) || IsTerminalId(Known(n.To)))))
        {
            Follow(path);
        }

        // What is left are rings without a terminal: open each at one of its lines.
        foreach (DiagramNode path in input.Nodes.Where(n => n.Role == DiagramRole.Path))
        {
            if (!_used.Contains(path.Id))
            {
                _terminals.TryAdd(path.From!, new DiagramTerminal(_nodes[path.From!]));
                Follow(path);
            }
        }

        foreach (DiagramNode machine in input.Nodes.Where(n => n.Role == DiagramRole.Machine))
        {
            Machine(machine);
        }

        Terminals = [.. _terminals.Values.OrderBy(t => t.Node.Order).ThenBy(t => t.Id, StringComparer.Ordinal)];
    }

    public List<DiagramTerminal> Terminals { get; }

    public List<DiagramChain> Chains { get; } = [];

    /// <summary>Puts a return line without a name into a chain that goes straight back to a tank; chains from one source share it.</summary>
    public void SplitReturn(DiagramChain chain)
    {
        DiagramTerminal from = chain.From!;
        DiagramTerminal? shared = Terminals.Find(t => t.IsReturn && t.Id == "return of " + from.Id);
        Remove(chain);
        if (shared is null)
        {
            shared = new DiagramTerminal(new DiagramNode("return of " + from.Id, DiagramRole.Line, DiagramSymbol.Line, "")) { IsReturn = true };
            Terminals.Add(shared);
            Join(new DiagramChain(from, shared, [], []));
        }

        Join(new DiagramChain(shared, chain.To, chain.Links, chain.Lines));
    }

    private void Remove(DiagramChain chain)
    {
        Chains.Remove(chain);
        chain.From?.Out.Remove(chain);
        chain.To?.In.Remove(chain);
    }

    private void Join(DiagramChain chain)
    {
        Chains.Add(chain);
        chain.From?.Out.Add(chain);
        chain.To?.In.Add(chain);
    }

    private static IEnumerable<string> Ends(DiagramNode node)
    {
        if (node.From is not null)
        {
            yield return node.From;
        }

        if (node.To is not null)
        {
            yield return node.To;
        }
    }

    private string? Known(string? id) => id is not null && _nodes.TryGetValue(id, out DiagramNode? node) && node.Role is DiagramRole.Tank or DiagramRole.Line or DiagramRole.Machine ? id : null;

    private bool IsTerminalId(string? id) => id is null || _terminals.ContainsKey(id);

    private bool IsTerminal(DiagramNode node) => node.Role switch
    {
        DiagramRole.Tank or DiagramRole.Machine => true,
        DiagramRole.Line => node.IsHeader || !_ends.TryGetValue(node.Id, out List<DiagramNode>? ends) || ends.Count != 2 || ends[0].Id == ends[1].Id || ends.All(e => e.Role == DiagramRole.Machine),
        _ => false,
    };

    // From a path with a terminal at one end, on through lines with two ends, to the next terminal.
    private void Follow(DiagramNode path)
    {
        if (_used.Contains(path.Id))
        {
            return;
        }

        string? from = Known(path.From);
        string? to = Known(path.To);
        bool forward = IsTerminalId(from);
        List<DiagramLink> links = [];
        List<DiagramInnerLine> lines = [];
        string? start = forward ? from : to;
        string? here = start;
        DiagramNode next = path;
        while (true)
        {
            bool along = Known(next.From) == here;
            links.Add(new DiagramLink(next, !along));
            _used.Add(next.Id);
            here = along ? Known(next.To) : Known(next.From);
            if (IsTerminalId(here))
            {
                break;
            }

            DiagramNode? onward = _ends[here!].FirstOrDefault(n => !_used.Contains(n.Id) && n.Role == DiagramRole.Path);
            DiagramNode? machine = _ends[here!].FirstOrDefault(n => n.Role == DiagramRole.Machine);
            if (onward is null)
            {
                lines.Add(new DiagramInnerLine(here!, links.Count));
                here = machine?.Id;
                break;
            }

            lines.Add(new DiagramInnerLine(here!, links.Count));
            next = onward;
        }

        Add(start, here, links, lines);
    }

    // A machine on a line that is a terminal hangs on it without a path between; on a line with two ends the chain ended at it already.
    private void Machine(DiagramNode machine)
    {
        foreach ((string? line, bool takes) in new[] { (Known(machine.From), true), (Known(machine.To), false) })
        {
            if (line is not null && _terminals.ContainsKey(line))
            {
                Add(takes ? line : machine.Id, takes ? machine.Id : line, [], []);
            }
        }
    }

    private void Add(string? from, string? to, List<DiagramLink> links, List<DiagramInnerLine> lines)
    {
        if (links.Count(l => l.Reversed) * 2 > links.Count)
        {
            links = [.. Enumerable.Reverse(links).Select(l => l with { Reversed = !l.Reversed })];
            lines = [.. Enumerable.Reverse(lines).Select(l => l with { Gap = links.Count - l.Gap })];
            (from, to) = (to, from);
        }

        Join(new DiagramChain(from is null ? null : _terminals[from], to is null ? null : _terminals[to], links, lines));
    }
}
