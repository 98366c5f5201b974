using System.Collections.Immutable;

namespace Sightglass.Training.Routes;

/// <summary>A walk that shows everything wanted.</summary>
/// <param name="Steps">From the start, place after place.</param>
/// <param name="Least">No walk that passes as few dangerous places takes fewer seconds than this; equal to <see cref="Seconds"/> where the walk is known to be shortest, 0 where nothing is known.</param>
public sealed record FoundRoute(ImmutableArray<RouteStep> Steps, double Least)
{
    /// <summary>Walking alone, at the ordinary pace.</summary>
    public double Seconds => Steps.Sum(s => s.Seconds);

    public double Metres => Steps.Sum(s => s.Metres);

    /// <summary>Whether no shorter walk passes as few dangerous places.</summary>
    public bool IsShortest => Least >= Seconds - 1e-6;

    /// <summary>Puts a walk together from the places it comes by: each thing is shown at the first stop that offers it, in its order.</summary>
    /// <param name="problem">What is wanted.</param>
    /// <param name="places">From the start, each joined to the next.</param>
    /// <param name="stops">For each place whether one must stop there; elsewhere nothing is shown.</param>
    /// <param name="least">See <see cref="Least"/>.</param>
    internal static FoundRoute Of(RouteProblem problem, IReadOnlyList<int> places, IReadOnlyList<bool> stops, double least)
    {
        bool[] shown = new bool[problem.Wanted.Length];
        ImmutableArray<RouteStep>.Builder steps = ImmutableArray.CreateBuilder<RouteStep>(places.Count);
        for (int i = 0; i < places.Count; i++)
        {
            ImmutableArray<int> here = stops[i] ? ShownAt(problem, places[i], shown) : [];
            double seconds = i == 0 ? 0 : problem.Map.JoinedTo(places[i - 1]).Where(j => j.To == places[i]).Min(j => j.Seconds);
            steps.Add(new(places[i], seconds, i == 0 ? 0 : problem.Map.Metres(places[i - 1], places[i]), here));
        }

        return new(steps.ToImmutable(), least);
    }

    private static ImmutableArray<int> ShownAt(RouteProblem problem, int place, bool[] shown)
    {
        ImmutableArray<int>.Builder here = ImmutableArray.CreateBuilder<int>();
        for (bool more = true; more;)
        {
            more = false;
            for (int thing = 0; thing < shown.Length; thing++)
            {
                if (!shown[thing] && problem.Wanted[thing].Contains(place) && problem.MayShow(thing, t => shown[t]))
                {
                    more = shown[thing] = true;
                    here.Add(thing);
                }
            }
        }

        return here.ToImmutable();
    }
}
