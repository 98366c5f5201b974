using Sightglass.Basics.Time;
using Sightglass.Web.Room;
using Sightglass.Web.Room.Instructor;
using Sightglass.World;

namespace Sightglass.Web.Tests.Room;

public sealed class SeatRowsTests : IDisposable
{
    private static readonly DateTimeOffset s_now = new(2026, 11, 27, 12, 0, 0, TimeSpan.Zero);

    private readonly DrillRoom _room = new();

    [Fact]
    public void Of_SomebodyWithoutADrill_Waits()
    {
        Seat seat = _room.Comes("One");
        (var working, var waiting) = SeatRows.Of(_room.Room.Seats, s_now);
        Assert.Empty(working);
        Assert.Equal(seat, Assert.Single(waiting));
    }

    [Fact]
    public void Of_SomebodyOnTheWay_SaysWhereToAndHowLong()
    {
        Seat seat = _room.Comes("One");
        DrillSession session = _room.Begins("a compartment leaks at a stand", seat);
        string start = RowOf(seat).Place!;
        Assert.Null(session.Act(new WorldAction.Walk(seat.Person, "tank aft, left")));
        Assert.Matches("^walks to tank aft, left, [0-9]+ s to go$", RowOf(seat).Doing);
        Assert.Equal(start, RowOf(seat).Place);
        session.Forward(SimTime.FromSeconds(120));
        Assert.Equal("tank aft, left", RowOf(seat).Place);
        Assert.Equal("stands at tank aft, left", RowOf(seat).Doing);
    }

    [Fact]
    public void Of_AConnectionLost_SaysSinceWhen()
    {
        Assert.Null(_room.Room.Join("One", out Seat? seat, out _));
        _room.Begins("a compartment leaks at a stand", seat!);
        Assert.Equal("their page is not open", RowOf(seat!).Doing);
        IDisposable page = _room.Room.Open(seat!);
        page.Dispose();
        Assert.Equal("connection lost 12 s ago", SeatRows.Doing(seat!, null, new DrillLook(), seat!.LostAt!.Value.AddSeconds(12.4)));
    }

    [Theory]
    [InlineData(HoldReason.Brief, "has not begun")]
    [InlineData(HoldReason.One, "held")]
    [InlineData(HoldReason.Lost, "held since 0:00")]
    [InlineData(HoldReason.Lost | HoldReason.Stop, "calls to stop")]
    [InlineData(HoldReason.All, "")]
    public void Of_ADrillThatIsHeld_SaysWhy(HoldReason held, string flag)
    {
        Seat seat = _room.Comes("One");
        _room.Begins("a compartment leaks at a stand", seat).Hold(held);
        Assert.Equal(flag, RowOf(seat).Flag);
    }

    [Fact]
    public void Of_SomebodyRelieved_SaysTakenOver()
    {
        Seat seat = _room.Comes("One");
        DrillSession session = _room.Begins("a compartment leaks at a stand", seat);
        Assert.Null(session.Do(new WorldAction.TakeOver(seat.Person)));
        Assert.Equal("taken over", RowOf(seat).Flag);
        Assert.Null(session.Do(new WorldAction.HandBack(seat.Person)));
        Assert.Equal("", RowOf(seat).Flag);
    }

    public void Dispose() => _room.Dispose();

    private SeatRow RowOf(Seat seat) => SeatRows.Of(_room.Room.Seats, s_now).Working.Single(r => r.Seat == seat);
}
