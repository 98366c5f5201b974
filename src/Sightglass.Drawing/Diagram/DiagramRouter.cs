namespace Sightglass.Drawing.Diagram;

/// <summary>Decides for every line whether it is a return, for every terminal its rank, for every chain its route.</summary>
internal sealed class DiagramRouter
{
    private readonly DiagramGraph _graph;
    private readonly HashSet<(DiagramTerminal From, DiagramTerminal To)> _reach = [];

    public DiagramRouter(DiagramGraph graph)
    {
        _graph = graph;
        foreach (DiagramTerminal terminal in graph.Terminals)
        {
            foreach (DiagramTerminal other in Reached(terminal, _ => true))
            {
                _reach.Add((terminal, other));
            }
        }
    }

    public void Route()
    {
        foreach (DiagramTerminal net in _graph.Terminals.Where(t => t.IsNet))
        {
            net.IsReturn = LeadsOnlyBack(net);
        }

        List<DiagramChain> onward = Onward();
        Rank(onward);
        foreach (DiagramChain chain in _graph.Chains.Where(c => !onward.Contains(c) && GoesBack(c)).ToList())
        {
            _graph.SplitReturn(chain);
        }

        foreach (DiagramChain chain in _graph.Chains)
        {
            chain.Route = RouteOf(chain, onward.Contains(chain));
        }
    }

    private static List<DiagramTerminal> Reached(DiagramTerminal from, Func<DiagramTerminal, bool> passes)
    {
        List<DiagramTerminal> found = [];
        Stack<DiagramTerminal> open = new([from]);
        while (open.TryPop(out DiagramTerminal? here))
        {
            foreach (DiagramTerminal next in here.Out.Select(c => c.To).OfType<DiagramTerminal>())
            {
                if (!found.Contains(next))
                {
                    found.Add(next);
                    if (passes(next))
                    {
                        open.Push(next);
                    }
                }
            }
        }

        return found;
    }

    // A return leads to tanks it comes from, and neither to a machine nor outside before it reaches them.
    private bool LeadsOnlyBack(DiagramTerminal net)
    {
        List<DiagramTerminal> ahead = Reached(net, t => !t.IsTank);
        bool outside = ahead.Where(t => !t.IsTank).Append(net).Any(t => t.Out.Any(c => c.To is null));
        bool fed = net.In.Any(c => c.From is { IsTank: false });
        return fed && !outside && ahead.Any(t => t.IsTank) && !ahead.Any(t => t.IsMachine) && ahead.Where(t => t.IsTank).All(t => _reach.Contains((t, net)));
    }

    // Chains that carry ranks forward: between supply terminals, without those that close a circle.
    private List<DiagramChain> Onward()
    {
        List<DiagramChain> onward = [.. _graph.Chains.Where(c => c.From is { IsReturn: false } from && c.To is { IsReturn: false } to && from != to
            && !(to.IsTank && !from.IsTank && _reach.Contains((to, from))))];
        HashSet<DiagramTerminal> done = [];
        HashSet<DiagramTerminal> path = [];
        void Visit(DiagramTerminal here)
        {
            path.Add(here);
            foreach (DiagramChain chain in here.Out.Where(onward.Contains).ToList())
            {
                if (path.Contains(chain.To!))
                {
                    onward.Remove(chain);
                }
                else if (!done.Contains(chain.To!))
                {
                    Visit(chain.To!);
                }
            }

            path.Remove(here);
            done.Add(here);
        }

        foreach (DiagramTerminal terminal in _graph.Terminals.OrderByDescending(t => t.IsTank).ThenByDescending(t => t.IsMachine))
        {
            if (!done.Contains(terminal))
            {
                Visit(terminal);
            }
        }

        return onward;
    }

    // From a machine or a line straight back into a tank, past no return line: it gets one.
    private static bool GoesBack(DiagramChain chain) => chain.From is { IsTank: false, IsReturn: false } from && chain.To is { IsTank: true } to
        && !(from.IsNet && from.In.Any(c => c.From == to) && from.Rank == to.Rank + 1 && !from.Out.Any(c => c.To is { IsMachine: true }));

    private void Rank(List<DiagramChain> onward)
    {
        for (int round = 0; round <= _graph.Terminals.Count; round++)
        {
            foreach (DiagramChain chain in onward)
            {
                chain.To!.Rank = Math.Max(chain.To.Rank, chain.From!.Rank + 1);
            }
        }
    }

    private static DiagramRoute RouteOf(DiagramChain chain, bool onward) => (chain.From, chain.To) switch
    {
        ({ IsTank: true }, null) => DiagramRoute.Drain,
        (null, { IsTank: true }) => DiagramRoute.Fill,
        (null, null) => DiagramRoute.Loop,
        (null, { IsReturn: true }) or ({ IsReturn: true }, null) => DiagramRoute.Loop,
        (null, _) or (_, null) => DiagramRoute.Stub,
        ({ IsTank: true }, { IsReturn: true }) => DiagramRoute.Loop,
        ({ IsReturn: true }, { IsReturn: true }) => DiagramRoute.ReturnRun,
        ({ IsReturn: true }, { IsTank: true }) => DiagramRoute.Return,
        (_, { IsReturn: true }) => DiagramRoute.Riser,
        ({ IsReturn: true }, _) => DiagramRoute.Loop,
        ({ IsTank: true } tank, { IsNet: true } net) when onward && net.In.Count(c => c.From is { IsTank: true }) + net.Out.Count(c => c.To == tank) > 1 => DiagramRoute.Supply,
        ({ IsNet: true } net, { IsTank: true } tank) when !onward && net.In.Any(c => c.From == tank) && net.Rank == tank.Rank + 1 => DiagramRoute.Supply,
        _ => onward ? DiagramRoute.Run : DiagramRoute.Loop,
    };
}
