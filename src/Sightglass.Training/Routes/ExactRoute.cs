namespace Sightglass.Training.Routes;

/// <summary>
/// The shortest walk for a few groups of things: Dijkstra's algorithm over pairs of (place, what has been shown). What is passed on the way is shown without a detour, so this is the
/// shortest of all walks, not only of those from stop to stop.
/// </summary>
internal static class ExactRoute
{
    /// <summary>So many groups at most: 2¹⁴ sets of shown groups for each place.</summary>
    public const int MostGroups = 14;

    /// <returns>Places from the start with whether one stops there, and the seconds; null where there is no walk.</returns>
    public static (List<int> Places, List<bool> Stops, double Seconds)? Find(RouteProblem problem, RouteGroups groups)
    {
        int sets = 1 << groups.Places.Length;
        int states = problem.Map.Places.Length * sets;
        (int Dangers, double Seconds)[] best = new (int, double)[states];
        Array.Fill(best, (int.MaxValue, double.PositiveInfinity));
        int[] before = new int[states];
        bool[] done = new bool[states];
        PriorityQueue<int, (int Dangers, double Seconds, int State)> open = new();
        int first = (problem.Start * sets) + Shown(groups, problem.Start, 0);
        (best[first], before[first]) = ((0, 0), -1);
        open.Enqueue(first, (0, 0, first));
        while (open.TryDequeue(out int state, out (int Dangers, double Seconds, int) reached))
        {
            if (done[state])
            {
                continue;
            }

            done[state] = true;
            (int place, int shown) = (state / sets, state % sets);
            if (shown == sets - 1 && (problem.End ?? place) == place)
            {
                return Trace(state, sets, before, reached.Seconds);
            }

            foreach ((int to, double seconds) in problem.Map.JoinedTo(place))
            {
                int then = Shown(groups, to, shown);
                if (problem.Map.OnlyEndsAt(to) && then == shown && to != problem.End)
                {
                    continue;
                }

                int next = (to * sets) + then;
                (int, double) cost = (reached.Dangers + (problem.Map.IsDangerous(to) ? 1 : 0), reached.Seconds + seconds);
                if (!done[next] && cost.CompareTo(best[next]) < 0)
                {
                    (best[next], before[next]) = (cost, state);
                    open.Enqueue(next, (cost.Item1, cost.Item2, next));
                }
            }
        }

        return null;
    }

    /// <summary>What has been shown once one stands at a place.</summary>
    private static int Shown(RouteGroups groups, int place, int shown)
    {
        for (int was = -1; was != shown;)
        {
            was = shown;
            for (int g = 0; g < groups.Places.Length; g++)
            {
                if ((shown >> g & 1) == 0 && groups.Places[g].Contains(place) && groups.Order.All(o => o.Then != g || (shown >> o.First & 1) != 0))
                {
                    shown |= 1 << g;
                }
            }
        }

        return shown;
    }

    private static (List<int>, List<bool>, double) Trace(int state, int sets, int[] before, double seconds)
    {
        List<int> places = [];
        List<bool> stops = [];
        for (; state >= 0; state = before[state])
        {
            places.Add(state / sets);
            stops.Add(before[state] < 0 || state % sets != before[state] % sets);
        }

        places.Reverse();
        stops.Reverse();
        return (places, stops, seconds);
    }
}
