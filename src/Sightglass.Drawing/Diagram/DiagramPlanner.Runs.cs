using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Text;
using M = Sightglass.Drawing.Diagram.DiagramMeasure;

namespace Sightglass.Drawing.Diagram;

internal sealed partial class DiagramPlanner
{
    /// <summary>Where a run stands ready to be joined to its target.</summary>
    private readonly record struct RunEnd(int Lane, double X, List<(double X, double Y)> Start);

    // Places the symbols of a run behind its source and returns where it ends; EndRun draws the pipe.
    private RunEnd PlaceRun(DiagramChain chain)
    {
        (double x, int lane, List<(double X, double Y)> start) = Depart(chain);
        double y = LaneY(lane);
        double at = chain.Links.Count > 0 ? Math.Max(x + M.RunGap, _elementsFrom) : x;
        double first = at;
        List<double> gaps = [at];
        foreach (DiagramLink link in chain.Links)
        {
            (double before, double behind) = Cell(link.Path);
            at = FreeFrom(link.Path, at, y, before, behind);
            _board.Part(link.Path, at + before, y, link.Reversed ? 180 : 0);
            RunWords(link.Path, at + before, y);
            at += before + behind;
            gaps.Add(at);
        }

        InnerLines(chain, i => (i == 0 ? (x + first) / 2 : gaps[i], y));
        UseLane(lane, at);
        _board.Reserved.Add([.. start]);
        return new RunEnd(lane, at, start);
    }

    private void EndRun(DiagramChain chain, RunEnd run, IEnumerable<(double X, double Y)> end) =>
        _board.Pipe(Name(chain), [.. run.Start, .. end], Terms(chain));

    private (double X, int Lane, List<(double X, double Y)> Start) Depart(DiagramChain chain)
    {
        if (chain.From is { IsNet: true } terminal)
        {
            DiagramNet net = _nets[terminal];
            double x = net.Right;
            int lane = _laneEnds[net.Lane] <= x + 0.01 ? net.Lane : FreeLane(x, net.Lane + 1);
            net.Join(x, Against(Terms(chain)));
            UseLane(lane, x);
            return (x, lane, lane == net.Lane ? [(x, net.Y)] : [.. Way((x, net.Y), (x, LaneY(lane))), (x, LaneY(lane))]);
        }

        double slot = _slots[chain];
        int free = FreeLane(slot);
        return (slot, free, [.. Way((slot, M.TankHeight), (slot, LaneY(free))), (slot, LaneY(free))]);
    }

    // Straight where nothing stands in the way, else round it; without the end.
    private List<(double X, double Y)> Way((double X, double Y) from, (double X, double Y) to)
    {
        double shorter = Math.Sign(to.Y - from.Y) * 3;
        return from == to || _board.IsOpen(from.X, from.Y + shorter, to.X, to.Y - shorter) ? [from] : new DiagramWay(_board).Find([from], to);
    }

    // Room to the left and right of a symbol's middle: the symbol itself, its words, and the controls that hang on it.
    private (double Before, double Behind) Cell(DiagramNode node)
    {
        double half = DiagramPart.SizeOf(node.Symbol).Along + (M.RunGap / 2);
        List<DiagramNode> controls = Controls(node);
        double words = Wrapped(node.Label).Max(l => _board.Width(l));
        if (controls.Count == 0)
        {
            double room = Math.Max(half, (words / 2) + 6);
            return (room, room);
        }

        return (half, Math.Max(half, words + 16));
    }

    // The first x from which a symbol and its words touch nothing that stands already.
    private double FreeFrom(DiagramNode node, double x, double y, double before, double behind)
    {
        double across = DiagramPart.SizeOf(node.Symbol).Across;
        double words = (Wrapped(node.Label).Count * _board.LineHeight) + 6;
        Bounds Symbol() => new(x + before - across, y - across, x + before + across, y + across);
        while (!_board.IsFree(new Bounds(x, y - across, x + before + behind, y + across + words), 1) || !_board.IsClearOfPipes(Symbol()))
        {
            x += 8;
        }

        return x;
    }

    private IReadOnlyList<string> Wrapped(string label) =>
        TextMeasure.Wrap(label, TextFace.Sans500, _board.LabelSize, _board.LabelSize * 5);

    // Below the symbol, or above it where something stands there.
    private void RunWords(DiagramNode node, double x, double y)
    {
        bool beside = Controls(node).Count > 0;
        double across = DiagramPart.SizeOf(node.Symbol).Across;
        IReadOnlyList<string> lines = Wrapped(node.Label);
        double width = lines.Max(l => _board.Width(l));
        double left = beside ? x + 8 : x - (width / 2);
        double line = y + (_board.Parts[^1].Turn == 0 ? DiagramPart.Below(node.Symbol) : across) + _board.LineHeight + 1;
        Bounds Room() => new(left, line - _board.LabelSize, left + width, line + ((lines.Count - 1) * _board.LineHeight) + 4);
        if (!_board.IsFree(Room(), 1))
        {
            line = y - across - 6 - ((lines.Count - 1) * _board.LineHeight);
            if (!_board.IsFree(Room(), 1))
            {
                return;
            }
        }

        foreach (string words in lines)
        {
            _board.Label(words, "d-lab", beside ? x + 8 : x, line, beside ? "start" : "middle");
            line += _board.LineHeight;
        }
    }

    private void PlaceNet(DiagramTerminal terminal)
    {
        DiagramNet net = _nets[terminal];
        List<DiagramChain> arriving = [.. terminal.In.Where(c => c.Route == DiagramRoute.Run)];
        List<RunEnd> ends = [.. arriving.Select(PlaceRun)];
        List<DiagramChain> supplies = [.. terminal.In.Concat(terminal.Out).Where(c => c.Route == DiagramRoute.Supply && _slots.ContainsKey(c)).Distinct()];
        double first = supplies.Select(c => _slots[c]).Concat(ends.Select(e => e.X)).DefaultIfEmpty(Math.Max(_elementsFrom, 0)).Min();
        net.Lane = ends.Count > 0 ? ends[0].Lane : FreeLane(first);
        net.Y = LaneY(net.Lane);
        net.IsPlaced = true;
        foreach (DiagramChain chain in supplies)
        {
            DrawSupply(chain, net);
        }

        double join = ends.Count > 0 ? Math.Max(ends.Max(e => e.X), net.Joints.Count > 0 ? net.Right : double.NegativeInfinity) : 0;
        for (int i = 0; i < ends.Count; i++)
        {
            double x = ends[i].Lane == net.Lane ? ends[i].X : join + (14 * i);
            EndRun(arriving[i], ends[i], [.. Way((x, LaneY(ends[i].Lane)), (x, net.Y)), (x, net.Y)]);
            net.Join(x, Terms(arriving[i]));
        }

        if (net.Joints.Count == 0)
        {
            net.Join(Math.Max(first, _laneEnds[net.Lane] + M.RunGap), []);
        }

        UseLane(net.Lane, net.Right);
        foreach (DiagramChain chain in terminal.Out.Concat(terminal.In).Where(c => c.Route == DiagramRoute.Stub))
        {
            HangStub(chain, net);
        }

        if (!terminal.Out.Any(c => c.To is { IsMachine: true } && c.Links.Count == 0))
        {
            foreach (DiagramChain chain in terminal.Out.Where(c => c.Route == DiagramRoute.Riser))
            {
                PlaceRiser(chain, net);
            }
        }
    }

    // To or from the open: down from the lane.
    private void HangStub(DiagramChain chain, DiagramNet net)
    {
        bool outward = chain.To is null;
        List<DiagramLink> links = outward ? chain.Links : [.. Enumerable.Reverse(chain.Links)];
        double length = 16 + links.Sum(l => (2 * DiagramPart.SizeOf(l.Path.Symbol).Along) + 14);
        double across = links.Select(l => DiagramPart.SizeOf(l.Path.Symbol).Across).DefaultIfEmpty(8).Max();
        double x = Math.Max(net.Right, _laneEnds[net.Lane]) + 30;
        Bounds Room() => new(x - across, net.Y + 8, x + across, net.Y + length + 14);
        while (!_board.IsFree(Room()) || !_board.IsClearOfPipes(Room()))
        {
            x += 8;
        }

        double end = net.Y + 16;
        foreach (DiagramLink link in links)
        {
            double half = DiagramPart.SizeOf(link.Path.Symbol).Along;
            _board.Part(link.Path, x, end + half, outward == link.Reversed ? 270 : 90);
            Beside(_board.Parts[^1]);
            end += (2 * half) + 14;
        }

        (double, double)[] points = [(x, net.Y), (x, end)];
        List<(string, int)> terms = Terms(chain);
        _board.Pipe(Name(chain), outward ? points : points.Reverse(), terms);
        Open(chain, new DiagramOpenEnd(x, end + (outward ? 6 : -2), outward));
        net.Join(x, outward ? Against(terms) : terms);
        UseLane(net.Lane, x);
    }

    /// <summary>An end to the outside, of a chain in which nothing ends by itself.</summary>
    private void Open(DiagramChain chain, DiagramOpenEnd end)
    {
        if (!chain.Links.Any(l => l.Path.Ends))
        {
            _board.OpenEnds.Add(end);
        }
    }

    private void PlaceRiser(DiagramChain chain, DiagramNet net)
    {
        double across = chain.Links.Select(l => DiagramPart.SizeOf(l.Path.Symbol).Across).DefaultIfEmpty(0).Max();
        double x = Math.Max(Math.Max(_bodyEnd + across, net.Right + M.RunGap), ReturnFrom(chain.To!));
        for (int lane = 0; lane < net.Lane; lane++)
        {
            x = Math.Max(x, _laneEnds[lane] + 16);
        }

        x = Math.Max(x, _laneEnds[net.Lane] + 16);
        while (!_board.IsOpen(x, net.Y - 4, x, _rows.TopLane))
        {
            x += 8;
        }

        net.Join(x, Against(Terms(chain)));
        for (int lane = 0; lane <= net.Lane; lane++)
        {
            UseLane(lane, x);
        }

        _risers.Add((chain, x, net.Y));
        _bodyEnd = x + 26 + chain.Links.Select(l => across + Wrapped(l.Path.Label).Max(w => _board.Width(w))).DefaultIfEmpty(0).Max();
    }
}
