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

    /// <summary>What was so from the start is so far; taken away and brought back it is done; taken away again it is on its way.</summary>
    [Fact]
    public void Of_AnObjective_GoesWithTheMachine()
    {
        DrillSession session = _room.Begins("water after a wet night", _room.Comes("One"));
        Assert.Equal((FallMark.NotYet, "so far"), Drains());
        Turn("open", 65);
        Assert.Equal((FallMark.NotYet, "lost at 0:00"), Drains());
        Assert.Equal(FallMark.Done, Of(session).First(l => l.Layer == EvaluationLayer.Result).Mark);
        Turn("closed", 130);
        Assert.Equal((FallMark.Done, "1:05"), Drains());
        Turn("open", 140);
        Assert.Equal((FallMark.UnderWay, "lost at 2:10"), Drains());

        (FallMark, string) Drains() => Of(session).Where(l => l.Layer == EvaluationLayer.Result).Select(l => (l.Mark, l.When)).ElementAt(3);
        void Turn(string position, double until)
        {
            Assert.Null(session.Do(new WorldAction.Operate(-1, "forward drain cock", position)));
            session.Forward(SimTime.FromSeconds(until));
        }
    }

    [Fact]
    public void Of_PartOfTheWay_SaysHowFar()
    {
        DrillSession session = _room.Begins("before the grade", _room.Comes("One"));
        FallLine line = Falling.Of(session.Drill, session.Current, [new(0, 1, 3), new(1, 1, 3), default]).First(l => l.Layer == EvaluationLayer.Result);
        Assert.Equal((FallMark.UnderWay, "1 of 3"), (line.Mark, line.When));
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

    private static ImmutableArray<FallLine> Of(DrillSession session) => Falling.Of(session.Drill, session.Current, session.Progress);
}
