using System.Collections.Immutable;
using Sightglass.Training.Routes;

namespace Sightglass.Training.Lessons;

/// <summary>What would make a lesson shorter, found by planning it with each change.</summary>
internal static class LessonAdvice
{
    /// <summary>At most so many stations are tried: somebody has to speak at each.</summary>
    private const int MostStations = 12;

    /// <summary>What gains less is not worth a change, s.</summary>
    private const double Least = 60;

    /// <summary>Stops that are tried to be passed by: those that take longest.</summary>
    private const int LongestStops = 3;

    /// <summary>
    /// Where it takes longer than there is: another number of stations, less depth, the stop whose leaving out gains most. Where it fits, only fewer stations that take less: they are hands that
    /// are free.
    /// </summary>
    /// <param name="plan">As wanted.</param>
    /// <param name="anew">Plans along the same walk.</param>
    public static ImmutableArray<LessonChange> Of(LessonPlan plan, Func<RoutePlan, LessonRequest, LessonPlan> anew)
    {
        LessonRequest request = plan.Request;
        List<LessonChange?> changes = [Stations(plan, n => anew(plan.Route, request with { Stations = n }))];
        if (plan.SecondsTooLong > 0)
        {
            if (request.Depth > Depth.Know)
            {
                Depth less = request.Depth - 1;
                changes.Add(Shorter(plan, anew(plan.Route, request with { Depth = less }), (s, fits) => new LessonChange.Shallower(less, s, fits)));
            }

            changes.Add(Without(plan, anew));
        }

        return [.. changes.OfType<LessonChange>().OrderByDescending(c => c.SecondsLess)];
    }

    /// <summary>The fewest with which it fits; where none does, those with which it is shortest.</summary>
    private static LessonChange? Stations(LessonPlan plan, Func<int, LessonPlan> with)
    {
        int now = plan.Stations.Length;
        int most = plan.SecondsTooLong > 0 ? Math.Min(MostStations, Math.Min(plan.Request.People, plan.Stops.Count())) : now - 1;
        LessonPlan[] others = [.. Enumerable.Range(1, Math.Max(0, most)).Where(n => n != now).Select(with).Where(p => plan.Seconds - p.Seconds >= Least)];
        LessonPlan? best = others.FirstOrDefault(p => p.SecondsTooLong == 0) ?? others.MinBy(p => p.Seconds);
        return best is null ? null : Shorter(plan, best, (s, fits) => new LessonChange.Stations(best.Stations.Length, s, fits));
    }

    private static LessonChange? Without(LessonPlan plan, Func<RoutePlan, LessonRequest, LessonPlan> anew) =>
        plan.Stops.Count() < 2 ? null : plan.Stops.OrderByDescending(s => s.Seconds).Take(LongestStops)
            .Select(s => Shorter(plan, anew(PassingBy(plan.Route, s.Stop), plan.Request), (less, fits) => new LessonChange.Without(s.Stop.Place.Name, less, fits)))
            .OfType<LessonChange>().MaxBy(c => c.SecondsLess);

    /// <summary>The same way, without standing there; another way may be shorter still.</summary>
    private static RoutePlan PassingBy(RoutePlan route, RouteStop stop) => route with { Stops = route.Stops.Replace(stop, stop with { Items = [] }) };

    private static LessonChange? Shorter(LessonPlan plan, LessonPlan other, Func<double, bool, LessonChange> change) =>
        plan.Seconds - other.Seconds is >= Least and var less ? change(less, other.SecondsTooLong == 0) : null;
}
