using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Diagram;

/// <summary>Finds a way for a pipe round everything that stands on the board: shortest first, few corners, along no other pipe.</summary>
internal sealed class DiagramWay
{
    private const double Step = 8;
    private const int Corner = 6;
    private const int Along = 12;
    private const int Crossing = 2;
    private const int Through = 80;
    private static readonly (int Dx, int Dy)[] _ways = [(1, 0), (0, 1), (-1, 0), (0, -1)];
    private readonly double _left;
    private readonly double _top;
    private readonly int _columns;
    private readonly int _rows;
    private readonly bool[] _blocked;
    private readonly bool[] _horizontal;
    private readonly bool[] _vertical;

    public DiagramWay(DiagramBoard board)
    {
        List<Bounds> solid = [.. board.Solid()];
        IEnumerable<(double X, double Y)> corners = board.Pipes.SelectMany(p => p.Points);
        Bounds all = solid.Concat(corners.Select(c => new Bounds(c.X, c.Y, c.X, c.Y))).Aggregate((a, b) => a.Union(b)).Grow(80);
        (_left, _top) = (Math.Floor(all.Left / Step) * Step, Math.Floor(all.Low / Step) * Step);
        _columns = (int)Math.Ceiling(all.Width / Step) + 2;
        _rows = (int)Math.Ceiling(all.Height / Step) + 2;
        _blocked = new bool[_columns * _rows];
        _horizontal = new bool[_columns * _rows];
        _vertical = new bool[_columns * _rows];
        foreach (Bounds box in solid)
        {
            Mark(_blocked, box.Grow(5));
        }

        foreach (DiagramPipe pipe in board.Pipes)
        {
            foreach (((double X, double Y) a, (double X, double Y) b) in pipe.Points.Zip(pipe.Points.Skip(1)))
            {
                Mark(a.Y == b.Y ? _horizontal : _vertical, new Bounds(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y)).Grow(4));
            }
        }
    }

    /// <summary>Corners from one of the starts to the target, both ends exact; a straight elbow where there is no way.</summary>
    public List<(double X, double Y)> Find(IReadOnlyList<(double X, double Y)> starts, (double X, double Y) target)
    {
        int goal = Cell(target);
        Dictionary<int, int> cost = [];
        Dictionary<int, int> back = [];
        PriorityQueue<int, int> open = new();
        foreach (int start in starts.Select(Cell))
        {
            for (int way = 0; way < 4; way++)
            {
                cost[(start * 4) + way] = 0;
                open.Enqueue((start * 4) + way, 0);
            }
        }

        while (open.TryDequeue(out int state, out int spent))
        {
            if (state / 4 == goal)
            {
                return Exact(Trace(state, back), starts, target);
            }

            if (spent > cost[state])
            {
                continue;
            }

            for (int way = 0; way < 4; way++)
            {
                Advance(state, way, goal, cost, back, open);
            }
        }

        return [starts[0], (starts[0].X, target.Y)];
    }

    private void Advance(int state, int way, int goal, Dictionary<int, int> cost, Dictionary<int, int> back, PriorityQueue<int, int> open)
    {
        int x = (state / 4 % _columns) + _ways[way].Dx;
        int y = (state / 4 / _columns) + _ways[way].Dy;
        if (x < 0 || y < 0 || x >= _columns || y >= _rows || (way + 2) % 4 == state % 4)
        {
            return;
        }

        int cell = (y * _columns) + x;
        bool lengthwise = way % 2 == 0 ? _horizontal[cell] : _vertical[cell];
        bool across = way % 2 == 0 ? _vertical[cell] : _horizontal[cell];
        int spent = cost[state] + 1 + (way == state % 4 ? 0 : Corner) + (lengthwise ? Along : across ? Crossing : 0) + (_blocked[cell] && cell != goal ? Through : 0);
        int next = (cell * 4) + way;
        if (!cost.TryGetValue(next, out int known) || spent < known)
        {
            cost[next] = spent;
            back[next] = state;
            open.Enqueue(next, spent);
        }
    }

    private List<(double X, double Y)> Trace(int state, Dictionary<int, int> back)
    {
        List<(double X, double Y)> points = [];
        while (true)
        {
            int cell = state / 4;
            points.Add((_left + (cell % _columns * Step), _top + (cell / _columns * Step)));
            if (!back.TryGetValue(state, out state))
            {
                points.Reverse();
                return points;
            }
        }
    }

    // Grid points to corners, with the ends moved to where they belong and the corners next to them along; without the target.
    private List<(double X, double Y)> Exact(List<(double X, double Y)> grid, IReadOnlyList<(double X, double Y)> starts, (double X, double Y) target)
    {
        (double X, double Y) start = starts.First(s => Cell(s) == Cell(grid[0]));
        List<(double X, double Y)> corners = [grid[0]];
        for (int i = 1; i + 1 < grid.Count; i++)
        {
            if ((grid[i].X - grid[i - 1].X, grid[i].Y - grid[i - 1].Y) != (grid[i + 1].X - grid[i].X, grid[i + 1].Y - grid[i].Y))
            {
                corners.Add(grid[i]);
            }
        }

        if (corners.Count == 1)
        {
            bool upright = grid.Count < 2 || grid[0].X == grid[^1].X;
            double x = (start.X + target.X) / 2;
            double y = (start.Y + target.Y) / 2;
            return upright ? [start, (start.X, y), (target.X, y)] : [start, (x, start.Y), (x, target.Y)];
        }

        corners[1] = corners[1].X == grid[0].X ? (start.X, corners[1].Y) : (corners[1].X, start.Y);
        corners[^1] = corners[^1].X == grid[^1].X ? (target.X, corners[^1].Y) : (corners[^1].X, target.Y);
        corners[0] = start;
        return corners;
    }

    private int Cell((double X, double Y) point) =>
        ((int)Math.Round((point.Y - _top) / Step) * _columns) + (int)Math.Round((point.X - _left) / Step);

    private void Mark(bool[] cells, Bounds box)
    {
        for (int y = Math.Max(0, (int)Math.Ceiling((box.Low - _top) / Step)); y <= Math.Min(_rows - 1, (int)Math.Floor((box.High - _top) / Step)); y++)
        {
            for (int x = Math.Max(0, (int)Math.Ceiling((box.Left - _left) / Step)); x <= Math.Min(_columns - 1, (int)Math.Floor((box.Right - _left) / Step)); x++)
            {
                cells[(y * _columns) + x] = true;
            }
        }
    }
}
