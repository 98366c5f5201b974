using Sightglass.Drawing.Shapes;
using M = Sightglass.Drawing.Diagram.DiagramMeasure;

namespace Sightglass.Drawing.Diagram;

/// <summary>
/// Lays a network out: tanks and machines stand in a middle band in the order of their rank, the supply side runs below them from left to
/// right, the return side above from right to left, headers straight, identical parts in one row.
/// </summary>
internal sealed partial class DiagramPlanner
{
    private readonly DiagramInput _input;
    private readonly DiagramGraph _graph;
    private readonly DiagramBoard _board;
    private readonly Dictionary<DiagramTerminal, DiagramBody> _bodies = [];
    private readonly Dictionary<DiagramTerminal, DiagramNet> _nets = [];
    private readonly Dictionary<DiagramChain, double> _slots = [];
    private readonly Dictionary<(string Tank, string Gauge), double> _taps = [];
    private readonly List<double> _laneEnds = [double.NegativeInfinity];
    private readonly List<(DiagramChain Chain, double X, double From)> _risers = [];
    private double _bodyEnd;
    private double _elementsFrom = double.NegativeInfinity;
    private readonly DiagramRows _rows;

    public DiagramPlanner(DiagramInput input, DiagramOptions options)
    {
        _input = input;
        _board = new DiagramBoard(options);
        _graph = new DiagramGraph(input);
        new DiagramRouter(_graph).Route();
        _rows = new DiagramRows(_graph.Chains);
        foreach (DiagramTerminal terminal in _graph.Terminals.Where(t => t.IsNet))
        {
            _nets[terminal] = new DiagramNet(terminal);
        }
    }

    private IEnumerable<DiagramNode> Gauges => _input.Nodes.Where(n => n.Role == DiagramRole.Gauge);

    public DiagramLayout Plan()
    {
        foreach (IGrouping<int, DiagramTerminal> rank in _graph.Terminals.Where(t => !t.IsReturn).GroupBy(t => t.Rank).OrderBy(g => g.Key))
        {
            foreach (DiagramTerminal tank in rank.Where(t => t.IsTank))
            {
                PlaceTank(tank);
            }

            foreach (DiagramTerminal net in rank.Where(t => t.IsNet))
            {
                PlaceNet(net);
            }

            foreach (DiagramTerminal machine in rank.Where(t => t.IsMachine))
            {
                PlaceMachine(machine);
            }
        }

        PlaceReturns();
        PlaceLoops();
        foreach (DiagramNet net in _nets.Values.Where(n => n.Joints.Count > 0))
        {
            DrawNet(net);
        }

        Mend();
        Instruments();
        Words();
        return Finish();
    }

    private double LaneY(int lane) => _rows.Lane + (lane * M.LanePitch);

    /// <summary>The lowest lane that nothing uses from x on.</summary>
    private int FreeLane(double x, int from = 0)
    {
        int lane = from;
        while ((lane < _laneEnds.Count && _laneEnds[lane] > x) || _board.Parts.Exists(p => p.Box.Right > x && Math.Abs(p.Y - LaneY(lane)) < p.Box.Height / 2))
        {
            lane++;
        }

        Reach(lane);
        return lane;
    }

    private void Reach(int lane)
    {
        while (_laneEnds.Count <= lane)
        {
            _laneEnds.Add(double.NegativeInfinity);
        }
    }

    private void UseLane(int lane, double to) => _laneEnds[lane] = Math.Max(_laneEnds[lane], to);

    /// <summary>Whose flow a chain carries, positive in its direction.</summary>
    private static List<(string Node, int Sign)> Terms(DiagramChain chain)
    {
        if (chain.Links.Count > 0)
        {
            return [(chain.Links[0].Path.Id, chain.Links[0].Reversed ? -1 : 1)];
        }

        if (chain.To is { IsMachine: true } machine)
        {
            return [(machine.Id, 1)];
        }

        return chain.To is { IsReturn: true } shared ? [.. shared.Out.SelectMany(Terms)] : chain.From is { IsMachine: true } maker ? [(maker.Id, 1)] : [];
    }

    private static List<(string Node, int Sign)> Against(List<(string Node, int Sign)> terms) => [.. terms.Select(t => (t.Node, -t.Sign))];

    private static string Name(DiagramChain chain) => chain.Links.Count > 0 ? chain.Links[0].Path.Id : $"{chain.From?.Id} to {chain.To?.Id}";

    private DiagramLayout Finish()
    {
        Bounds sheet = new(0, 0, 1, 1);
        bool any = false;
        void Include(Bounds box)
        {
            sheet = any ? sheet.Union(box) : box;
            any = true;
        }

        foreach (Bounds box in _board.Solid())
        {
            Include(box);
        }

        foreach ((double x, double y) in _board.Pipes.SelectMany(p => p.Points).Concat(_board.Instruments.SelectMany(i => i.Lines).SelectMany(l => l)))
        {
            Include(new Bounds(x, y, x, y).Grow(4));
        }

        foreach (DiagramBody tank in _board.Bodies.Where(b => b.Vent is not null))
        {
            Include(new Bounds(tank.Box.Right - 18, -28, tank.Box.Right + 4, 0));
        }

        foreach (DiagramOpenEnd end in _board.OpenEnds)
        {
            Include(new Bounds(end.X - 8, end.Y - 16, end.X + 8, end.Y + 16));
        }

        return _board.Layout(_input, sheet.Grow(10));
    }
}
