using Sightglass.Basics.Draws;

namespace Sightglass.Training.Routes;

/// <summary>
/// A short walk for many groups of things: inserted one after the other where each costs least, made shorter by moves, then taken apart and put together again so many times. The same
/// problem gives the same walk.
/// </summary>
internal static class TourSearch
{
    private const double Work = 2e7;

    private static readonly DrawKey s_key = DrawKey.Of("route");

    /// <returns>Places from the start with whether one stops there, and the least seconds that any walk could take; null where something cannot be reached.</returns>
    public static (List<int> Places, List<bool> Stops, double Least)? Find(RouteProblem problem, RouteGroups groups)
    {
        RouteClosure closure = new(problem.Map, [problem.Start, .. groups.Places.SelectMany(p => p), .. problem.End is { } e ? [e] : Array.Empty<int>()]);
        Tour tour = new(problem, groups, closure);
        foreach (int group in ByOrder(groups))
        {
            tour.Insert(group);
        }

        tour.Improve();
        if (double.IsInfinity(tour.Cost))
        {
            return null;
        }

        Shorten(tour, groups);
        return Walk(problem, groups, closure, tour);
    }

    /// <summary>Takes some stops out that stand together or anywhere, puts them in again, and keeps what is shorter.</summary>
    private static void Shorten(Tour tour, RouteGroups groups)
    {
        int n = groups.Places.Length;
        double choices = (double)groups.Places.Sum(p => p.Length) / Math.Max(n, 1);
        int rounds = (int)Math.Clamp(Work / (choices * n * n), 4, 2000);
        (int Group, int Place)[] best = [.. tour.Stops];
        double least = tour.Cost;
        ulong draw = 0;
        for (int round = 0; n > 1 && round < rounds; round++)
        {
            int many = 2 + Next(Math.Max(1, Math.Min(n / 2, 12)));
            int at = Next(n);
            List<int> taken = [];
            for (int k = 0; k < many && tour.Stops.Count > 0; k++)
            {
                taken.Add(tour.RemoveAt(round % 2 == 0 ? Math.Min(at, tour.Stops.Count - 1) : Next(tour.Stops.Count)).Group);
            }

            while (taken.Count > 0)
            {
                int next = Next(taken.Count);
                tour.Insert(taken[next]);
                taken.RemoveAt(next);
            }

            tour.Improve();
            double cost = tour.Cost;
            if (cost <= least)
            {
                (best, least) = ([.. tour.Stops], cost);
            }
            else
            {
                tour.Take(best);
            }
        }

        int Next(int below) => Draw.OneOf(0, draw++, s_key, below);
    }

    /// <summary>What must come first first, else as given.</summary>
    private static IEnumerable<int> ByOrder(RouteGroups groups)
    {
        HashSet<int> given = [];
        for (bool more = true; more;)
        {
            more = false;
            for (int g = 0; g < groups.Places.Length; g++)
            {
                if (!given.Contains(g) && groups.Order.All(o => o.Then != g || given.Contains(o.First)))
                {
                    more = given.Add(g);
                    yield return g;
                }
            }
        }
    }

    private static (List<int>, List<bool>, double) Walk(RouteProblem problem, RouteGroups groups, RouteClosure closure, Tour tour)
    {
        List<int> places = [problem.Start];
        List<bool> stops = [true];
        foreach (int to in tour.Stops.Select(s => s.Place).Concat(problem.End is { } end ? [end] : Array.Empty<int>()))
        {
            foreach (int passed in closure.Way(places[^1], to).ToArray())
            {
                places.Add(passed);
                stops.Add(false);
            }

            stops[^1] = stops[^1] || tour.Stops.Any(s => s.Place == to);
        }

        double bound = TourBound.Of(problem, groups, closure);
        double dangers = Math.Floor(tour.Cost / RouteClosure.Danger) * RouteClosure.Danger;
        return (places, stops, Math.Max(0, bound - dangers));
    }
}
