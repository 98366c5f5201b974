using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Training.Evaluation;
using Sightglass.Web.Room;
using Sightglass.Web.Room.Instructor;
using Sightglass.World;

namespace Sightglass.Web.Tests.Room;

public sealed class FallingTests : IDisposable
{
    private readonly DrillRoom _room = new();

    [Fact]
    public void Of_ADrillJustBegun_NothingIsDoneNorFailed()
    {
        ImmutableArray<FallLine> lines = Of(_room.Begins("a leak in the yard", _room.Comes("One")));
        Assert.DoesNotContain(lines, l => l.Mark == FallMark.Broken);
        Assert.Contains(lines, l => l is { Layer: EvaluationLayer.Forbidden, Mark: FallMark.NotYet, When: "so far" });
    }

    [Fact]
    public void Of_ControlThatIsNotTheirs_IsBrokenAtItsMoment()
    {
        Seat seat = _room.Comes("One");
        DrillSession session = _room.Begins("a wheel smells", seat);
        Assert.Null(session.Do(new WorldAction.Walk(seat.Person, "cab")));
        session.Forward(SimTime.FromSeconds(300));
        string item = session.Current.Sights[seat.Person].Items.Select(i => i.Name)
            .First(n => session.Plan.Book.Items[n] is { Authority.Who: { IsEmpty: false } who } i && i.Positions.Length > 1 && !who.Contains("conductor"));
        Assert.Null(session.Do(new WorldAction.Operate(seat.Person, item, session.Plan.Book.Items[item].Positions[^1])));
        FallLine line = Of(session).Single(l => l.Layer == EvaluationLayer.Authority);
        Assert.Equal((FallMark.Broken, "5:00", true), (line.Mark, line.When, line.IsAtAGlance));
        Assert.Contains(item, line.What, StringComparison.Ordinal);
    }

    /// <summary>Half of the way is told by what has to be so at once; reached it is done, taken back it was so and is lost.</summary>
    [Fact]
    public void Of_AnObjective_GoesFromNotYetOverPartsToDoneAndLost()
    {
        Seat seat = _room.Comes("One");
        DrillSession session = _room.Begins("water after a wet night", seat);
        FallLine Drains() => Of(session).Where(l => l.Layer == EvaluationLayer.Result).ElementAt(3);
        Assert.Equal((FallMark.Done, "from the start"), (Drains().Mark, Drains().When));
        Assert.Null(session.Do(new WorldAction.Operate(-1, "forward drain cock", "open")));
        session.Forward(SimTime.FromSeconds(5));
        Assert.Equal((FallMark.UnderWay, "lost again"), (Drains().Mark, Drains().When));
        Assert.Equal(FallMark.Done, Of(session).First(l => l.Layer == EvaluationLayer.Result).Mark);
        Assert.Null(session.Do(new WorldAction.Operate(-1, "forward drain cock", "closed")));
        session.Forward(SimTime.FromSeconds(20));
        Assert.Equal(FallMark.Done, Drains().Mark);
    }

    [Fact]
    public void Of_ADrillThatIsOver_SaysWhatIsNotMet()
    {
        Seat seat = _room.Comes("One");
        DrillSession session = _room.Begins("a headlight is dark", seat);
        Assert.Null(session.Act(new WorldAction.Declare(seat.Person)));
        session.Forward(SimTime.FromSeconds(5));
        Assert.Contains(Of(session), l => l is { Layer: EvaluationLayer.Result, Mark: FallMark.Broken, When: "not met" });
    }

    public void Dispose() => _room.Dispose();

    private static ImmutableArray<FallLine> Of(DrillSession session) => Falling.Of(session.Drill, session.Current, session.Trace);
}
