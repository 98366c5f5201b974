namespace Sightglass.Training.Routes;

/// <summary>The shortest walk that shows what is wanted, among those that pass the fewest places that are dangerous in themselves.</summary>
public static class RouteSearch
{
    /// <summary>
    /// Exact for few groups of things (<see cref="ExactRoute.MostGroups"/>); for more a short walk and a bound below which none lies. Null where something cannot be reached or the order
    /// goes in a circle.
    /// </summary>
    public static FoundRoute? Find(RouteProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        problem = problem with { Wanted = [.. problem.Wanted.Select(w => w.RemoveAll(problem.Map.IsClosed))] };
        if (problem.Map.IsClosed(problem.Start) || (problem.End is { } end && problem.Map.IsClosed(end)) || problem.Wanted.Any(w => w.IsEmpty))
        {
            return null;
        }

        RouteGroups groups = RouteGroups.Of(problem);
        if (groups.Places.Length <= ExactRoute.MostGroups)
        {
            return ExactRoute.Find(problem, groups) is { } found ? FoundRoute.Of(problem, found.Places, found.Stops, found.Seconds) : null;
        }

        return TourSearch.Find(problem, groups) is { } tour ? FoundRoute.Of(problem, tour.Places, tour.Stops, tour.Least) : null;
    }
}
