namespace Sightglass.Training.Routes;

/// <summary>
/// Shortest ways between the places at which a walk may stop, passing as few dangerous places as can be: seconds, with so much more for each dangerous place on the way that no detour
/// outweighs it. The same both ways.
/// </summary>
internal sealed class RouteClosure
{
    /// <summary>What passing a dangerous place weighs, s: more than any walk takes.</summary>
    public const double Danger = 1e6;

    private readonly RouteMap _map;
    private readonly Dictionary<int, int> _rows = [];
    private readonly double[][] _costs;
    private readonly int[][] _before;

    public RouteClosure(RouteMap map, IEnumerable<int> places)
    {
        _map = map;
        foreach (int place in places.Distinct().Order())
        {
            _rows[place] = _rows.Count;
        }

        (_costs, _before) = (new double[_rows.Count][], new int[_rows.Count][]);
        foreach ((int place, int row) in _rows)
        {
            (_costs[row], _before[row]) = From(place);
        }
    }

    /// <summary>Of the way from one to another; what dangerous places at its ends weigh is not in it. Infinite where there is none.</summary>
    public double Cost(int from, int to) => _costs[_rows[from]][to];

    /// <summary>The places of the way after its first.</summary>
    public IEnumerable<int> Way(int from, int to)
    {
        Stack<int> way = [];
        for (int at = to; at != from; at = _before[_rows[from]][at])
        {
            way.Push(at);
        }

        return way;
    }

    private (double[] Costs, int[] Before) From(int start)
    {
        double[] costs = new double[_map.Places.Length];
        int[] before = new int[costs.Length];
        Array.Fill(costs, double.PositiveInfinity);
        Array.Fill(before, -1);
        costs[start] = 0;
        PriorityQueue<int, (double, int)> open = new();
        open.Enqueue(start, (0, start));
        while (open.TryDequeue(out int here, out (double Cost, int) reached))
        {
            if (reached.Cost > costs[here] || (_map.OnlyEndsAt(here) && here != start))
            {
                continue;
            }

            double passed = reached.Cost + (here != start && _map.IsDangerous(here) ? Danger : 0);
            foreach ((int to, double seconds) in _map.JoinedTo(here))
            {
                if (passed + seconds < costs[to])
                {
                    (costs[to], before[to]) = (passed + seconds, here);
                    open.Enqueue(to, (costs[to], to));
                }
            }
        }

        return (costs, before);
    }
}
