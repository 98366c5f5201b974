using Sightglass.Training.Routes;

namespace Sightglass.Training.Tests.Routes;

/// <summary>Tries everything: each order of the things, each place of each, with ways from all pairs (Floyd and Warshall's algorithm, from memory). Knows nothing of the search.</summary>
internal static class AllWalks
{
    /// <summary>Fewest dangerous places come to, and seconds of the shortest walk with so few; null where there is none.</summary>
    public static (int Dangers, double Seconds)? Best(RouteProblem problem)
    {
        (int Dangers, double Seconds)[,] ways = AllPairs(problem.Map);
        (int, double) best = (int.MaxValue, double.PositiveInfinity);
        Try(problem, ways, problem.Start, new bool[problem.Wanted.Length], (0, 0), ref best);
        return double.IsInfinity(best.Item2) ? null : best;
    }

    private static void Try(RouteProblem problem, (int, double)[,] ways, int at, bool[] shown, (int Dangers, double Seconds) sofar, ref (int, double) best)
    {
        if (sofar.CompareTo(best) >= 0 || double.IsInfinity(sofar.Seconds))
        {
            return;
        }

        if (!shown.Contains(false))
        {
            (int, double) whole = problem.End is { } end ? Sum(sofar, ways[at, end]) : sofar;
            best = whole.CompareTo(best) < 0 ? whole : best;
            return;
        }

        for (int thing = 0; thing < shown.Length; thing++)
        {
            if (shown[thing] || problem.Order.Any(o => o.Then == thing && !shown[o.First]))
            {
                continue;
            }

            shown[thing] = true;
            foreach (int place in problem.Wanted[thing])
            {
                Try(problem, ways, place, shown, Sum(sofar, ways[at, place]), ref best);
            }

            shown[thing] = false;
        }
    }

    private static (int, double) Sum((int Dangers, double Seconds) a, (int Dangers, double Seconds) b) => (a.Dangers + b.Dangers, a.Seconds + b.Seconds);

    private static (int, double)[,] AllPairs(RouteMap map)
    {
        int n = map.Places.Length;
        var ways = new (int Dangers, double Seconds)[n, n];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                ways[i, j] = i == j && !map.IsClosed(i) ? (0, 0) : (0, double.PositiveInfinity);
            }

            foreach ((int to, double seconds) in map.IsClosed(i) ? [] : map.JoinedTo(i))
            {
                (int, double) way = (map.IsDangerous(to) ? 1 : 0, seconds);
                ways[i, to] = Reaches(way).CompareTo(Reaches(ways[i, to])) < 0 ? way : ways[i, to];
            }
        }

        for (int k = 0; k < n; k++)
        {
            for (int i = 0; i < n; i++)
            {
                for (int j = 0; j < n; j++)
                {
                    (int, double) way = Sum(ways[i, k], ways[k, j]);
                    ways[i, j] = Reaches(way).CompareTo(Reaches(ways[i, j])) < 0 ? way : ways[i, j];
                }
            }
        }

        return ways;
    }

    private static (int, double) Reaches((int Dangers, double Seconds) way) => double.IsInfinity(way.Seconds) ? (int.MaxValue, way.Seconds) : way;
}
