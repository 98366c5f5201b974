using System.Collections.Immutable;

namespace Sightglass.Training.Routes;

/// <summary>
/// What of the things wanted decides about the walk: things that can be shown from the same places are one, and a thing that is shown in passing wherever another one must be shown
/// is none. Only what stands in no order is put together.
/// </summary>
/// <param name="Places">For each group the places.</param>
/// <param name="Order">Pairs of groups.</param>
internal sealed record RouteGroups(ImmutableArray<ImmutableArray<int>> Places, ImmutableArray<(int First, int Then)> Order)
{
    public static RouteGroups Of(RouteProblem problem)
    {
        HashSet<int> ordered = [.. problem.Order.SelectMany(o => new[] { o.First, o.Then })];
        List<(int Thing, ImmutableArray<int> Places)> kept = [.. ordered.Order().Select(t => (t, problem.Wanted[t]))];
        int fixedOnes = kept.Count;
        foreach (int thing in Enumerable.Range(0, problem.Wanted.Length).Where(t => !ordered.Contains(t)).OrderBy(t => problem.Wanted[t].Length).ThenBy(t => t))
        {
            ImmutableArray<int> places = problem.Wanted[thing];
            if (!places.Contains(problem.Start) && !kept.Any(k => k.Places.All(p => places.Contains(p))))
            {
                kept.Add((thing, places));
            }
        }

        Dictionary<int, int> numbers = kept.Take(fixedOnes).Select((k, i) => (k.Thing, i)).ToDictionary(p => p.Thing, p => p.i);
        return new([.. kept.Select(k => k.Places)], [.. problem.Order.Select(o => (numbers[o.First], numbers[o.Then]))]);
    }
}
