using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Training.Routes;

namespace Sightglass.Training.Lessons;

/// <summary>Plans a lesson: the route, what is said at each stop, how long it takes, and who stands where.</summary>
public static class LessonPlanner
{
    /// <returns>Null where there is no such walk.</returns>
    public static LessonPlan? Plan(ClassBook book, LessonRequest request)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(request);
        RouteRequest route = request.Route with { People = null };
        if (RoutePlanner.Plan(book, route) is not { } walk)
        {
            return null;
        }

        LessonPlan plan = Along(walk, request);
        return plan with { Advice = LessonAdvice.Of(plan, (way, changed) => Along(way, changed)) };
    }

    /// <summary>Along a walk that is found already.</summary>
    private static LessonPlan Along(RoutePlan walk, LessonRequest request)
    {
        LessonTimes times = request.Times;
        LessonEditing editing = new(request.Edits);
        RouteStop[] shows = [.. walk.Stops.Where(s => s.Items.Any(i => !editing.PassesBy(i)))];
        int stations = Math.Clamp(request.Stations, 1, Math.Max(1, Math.Min(request.People, shows.Length)));
        int group = (request.People + stations - 1) / stations;
        HashSet<string> tried = new(StringComparer.Ordinal);
        List<LessonStop> stops = [];
        double walked = 0;
        foreach (RouteStop stop in walk.Stops)
        {
            walked += stop.Seconds;
            if (shows.Length == 0 ? !stop.Items.IsEmpty : shows.Contains(stop))
            {
                stops.Add(Stop(stop, request, group, times, tried, editing) with { WalkSeconds = walked });
                walked = 0;
            }
        }

        ImmutableArray<LessonStation> divided = Stationing.Divide([.. stops], stations, times);
        return new(request, walk, divided, Change(walk.Book, divided, walk.Request.Pace), times) { Misfits = editing.Misfits() };
    }

    /// <param name="tried">Kinds that hands have tried before; of each one is enough.</param>
    private static LessonStop Stop(RouteStop stop, LessonRequest request, int group, LessonTimes times, HashSet<string> tried, LessonEditing editing)
    {
        Item[] shown = [.. stop.Items.Where(i => !editing.PassesBy(i))];
        ImmutableArray<LessonPoint> points = [.. shown.Select(i => Point(i, stop, request, tried, editing))];
        ImmutableArray<Question> questions = [.. shown.SelectMany(editing.Questions)];
        int turns = stop.TurnsOf(group, staying: 1);
        double spoken = (points.Sum(p => p.Words) + LessonStop.Whole(stop).Sum(c => c.Words)) / times.WordsAMinute * 60;
        double hands = points.Where(p => p.Hands).Sum(p => (p.Item.OperateSeconds + times.HandOver) * group);
        return new(stop, points, questions, turns, (turns * (spoken + (questions.Length * times.Question))) + hands);
    }

    private static LessonPoint Point(Item item, RouteStop stop, LessonRequest request, HashSet<string> tried, LessonEditing editing)
    {
        List<string> says = [item.Purpose, item.Normal, item.Texts.Know];
        if (request.Depth >= Depth.Operate)
        {
            says.Add(item.Texts.Operate);
        }

        if (request.Depth >= Depth.Repair)
        {
            says.Add(item.Texts.Repair);
        }

        bool hands = request.Audience is { } role && item.Hands && !item.Positions.IsEmpty && !stop.OnTouch.Any(h => h.Items.Contains(item.Name)) && (item.Authority is not { } a || a.Who.IsEmpty || a.Who.Contains(role)) && tried.Add(item.Kind.Name);
        return new(item, editing.Says(item, [.. says.Where(t => t.Length > 0)]), hands, hands && item.Authority?.Permission is { } owner && owner != request.Audience ? owner : null)
        {
            Defects = [.. request.Defects.Where(d => d.Item == item.Name)],
        };
    }

    private static double Change(ClassBook book, ImmutableArray<LessonStation> stations, double pace)
    {
        if (stations.Length < 2)
        {
            return 0;
        }

        WayTable ways = new(book);
        return Enumerable.Range(0, stations.Length).Max(i => Seconds(stations[i].Stops[^1], stations[(i + 1) % stations.Length].Stops[0])) * RouteRequest.OrdinaryPace / pace;

        double Seconds(LessonStop from, LessonStop to) => ways.Seconds(ways.IndexOf(from.Stop.Place.Name), ways.IndexOf(to.Stop.Place.Name));
    }
}
