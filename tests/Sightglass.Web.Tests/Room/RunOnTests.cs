using Sightglass.Basics.Time;
using Sightglass.Plant.Signals;
using Sightglass.Web.Room;
using Sightglass.Web.Room.Instructor;
using Sightglass.World;

namespace Sightglass.Web.Tests.Room;

public sealed class RunOnTests : IDisposable
{
    private readonly DrillRoom _room = new();

    [Theory]
    [InlineData("engine runs")]
    [InlineData("fill of aft compartment < 20 % and not engine starves")]
    [InlineData("fault leak of aft compartment")]
    public void Read_AConditionOfTheBook_IsRead(string text)
    {
        Assert.NotNull(RunCondition.Read(Leak().Drill, text, out IReadOnlyList<string> wrong));
        Assert.Empty(wrong);
    }

    [Theory]
    [InlineData("", "Write a condition")]
    [InlineData("engine run", "engine runs")]
    [InlineData("fill of aft compartment", "is a plain number, not t")]
    [InlineData("fill of aft compartment < 20 L", "compare a plain number with volume")]
    public void Read_SomethingElse_SaysWhatWouldBeRight(string text, string told)
    {
        Assert.Null(RunCondition.Read(Leak().Drill, text, out IReadOnlyList<string> wrong));
        Assert.Contains(told, string.Join(' ', wrong), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Begin_UntilSomethingIsSo_StandsThereHeld()
    {
        DrillSession session = Leak();
        Signal spilled = RunCondition.Read(session.Drill, "fuel is on the ground", out _)!;
        string said = await RunOn.Begin(session, 3600, w => w.Value(spilled) >= 0).Ended;
        Assert.StartsWith("It came to be so at ", said, StringComparison.Ordinal);
        Assert.True(session.Ask(w => w.Value(spilled) >= 0));
        Assert.InRange(session.Current.Now.Seconds, 1, 3599);
        Assert.Equal(HoldReason.One, session.Held);
    }

    [Fact]
    public async Task Begin_ForMinutes_StandsAtTheirEnd()
    {
        DrillSession session = Leak();
        Assert.Equal("Run on to 2:00, held.", await RunOn.Begin(session, 120, null).Ended);
        Assert.Equal(120, session.Current.Now.Seconds, 3);
    }

    /// <summary>What is stopped stands where it has come to; nothing is lost of it.</summary>
    [Fact]
    public void Forward_Stopped_StandsWhereItIs()
    {
        DrillSession session = Leak();
        using CancellationTokenSource stop = new();
        Assert.False(session.Forward(SimTime.FromSeconds(3600), w =>
        {
            if (w.Now.Seconds >= 30)
            {
                stop.Cancel();
            }

            return false;
        }, stop.Token));
        Assert.InRange(session.Current.Now.Seconds, 30, 32);
    }

    /// <summary>Who declares ends the drill; it is then judged at once, and not run on by anybody.</summary>
    [Fact]
    public void Forward_BeyondTheEndOfADrill_StopsAtIt()
    {
        Seat seat = _room.Comes("One");
        DrillSession session = _room.Begins("a headlight is dark", seat);
        session.Forward(SimTime.FromSeconds(2 * session.Drill.Drill.TimeLimit));
        Assert.True(session.Current.IsOver);
        Assert.InRange(session.Current.Now.Seconds, session.Drill.Drill.TimeLimit, session.Drill.Drill.TimeLimit + 10);
    }

    [Fact]
    public void GoBack_OfADrill_BeginsAnotherWithTheSamePeople()
    {
        Seat seat = _room.Comes("One");
        DrillSession session = _room.Begins("a compartment leaks at a stand", seat);
        Assert.Null(session.Act(new WorldAction.Walk(seat.Person, "tank aft, left")));
        session.Forward(SimTime.FromSeconds(200));
        RoomDrill first = seat.Drill!;
        Assert.Null(_room.Room.GoBack(first, SimTime.FromSeconds(150)));
        Assert.NotEqual(first, seat.Drill);
        Assert.Equal(("One", seat.Person), (seat.Drill!.Workers.Single().Name, seat.Drill.Workers.Single().Person));
        Assert.Equal(150, seat.Drill.Last!.Now.Seconds, 3);
        Assert.NotNull(first.Ended);
        Assert.Equal("One", first.Workers.Single().Name);
        // What it has been is looked at again on the way.
        Assert.InRange(seat.Drill.Session!.Trace.Moments.Length, 50, 200);
        Assert.Contains(seat.Drill.Session.Trace.Walks[seat.Person], w => w.Place == "tank aft, left");
    }

    public void Dispose() => _room.Dispose();

    private DrillSession Leak() => _room.Begins("a compartment leaks at a stand", _room.Comes("One"));
}
