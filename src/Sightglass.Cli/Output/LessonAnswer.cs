using Sightglass.Training.Lessons;

namespace Sightglass.Cli.Output;

/// <summary>What <c>lesson --json</c> answers.</summary>
/// <param name="Minutes">From the greeting to the end.</param>
/// <param name="MinutesTooLong">Beyond those that there are; 0 where it fits.</param>
/// <param name="GroupsWaiting">That stand idle before each change, a minute or more.</param>
/// <param name="WaitMinutes">What every group stands idle in all.</param>
/// <param name="Shorter">Changes that were planned and make it shorter, what gains most first, in the language that is spoken.</param>
internal sealed record LessonAnswer(
    string Title,
    string? RoadNumber,
    string Notice,
    string Purpose,
    int People,
    string Depth,
    double Minutes,
    double MinutesTooLong,
    double ChangeSeconds,
    int GroupsWaiting,
    double WaitMinutes,
    IReadOnlyList<string> Shorter,
    IReadOnlyList<LessonAnswer.Station> Stations,
    IReadOnlyList<string> Arrange,
    IReadOnlyList<string> Bring)
{
    public static LessonAnswer Of(LessonPlan plan) => new(
        plan.Route.Book.Title,
        plan.Route.Book.RoadNumberInUse,
        plan.Route.Book.Notice,
        plan.Request.Route.Purpose,
        plan.Request.People,
        plan.Request.Depth.ToString().ToLowerInvariant(),
        Math.Round(plan.Seconds / 60, 1),
        Math.Round(plan.SecondsTooLong / 60, 1),
        Math.Round(plan.ChangeSeconds, 1),
        plan.GroupsWaiting,
        Math.Round(plan.WaitSeconds / 60, 1),
        [.. LessonWords.Shorter(plan)],
        [.. plan.Stations.Select(s => new Station(Math.Round(s.Seconds / 60, 1), [.. s.Stops.Select(Of)]))],
        [.. LessonWords.Arrange(plan)],
        [.. LessonWords.Bring(plan)]);

    private static Stop Of(LessonStop stop) => new(
        stop.Stop.Place.Name,
        Math.Round(stop.Seconds / 60, 1),
        stop.Turns,
        [.. stop.Cautions.Select(c => new Told(c.Caution.Word.ToString().ToLowerInvariant(), c.Caution.Text, c.AsAt))],
        [.. stop.Points.Select(p => new Point(p.Item.Name, [.. p.Says.Where(s => !p.Again.Contains(s))], p.As, p.Hands, p.Permission))],
        [.. stop.Questions.Select(q => new Asked(q.Asked, q.Answer))]);

    internal sealed record Station(double Minutes, IReadOnlyList<Stop> Stops);

    internal sealed record Stop(string Place, double Minutes, int Turns, IReadOnlyList<Told> Cautions, IReadOnlyList<Point> Points, IReadOnlyList<Asked> Questions);

    /// <param name="AsAt">Number of the stop, counted through the lesson from 1, that told it whole; null where this one does.</param>
    internal sealed record Told(string Word, string Text, int? AsAt);

    /// <param name="As">The thing of which the rest was told before; null where all is said here.</param>
    internal sealed record Point(string Item, IReadOnlyList<string> Says, string? As, bool Hands, string? Permission);

    internal sealed record Asked(string Question, string Answer);
}
