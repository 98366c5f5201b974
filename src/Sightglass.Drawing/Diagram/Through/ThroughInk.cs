using Sightglass.Drawing.Shapes;
using M = Sightglass.Drawing.Diagram.ThroughMeasure;

namespace Sightglass.Drawing.Diagram;

/// <summary>Puts a vehicle that is laid out onto the board.</summary>
internal sealed class ThroughInk(ThroughBlock block, ThroughSpread spread, DiagramBoard board, double size, IReadOnlyList<DiagramNode> couplings)
{
    /// <summary>Where something joins a line, with what flows in there.</summary>
    private readonly Dictionary<string, List<(double X, List<(string Node, int Sign)> In)>> _joints = new(StringComparer.Ordinal);

    private readonly Dictionary<string, int> _jogs = new(StringComparer.Ordinal);

    private double VesselHeight => 88 + (size * 2.2);

    public void Draw()
    {
        foreach (ThroughVessel vessel in spread.Vessels.Values)
        {
            Vessel(vessel);
        }

        foreach (ThroughColumn column in block.Columns)
        {
            if (column.Gauges.Count > 0)
            {
                Join(column.Upper, column.X, []);
                Rings(column.Gauges, column.X, block.RowOf(column.Upper).Y + (column.IsAbove ? 0 : VesselHeight), column.IsAbove);
            }
            else if (column.InRow is null)
            {
                Column(column);
            }
        }

        foreach (ThroughRow row in block.Rows.Where(r => r.Bus is not null))
        {
            Bus(row);
        }

        foreach (DiagramNode line in block.Rows.SelectMany(r => r.Nodes).Where(n => n.Role == DiagramRole.Line))
        {
            Line(line, block.RowOf(line.Id).Y);
        }
    }

    private void Vessel(ThroughVessel vessel)
    {
        double y = block.RowOf(vessel.Node.Id).Y;
        bool low = vessel.Node.Symbol == DiagramSymbol.Cylinder;
        double height = vessel.Node.IsClosed ? VesselHeight : DiagramMeasure.TankHeight;
        Bounds box = low ? new(vessel.Left, y, vessel.Right, y + height) : new(vessel.Left, y - height, vessel.Right, y);
        board.Bodies.Add(new DiagramBody(vessel.Node, box) { Vent = vessel.Node.HasVent && !vessel.Node.IsClosed ? vessel.Right - 16 : null });
        board.Label(vessel.Node.Label, "body-words", vessel.Left + 8, box.Low + 8 + (size * 1.4), "start");
        Rings(vessel.Gauges, vessel.Left + M.Wall, box.Low, true);
    }

    // One stem with the gauges on it, away from what they show.
    private void Rings(IReadOnlyList<DiagramNode> gauges, double x, double edge, bool up)
    {
        double way = up ? -1 : 1;
        double from = edge;
        for (int i = 0; i < gauges.Count; i++)
        {
            double y = edge + (way * (14 + M.Ring + (i * M.RingPitch)));
            Bounds ring = new(x - M.Ring, y - M.Ring, x + M.Ring, y + M.Ring);
            board.Instruments.Add(new DiagramInstrument(gauges[i], ring, [[(x, from), (x, y - (way * M.Ring))]], true));
            board.Label(gauges[i].Label, "d-lab", ring.Right + 6, y - 1, "start");
            board.Reserve(ring.Right + 6, y - 1 + board.LineHeight, board.Width("000 psi", true), 1);
            from = y + (way * M.Ring);
        }
    }

    private void Column(ThroughColumn column)
    {
        double top = block.RowOf(column.Upper).Y;
        bool dead = column.Lower is null;
        double gapTop = block.Rows[column.Gap].Y;
        if (block.Rows[column.Gap].Sort == ThroughRowSort.Cylinders)
        {
            gapTop += VesselHeight;
        }

        double height = spread.HeightOf(column);
        double free = block.Rows[column.Gap].Gap - height;
        double y = gapTop + (dead ? M.Clear : Math.Clamp(free / 2, 0, M.Clear + (free / 3)));
        foreach (DiagramLink link in column.Links)
        {
            double slot = spread.SlotOf(link);
            Part(link.Path, column.X, y + (slot / 2), link.Reversed ? 270 : 90);
            y += slot;
        }

        // A load or a source is the end of its line.
        bool ends = column.Links.Count > 0 && column.Links[^1].Path.Ends;
        double foot = !dead ? block.RowOf(column.Lower!).Y : ends ? y - (spread.SlotOf(column.Links[^1]) / 2) : y + 4;
        double start = dead && gapTop > top + 1 ? gapTop : top;
        List<(double X, double Y)> points = [.. End(column.Upper, column.X, start, true), .. dead ? [(column.X, foot)] : Enumerable.Reverse(End(column.Lower!, column.X, foot, false))];
        board.Pipe(ThroughBlock.NameOf(column) + (column.Links.Count == 0 ? " to " + column.Lower : ""), points, column.Flow, (column.Links.Count > 0 ? column.Links[0].Path : block.RowOf(column.Upper).Nodes.First(n => n.Id == column.Upper)).Medium);
        Join(column.Upper, column.X, [.. column.Flow.Select(f => (f.Node, -f.Sign))]);
        if (!dead)
        {
            Join(column.Lower!, column.X, column.Flow);
        }
        else if (column.EndLine is { } line)
        {
            board.LinePoints[line.Id] = (column.X, foot);
            board.Dots.Add((column.X, foot));
            if (line.Label.Length > 0)
            {
                board.Label(line.Label, "line-words", column.X + 8, foot + (size * 0.35), "start", line.Medium);
            }
        }
        else if (!ends)
        {
            board.OpenEnds.Add(new DiagramOpenEnd(column.X, foot + (column.BringsIn ? -2 : 2), !column.BringsIn));
        }
    }

    // Straight to a line; to a vessel that does not reach so far by a jog below it.
    private List<(double X, double Y)> End(string node, double x, double y, bool below)
    {
        if (!spread.Vessels.TryGetValue(node, out ThroughVessel? vessel) || (x >= vessel.Left + 6 && x <= vessel.Right - 6))
        {
            return [(x, y)];
        }

        int jog = _jogs[node] = _jogs.GetValueOrDefault(node) + 1;
        double at = x < vessel.Left ? vessel.Left + (jog * 10) : vessel.Right - (jog * 10);
        double bend = y + ((below ? 1 : -1) * 8 * jog);
        return [(at, y), (at, bend), (x, bend)];
    }

    private void Part(DiagramNode node, double x, double y, int turn)
    {
        board.Part(node, x, y, turn);
        ThroughWords words = spread.Words[node.Id];
        double left = x + M.WordsAt(node);
        double line = y - (words.Height / 2);
        Words(words, left, line, "start");
    }

    private void Words(ThroughWords words, double x, double top, string anchor)
    {
        double y = top;
        foreach ((string text, string style) in words.Name.Select(n => (n, "d-lab")).Concat(words.Quiet.Select(q => (q, "d-lab quiet"))))
        {
            board.Label(text, style, x, y + (size * 0.95), anchor);
            y += words.Line;
        }

        double left = anchor == "middle" ? x - (words.Width / 2) : x;
        foreach (DiagramNode control in words.Controls)
        {
            double middle = y + (words.ControlLine / 2);
            board.Instruments.Add(new DiagramInstrument(control, new Bounds(left, middle - ThroughWords.Mark, left + (2 * ThroughWords.Mark), middle + ThroughWords.Mark), [], false));
            board.Label(control.Label, "d-lab", left + (2 * ThroughWords.Mark) + 6, middle + (size * 0.35), "start");
            y += words.ControlLine;
        }
    }

    private void Bus(ThroughRow row)
    {
        ThroughBus bus = row.Bus!;
        if (bus.Left is { } left)
        {
            Hose(left, spread.Left, row.Y);
        }

        if (bus.Right is { } right)
        {
            Hose(right, spread.Right, row.Y);
        }

        foreach (DiagramNode path in bus.Nodes.Where(n => n.Role == DiagramRole.Path))
        {
            double x = path == bus.LeftCock ? spread.Left + spread.CockAt : path == bus.RightCock ? spread.Right - spread.CockAt : block.Columns.First(c => c.InRow == path).X;
            int at = bus.Nodes.ToList().IndexOf(path);
            bool forward = bus.Nodes[at - 1].Id == path.From;

            // A valve looks the same from both ends; turned over, its handle points down when closed, towards its name.
            board.Part(path, x, row.Y, forward && path.Symbol != DiagramSymbol.Valve ? 0 : 180);
            Words(spread.Words[path.Id], x, row.Y + M.Below(path), "middle");

            // The stretch of pipe under the symbol belongs to the path; lines begin at its edges.
            double half = DiagramPart.SizeOf(path.Symbol).Along;
            board.Pipe(path.Id, [(x - half, row.Y), (x + half, row.Y)], [(path.Id, forward ? 1 : -1)], path.Medium);
            Join(bus.Nodes[at - 1].Id, x - half, [(path.Id, forward ? -1 : 1)]);
            Join(bus.Nodes[at + 1].Id, x + half, [(path.Id, forward ? 1 : -1)]);
        }
    }

    private void Hose(DiagramNode hose, double x, double y)
    {
        board.LinePoints[hose.Id] = (x, y);
        Join(hose.Id, x, [.. couplings.Where(c => c.From == hose.Id || c.To == hose.Id).Select(c => (c.Id, c.To == hose.Id ? 1 : -1))]);
    }

    private void Join(string node, double x, List<(string Node, int Sign)> inward)
    {
        if (!spread.Vessels.ContainsKey(node))
        {
            (_joints.TryGetValue(node, out List<(double, List<(string, int)>)>? joints) ? joints : _joints[node] = []).Add((x, inward));
        }
    }

    // From joint to joint, each stretch with what has come in at its left.
    private void Line(DiagramNode line, double y)
    {
        if (!_joints.TryGetValue(line.Id, out List<(double X, List<(string Node, int Sign)> In)>? joints))
        {
            return;
        }

        double[] xs = [.. joints.Select(j => Math.Round(j.X, 3)).Distinct().Order()];
        List<(string Node, int Sign)> carried = [];
        for (int i = 0; i < xs.Length; i++)
        {
            var here = joints.Where(j => Math.Abs(j.X - xs[i]) < 0.002).ToList();
            if (here.Count(j => j.In.Count > 0) + (i > 0 ? 1 : 0) + (i + 1 < xs.Length ? 1 : 0) > 2)
            {
                board.Dots.Add((xs[i], y));
            }

            carried.AddRange(here.SelectMany(j => j.In));
            if (i + 1 < xs.Length)
            {
                board.Pipe($"along {line.Id} {i + 1}", [(xs[i], y), (xs[i + 1], y)], carried.GroupBy(t => t.Node, StringComparer.Ordinal).Select(g => (g.Key, g.Sum(t => t.Sign))).Where(t => t.Item2 != 0), line.Medium);
            }
        }

        board.LinePoints.TryAdd(line.Id, (xs[0], y));
    }
}
