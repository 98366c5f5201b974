using System.Collections.Immutable;
using Sightglass.Drawing.Timelines;
using Sightglass.Web.Room;
using Sightglass.Web.Room.Instructor;
using Sightglass.World;

namespace Sightglass.Web.Tests.Room;

public sealed class DrillTopicsTests : IDisposable
{
    private readonly DrillRoom _room = new();

    [Fact]
    public void Of_ALeakingCompartment_FindsTheCompartmentsAndWhatShowsThem()
    {
        DrillTopics topics = _room.Begins("a compartment leaks at a stand", _room.Comes("One")).Topics;
        string[] fills = [.. topics.Truths.Where(t => t.IsFill).Select(t => t.Item)];
        Assert.Equal(["aft compartment", "centre compartment", "forward compartment"], fills.Order(StringComparer.Ordinal));
        Assert.All(topics.Truths, t => Assert.True(t.IsTruth));
        Assert.NotEmpty(topics.Gauges);
        Assert.All(topics.Gauges, g => Assert.False(g.IsTruth));
    }

    /// <summary>Where nothing is measured it is about what is lit, open or at fault; what is at fault is said only while it is.</summary>
    [Fact]
    public void Of_ADarkHeadlight_FindsTheLampAndWhatMayBeWrongWithIt()
    {
        Seat seat = _room.Comes("One");
        DrillSession session = _room.Begins("a headlight is dark", seat);
        Assert.Equal("lit of headlight, front", session.Topics.States.Single(s => s.Fault is null).Name);
        Assert.Contains(session.Topics.States, s => s is { Fault: "burnt out", Item: "headlight, front" });
        ImmutableArray<(string Name, string Value, bool IsTruth)> before = LaneView.Numbers(session, session.Trace);
        Assert.Contains(before, n => n is { Name: "Headlight, front: lit", Value: "no", IsTruth: true });
        Assert.Null(session.Do(new WorldAction.PutIn("auxiliary lights", "shorted", ImmutableSortedDictionary<string, double>.Empty)));
        session.Forward(Basics.Time.SimTime.FromSeconds(5));
        Assert.Contains(LaneView.Numbers(session, session.Trace), n => n is { Name: "Fault: shorted, auxiliary lights", Value: "yes" });
        Timeline chart = LaneView.Chart(session, seat.Drill!, session.Trace, seat.Person, "One");
        Assert.Contains(chart.Lanes, l => l is { IsTruth: true, Name: "truth: Headlight, front: lit", Trace: null });
        Assert.Contains(chart.Moments, e => e.IsTruth && e.Words.Contains("auxiliary lights", StringComparison.Ordinal));
    }

    /// <summary>The fact says that both trucks are set; its two halves are what has to be so at once. A fact whose name has an <c>and</c> in it stays whole.</summary>
    [Fact]
    public void Parts_OfAFactThatSaysTwoThings_AreTold()
    {
        Assert.True(_room.Begins("charge it from nothing", _room.Comes("One")).Topics.Parts[2].Length >= 2);
        Assert.Single(_room.Begins("before the grade", _room.Comes("Two")).Topics.Parts[0]);
    }

    /// <summary>However long it goes on, few moments are kept, the first and the last among them.</summary>
    [Fact]
    public void Trace_OfHours_StaysShort()
    {
        DrillSession session = _room.Begins("before the frost", _room.Comes("One"));
        session.Forward(Basics.Time.SimTime.FromSeconds(7200));
        DrillTrace trace = session.Trace;
        Assert.InRange(trace.Moments.Length, 100, 401);
        Assert.Equal(0, trace.Moments[0].Seconds);
        Assert.InRange(trace.Moments[^1].Seconds, 7100, 7200);
        Assert.All(trace.Moments, m => Assert.Equal(session.Topics.All.Count(), m.Values.Length));
    }

    public void Dispose() => _room.Dispose();
}
