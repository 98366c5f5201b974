namespace Sightglass.Training.Routes;

/// <summary>
/// What no walk can undercut: the least tree that joins all places at which one must stop, each place weighted so that the tree comes as near to a path as it can. Source: Held and Karp,
/// Operations Research 18 (1970) 1138–1162; the step sizes are common practice, no source.
/// </summary>
internal static class TourBound
{
    private const int Rounds = 300;

    /// <summary>Beyond so many places nothing is said: a round takes their number squared.</summary>
    private const int MostPlaces = 400;

    /// <returns>In the closure's costs; 0 where nothing is known.</returns>
    public static double Of(RouteProblem problem, RouteGroups groups, RouteClosure closure)
    {
        // A walk that comes back to where it began has that place twice, without a way between.
        int[] must = [.. groups.Places.Where(p => p.Length == 1).Select(p => p[0]).Where(p => p != problem.Start && p != problem.End).Distinct(), problem.Start, .. problem.End is { } e ? [e] : Array.Empty<int>()];
        int start = must.Length - (problem.End is null ? 1 : 2);
        if (must.Length > MostPlaces)
        {
            return 0;
        }

        double dangers = must.Take(start).Count(problem.Map.IsDangerous) * RouteClosure.Danger;
        double[] weight = new double[must.Length];
        double best = 0;
        double step = 0;
        for (int round = 0; round < Rounds && must.Length > 1; round++)
        {
            (double tree, int[] joints) = Tree(must, weight, closure);
            step = round == 0 ? tree / must.Length : step * 0.97;
            double bound = tree;
            for (int i = 0; i < must.Length; i++)
            {
                // A path has two joints at each place, one at its start and its end; where the end is free, any place may have one joint or two.
                bound -= weight[i] * Wanted(i);
            }

            best = Math.Max(best, bound);
            for (int i = 0; i < must.Length; i++)
            {
                double moved = weight[i] + (step * (joints[i] - Wanted(i)));
                weight[i] = problem.End is null && i != start ? Math.Max(0, moved) : moved;
            }
        }

        return best + dangers;

        int Wanted(int i) => i < start ? 2 : 1;
    }

    /// <summary>Prim's algorithm with the weights of both ends added to each cost.</summary>
    private static (double Tree, int[] Joints) Tree(int[] must, double[] weight, RouteClosure closure)
    {
        int n = must.Length;
        int[] joints = new int[n];
        double[] near = new double[n];
        int[] by = new int[n];
        bool[] within = new bool[n];
        Array.Fill(near, double.PositiveInfinity);
        near[0] = 0;
        double tree = 0;
        for (int k = 0; k < n; k++)
        {
            int next = -1;
            for (int i = 0; i < n; i++)
            {
                next = !within[i] && (next < 0 || near[i] < near[next]) ? i : next;
            }

            within[next] = true;
            if (k > 0)
            {
                tree += near[next];
                joints[next]++;
                joints[by[next]]++;
            }

            for (int i = 0; i < n; i++)
            {
                double cost = closure.Cost(must[next], must[i]) + weight[next] + weight[i];
                if (!within[i] && cost < near[i])
                {
                    (near[i], by[i]) = (cost, next);
                }
            }
        }

        return (tree, joints);
    }
}
