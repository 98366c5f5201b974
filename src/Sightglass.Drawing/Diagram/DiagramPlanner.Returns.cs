using Sightglass.Drawing.Shapes;
using M = Sightglass.Drawing.Diagram.DiagramMeasure;

namespace Sightglass.Drawing.Diagram;

internal sealed partial class DiagramPlanner
{
    // Least x at which something may rise to a return line: right of its tanks and of the symbols between it and the next.
    private double ReturnFrom(DiagramTerminal net, int depth = 0)
    {
        double x = net.Out.Where(_slots.ContainsKey).Select(c => _slots[c] + M.RunGap).DefaultIfEmpty(double.NegativeInfinity).Max();
        foreach (DiagramChain chain in net.Out.Where(c => c.Route == DiagramRoute.ReturnRun))
        {
            double width = chain.Links.Sum(l => Cell(l.Path).Before + Cell(l.Path).Behind) + (2 * M.RunGap);
            x = depth > _graph.Terminals.Count ? x : Math.Max(x, ReturnFrom(chain.To!, depth + 1) + width);
        }

        return x;
    }

    private void PlaceReturns()
    {
        List<DiagramTerminal> returns = [.. _graph.Terminals.Where(t => t.IsReturn)];
        foreach (DiagramTerminal terminal in returns)
        {
            foreach (DiagramChain chain in terminal.Out.Where(c => c.Route == DiagramRoute.Return))
            {
                _nets[terminal].Join(_slots[chain], Against(Terms(chain)));
            }
        }

        foreach ((DiagramChain chain, double x, _) in _risers)
        {
            _nets[chain.To!].Join(x, Terms(chain));
        }

        PlaceReturnRuns(returns);
        List<List<Bounds>> lanes = [];
        foreach (List<DiagramTerminal> group in Groups([.. returns.Where(t => _nets[t].Joints.Count > 0)]).OrderBy(g => g.Max(t => _nets[t].Right) - g.Min(t => _nets[t].Left)))
        {
            Bounds span = new(group.Min(t => _nets[t].Left) - 12, 0, group.Max(t => _nets[t].Right) + 12, 0);
            int lane = lanes.FindIndex(l => l.All(b => b.DistanceTo(span) > 0));
            if (lane < 0)
            {
                lane = lanes.Count;
                lanes.Add([]);
            }

            lanes[lane].Add(span);
            foreach (DiagramTerminal terminal in group)
            {
                DiagramNet net = _nets[terminal];
                net.Y = _rows.TopLane - (lane * M.TopLanePitch);
                net.IsPlaced = true;
            }
        }

        foreach (DiagramTerminal terminal in returns.Where(t => _nets[t].IsPlaced))
        {
            DrawReturns(terminal);
        }

        foreach ((DiagramChain chain, double x, double from) in _risers)
        {
            DrawRiser(chain, x, from);
        }
    }

    // Return lines with a run between them share a lane.
    private static List<List<DiagramTerminal>> Groups(List<DiagramTerminal> returns)
    {
        List<List<DiagramTerminal>> groups = [];
        foreach (DiagramTerminal terminal in returns)
        {
            List<DiagramTerminal> group = [terminal];
            foreach (List<DiagramTerminal> joined in groups.Where(g => g.Any(t => Adjacent(t, terminal))).ToList())
            {
                group.AddRange(joined);
                groups.Remove(joined);
            }

            groups.Add(group);
        }

        return groups;
    }

    private static bool Adjacent(DiagramTerminal a, DiagramTerminal b) =>
        a.Out.Concat(b.Out).Any(c => c.Route == DiagramRoute.ReturnRun && ((c.From == a && c.To == b) || (c.From == b && c.To == a)));

    // From the right to the left: the target's tanks are placed, the source's risers stand to the right of the run.
    private void PlaceReturnRuns(List<DiagramTerminal> returns)
    {
        HashSet<DiagramTerminal> left = [];
        HashSet<DiagramTerminal> reached = [];
        foreach (DiagramChain chain in returns.SelectMany(t => t.Out).Where(c => c.Route == DiagramRoute.ReturnRun))
        {
            DiagramNet from = _nets[chain.From!];
            DiagramNet to = _nets[chain.To!];
            double width = chain.Links.Sum(l => Cell(l.Path).Before + Cell(l.Path).Behind);
            if (from.Joints.Count == 0 || to.Joints.Count == 0 || from.Left - to.Right < width + M.RunGap + 8 || !left.Add(chain.From!) || !reached.Add(chain.To!))
            {
                chain.Route = DiagramRoute.Loop;
                continue;
            }

            double end = to.Right;
            to.Join(end, Terms(chain));
            from.Join(from.Left, Against(Terms(chain)));
        }
    }

    private void DrawReturns(DiagramTerminal terminal)
    {
        DiagramNet net = _nets[terminal];
        foreach (DiagramChain chain in terminal.Out.Where(c => c.Route == DiagramRoute.Return))
        {
            double x = _slots[chain];
            Upright(chain, x, _rows.Return);
            _board.Pipe(Name(chain), [(x, net.Y), (x, 0)], Terms(chain));
        }

        foreach (DiagramChain chain in terminal.Out.Where(c => c.Route == DiagramRoute.ReturnRun))
        {
            DiagramNet to = _nets[chain.To!];
            double x = net.Left - M.RunGap;
            foreach (DiagramLink link in chain.Links)
            {
                (double before, double behind) = Cell(link.Path);
                _board.Part(link.Path, x - behind, net.Y, link.Reversed ? 0 : 180);
                RunWords(link.Path, x - behind, net.Y);
                x -= before + behind;
            }

            _board.Pipe(Name(chain), [(net.Left, net.Y), (to.Right, to.Y)], Terms(chain));
        }
    }

    private void DrawRiser(DiagramChain chain, double x, double from)
    {
        double to = _nets[chain.To!].Y;
        double top = Math.Min(from, M.TankHeight - M.MachineHeight);
        double y = (top + to) / 2;
        y += (chain.Links.Count - 1) * M.RowPitch / 2;
        foreach (DiagramLink link in chain.Links)
        {
            _board.Part(link.Path, x, y, link.Reversed ? 90 : 270);
            double half = DiagramPart.SizeOf(link.Path.Symbol).Across;
            IReadOnlyList<string> lines = Wrapped(link.Path.Label);
            for (int i = 0; i < lines.Count; i++)
            {
                _board.Label(lines[i], "d-lab", x + half + 8, y + (_board.LabelSize * 0.35) + ((i - ((lines.Count - 1) / 2.0)) * _board.LineHeight), "start");
            }

            y -= M.RowPitch;
        }

        _board.Pipe(Name(chain), [(x, from), (x, to)], Terms(chain));
    }

    // The line itself, cut where chains join, with a dot where three pipes meet.
    private void DrawNet(DiagramNet net)
    {
        List<double> xs = [.. net.Joints.Select(j => Math.Round(j.X, 3)).Distinct().Order()];
        List<(string Node, int Sign)> carried = [];
        for (int i = 0; i < xs.Count; i++)
        {
            List<(double X, List<(string Node, int Sign)> Inflow)> here = [.. net.Joints.Where(j => Math.Abs(j.X - xs[i]) < 0.002)];
            int branches = here.Count(j => j.Inflow.Count > 0) + (i > 0 ? 1 : 0) + (i + 1 < xs.Count ? 1 : 0);
            if (branches > 2)
            {
                _board.Dots.Add((xs[i], net.Y));
            }

            carried.AddRange(here.SelectMany(j => j.Inflow));
            if (i + 1 < xs.Count)
            {
                _board.Pipe($"{net.Terminal.Id} {i + 1}", [(xs[i], net.Y), (xs[i + 1], net.Y)], Reduced(carried));
            }
        }

        if (net.Terminal.Node.Label.Length > 0)
        {
            _board.LinePoints[net.Terminal.Id] = xs.Count > 1 ? ((xs[^2] + xs[^1]) / 2, net.Y) : (xs[0], net.Y);
        }
    }

    private static List<(string Node, int Sign)> Reduced(List<(string Node, int Sign)> terms) =>
        [.. terms.GroupBy(t => t.Node, StringComparer.Ordinal).Select(g => (g.Key, g.Sum(t => t.Sign))).Where(t => t.Item2 != 0)];
}
