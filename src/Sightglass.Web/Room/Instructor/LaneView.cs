using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Timelines;
using Sightglass.Drawing.Vessels;
using Sightglass.Training.Drills;
using Sightglass.World.Journal;

namespace Sightglass.Web.Room.Instructor;

/// <summary>Makes the chart and the vessels of one person's drill.</summary>
public static class LaneView
{
    private const int Curves = 2;

    /// <summary>The least span, seconds, so that the first minute is not stretched over all of the width.</summary>
    private const double LeastSpan = 60;

    /// <summary>The journal's sentence of a walk: it says where somebody is, not what they did there.</summary>
    internal const string Walks = "{0} goes to {1}.";

    /// <summary>What is true now, the stores among it.</summary>
    /// <returns>SVG, empty where the drill is about no store.</returns>
    public static string Vessels(DrillSession session, DrillTrace trace)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(trace);
        ImmutableArray<Vessel> vessels = trace.Moments.IsEmpty ? [] :
        [
            .. session.Topics.Truths.Index().Where(t => t.Item.IsFill).Take(4)
                .Select(t => new Vessel(TopicWords.Name(t.Item), trace.Moments[^1].Values[t.Index], TopicWords.Value(t.Item, trace.Moments[^1].Values[t.Index]))),
        ];
        return vessels.IsEmpty ? "" : VesselDrawing.Render(vessels, Say.With($"Truth: {string.Join(", ", vessels.Select(v => $"{v.Name} {v.Says}"))}"), SvgOptions.Inline with { IdPrefix = "deep-" });
    }

    /// <summary>What is true now beside the stores, and what instruments show of it.</summary>
    public static ImmutableArray<(string Name, string Value, bool IsTruth)> Numbers(DrillSession session, DrillTrace trace)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(trace);
        return trace.Moments.IsEmpty ? [] :
        [
            .. session.Topics.All.Index().Where(t => !t.Item.IsFill && (t.Item.Fault is null || trace.Moments[^1].Values[t.Index] >= 0))
                .Select(t => (TopicWords.Name(t.Item), TopicWords.Value(t.Item, trace.Moments[^1].Values[t.Index]), t.Item.IsTruth)),
        ];
    }

    /// <summary>The chart over time.</summary>
    /// <param name="session">The drill.</param>
    /// <param name="drill">As the room has it.</param>
    /// <param name="trace">What it has been.</param>
    /// <param name="person">Which of its people.</param>
    /// <param name="name">Of whoever plays them.</param>
    public static Timeline Chart(DrillSession session, RoomDrill drill, DrillTrace trace, int person, string name)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(drill);
        ArgumentNullException.ThrowIfNull(trace);
        DrillLook look = session.Current;
        return new()
        {
            Title = Say.With($"What {name} went through, over time"),
            Across = (0, Math.Max(look.Now.Seconds * 1.06, LeastSpan)),
            Now = look.Now.Seconds,
            Width = 560,
            Names = 96,
            Scales = false,
            Lanes = [.. CurvesOf(session, trace), Places(look, trace, person), Acts(look, drill, person)],
            Moments = [.. MomentsOf(session, look).OrderBy(m => m.At)],
        };
    }

    private static IEnumerable<TimelineLane> CurvesOf(DrillSession session, DrillTrace trace)
    {
        (DrillTopic Topic, ImmutableArray<(double X, double Y)> Points)[] all =
            [.. session.Topics.All.Select((t, i) => (t, trace.Moments.Select(m => (m.Seconds, m.Values[i])).Where(p => double.IsFinite(p.Item2)).ToImmutableArray()))];
        // What moved most, of what is true and of what is shown; in the topics' order, so that lanes do not change places.
        HashSet<DrillTopic> chosen = [.. Most(all.Where(t => t.Topic is { IsTruth: true, IsState: false }), Curves), .. Most(all.Where(t => !t.Topic.IsTruth), 1)];
        int left = Curves - chosen.Count(t => t.IsTruth);
        return all.Where(t => chosen.Contains(t.Topic)).Select(t => Curve(t.Topic, t.Points))
            .Concat(all.Where(t => t.Topic.IsState).OrderByDescending(t => t.Points.Zip(t.Points.Skip(1)).Any(p => p.First.Y >= 0 != p.Second.Y >= 0)).Take(left).Select(t => new TimelineLane(Called(t.Topic), IsTruth: true) { Bars = [.. Spells(t.Points)] }))
            .OrderBy(l => !l.IsTruth);
    }

    private static TimelineLane Curve(DrillTopic topic, ImmutableArray<(double X, double Y)> points) => new(Called(topic), topic.IsTruth)
    {
        Trace = new(topic.IsTruth ? points : [], topic.IsTruth ? [] : [points], "", 0) { Scale = Scale(topic, points), End = TopicWords.Value(topic, points[^1].Y) },
    };

    private static IEnumerable<DrillTopic> Most(IEnumerable<(DrillTopic Topic, ImmutableArray<(double X, double Y)> Points)> all, int count) =>
        all.Where(t => !t.Points.IsEmpty).OrderByDescending(t => Moved(t.Topic, t.Points)).Take(count).Select(t => t.Topic);

    /// <summary>For how long a condition was so, each time.</summary>
    private static IEnumerable<TimelineBar> Spells(ImmutableArray<(double X, double Y)> points)
    {
        double? from = null;
        foreach ((double x, double y) in points)
        {
            if (y >= 0)
            {
                from ??= x;
            }
            else if (from is { } began)
            {
                yield return new(began, x, Say.It("so"), TimelineBarSort.Truth);
                from = null;
            }
        }

        if (from is { } still)
        {
            yield return new(still, points[^1].X, Say.It("so"), TimelineBarSort.Truth);
        }
    }

    private static string Called(DrillTopic topic) => topic.IsTruth ? Say.With($"truth: {TopicWords.Name(topic)}") : TopicWords.Name(topic);

    private static double Moved(DrillTopic topic, ImmutableArray<(double X, double Y)> points)
    {
        double moved = points.Max(p => p.Y) - points.Min(p => p.Y);
        return topic.Scale is { } scale ? moved / Math.Max(scale.To - scale.From, 1e-12) : moved / Math.Max(points.Max(p => Math.Abs(p.Y)), 1e-12);
    }

    // A part of what it has been with room above and below, so that what is steady looks steady.
    private static (double From, double To) Scale(DrillTopic topic, ImmutableArray<(double X, double Y)> points)
    {
        if (topic.Scale is { } own)
        {
            return own;
        }

        (double low, double high) = (points.Min(p => p.Y), points.Max(p => p.Y));
        double room = Math.Max(Math.Max((high - low) * 0.2, Math.Max(Math.Abs(low), Math.Abs(high)) * 0.05), topic.Resolution);
        return (low >= 0 ? Math.Max(0, low - room) : low - room, high + room);
    }

    private static TimelineLane Places(DrillLook look, DrillTrace trace, int person)
    {
        ImmutableArray<(SimTime At, string? Place)> walk = person < trace.Walks.Length ? trace.Walks[person] : [];
        return new(Say.It("place"))
        {
            Bars = [.. walk.Select((w, i) => Stay(w.Place, w.At, i + 1 < walk.Length ? walk[i + 1].At : look.Now, i + 1 == walk.Length))],
        };
    }

    private static TimelineBar Stay(string? place, SimTime from, SimTime to, bool isLast) => place is null
        ? new(from.Seconds, to.Seconds, Say.It("on the way"), TimelineBarSort.Way)
        : new(from.Seconds, to.Seconds, Say.Begin(Say.Book(place)), isLast ? TimelineBarSort.Here : TimelineBarSort.Box);

    private static TimelineLane Acts(DrillLook look, RoomDrill drill, int person)
    {
        string role = person < look.People.Length ? look.People[person].Role : "";
        IEnumerable<TimelineMark> acts = look.Journal
            .Where(j => j.Kind is JournalKind.Deed or JournalKind.Said or JournalKind.Finding && j.Sentence.Format != Walks && j.Sentence.ArgumentCount > 0 && j.Sentence.GetArgument(0) as string == role)
            .Select(j => new TimelineMark(j.Time.Seconds, j.Kind switch { JournalKind.Said => TimelineMarkSort.Said, JournalKind.Finding => TimelineMarkSort.Broken, _ => TimelineMarkSort.Act }, j.Text));
        IEnumerable<TimelineMark> wrong = look.Notes.Where(n => n.Kind is DrillNoteKind.Injured or DrillNoteKind.Never)
            .Select(n => new TimelineMark(n.At.Seconds, TimelineMarkSort.Broken, n.Kind == DrillNoteKind.Never ? Say.Begin(Say.Book(drill.Drill!.Drill.MustNever[n.Number].Name)) : Say.It("A danger met somebody")));
        return new(Say.It("acts")) { Marks = [.. acts, .. wrong, .. drill.Bookmarks.Select(b => new TimelineMark(b.At.Seconds, TimelineMarkSort.Bookmark, b.Name))] };
    }

    private static IEnumerable<TimelineMoment> MomentsOf(DrillSession session, DrillLook look) =>
    [
        .. look.Journal.Where(j => j.Kind == JournalKind.Truth).Select(j => new TimelineMoment(j.Time.Seconds, j.Text, IsTruth: true)),
        .. look.Notes.Where(n => n.Kind == DrillNoteKind.Cue && n.At > SimTime.Zero).Select(n => new TimelineMoment(n.At.Seconds, Say.It("the cue"), IsTruth: true)),
        .. look.Notes.Where(n => n.Kind == DrillNoteKind.Known && n.At > SimTime.Zero).Select(n => new TimelineMoment(n.At.Seconds, Say.It("could be known"))),
        .. look.Notes.Where(n => n.Kind == DrillNoteKind.Event && session.Drill.Events[n.Number].Event.Sets is not null)
            .Select(n => new TimelineMoment(n.At.Seconds, Say.With($"{session.Drill.Events[n.Number].Event.Sets}: {session.Drill.Events[n.Number].Event.To}"), IsTruth: true)),
    ];
}
