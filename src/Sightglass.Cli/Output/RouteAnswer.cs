using Sightglass.Book.Model;
using Sightglass.Training.Routes;

namespace Sightglass.Cli.Output;

/// <summary>What <c>route --json</c> answers.</summary>
/// <param name="Seconds">Of walking alone.</param>
/// <param name="LeastSeconds">No walk that passes as few dangerous places takes less; equal to the seconds where this one is known to be shortest, 0 where nothing is known.</param>
internal sealed record RouteAnswer(
    string Title,
    string? RoadNumber,
    string Notice,
    string Purpose,
    double Metres,
    double Seconds,
    double LeastSeconds,
    IReadOnlyList<RouteAnswer.Stop> Stops,
    IReadOnlyList<RouteAnswer.Need> ToBeThere,
    IReadOnlyList<RouteAnswer.Need> ToTouch,
    IReadOnlyList<string> LeftOut)
{
    public static RouteAnswer Of(RoutePlan plan) => new(
        plan.Book.Title,
        plan.Book.RoadNumberInUse,
        plan.Book.Notice,
        plan.Request.Purpose,
        Math.Round(plan.Metres, 3),
        Math.Round(plan.Seconds, 3),
        Math.Round(plan.LeastSeconds, 3),
        [.. plan.Stops.Select(s => new Stop(s.Place.Name, Math.Round(s.Seconds, 3), Math.Round(s.Metres, 3), [.. s.Passed], [.. s.Items.Select(i => i.Name)], [.. s.Hazards.Concat(s.OnTouch).Select(h => h.Caution).GravestFirst().Select(c => $"{c.Word}: {c.Text}")], s.TurnsOf(plan.Request.People)))],
        [.. plan.ToBeThere.Select(n => new Need(n.Protection.Name, n.Places))],
        [.. plan.ToTouch.Select(n => new Need(n.Protection.Name, n.Places))],
        [.. plan.LeftOut.Select(i => i.Name)]);

    /// <param name="Seconds">Of walking since the stop before.</param>
    /// <param name="Turns">In how many turns the group comes by.</param>
    internal sealed record Stop(string Place, double Seconds, double Metres, IReadOnlyList<string> Passed, IReadOnlyList<string> Items, IReadOnlyList<string> Cautions, int Turns);

    internal sealed record Need(string Protection, IReadOnlyList<string> Places);
}
