using Sightglass.Web.Room;
using Sightglass.Web.Room.Instructor;

namespace Sightglass.Web.Tests.Room;

public sealed class RoomOrderTests : IDisposable
{
    private const string Drill = "a headlight is dark";

    private readonly DrillRoom _room = new();

    [Theory]
    [InlineData(CaseChoice.Same, 7, 7)]
    [InlineData(CaseChoice.Own, 7, 8)]
    public void Begin_ForTwo_GivesEachAWorldAndTheCaseThatWasChosen(CaseChoice cases, ulong first, ulong second)
    {
        Seat[] seats = [_room.Comes("One"), _room.Comes("Two")];
        Assert.Null(new RoomOrder(Drill, 3, 7, cases, [.. seats], [], 0).Begin(_room.Room));
        Assert.NotEqual(seats[0].Drill, seats[1].Drill);
        Assert.Equal([first, second], seats.Select(s => s.Drill!.Start.Case));
        Assert.All(seats, s => Assert.Equal(HoldReason.Brief, s.Drill!.Session!.Held));
    }

    [Fact]
    public void Begin_ForNobody_SaysSo() => Assert.Contains("for whom", new RoomOrder(Drill, 3, 7, CaseChoice.Same, [], [], 0).Begin(_room.Room), StringComparison.Ordinal);

    [Fact]
    public void Begin_Together_SeatsEachAsThePersonThatWasSaid()
    {
        string drill = _room.Room.Offered.First(d => Shelves.Curlew.Book.Situations[d.Situation].People.Length >= 2 && Shelves.Curlew.Book.Situations[d.Situation].Train is null).Name;
        Seat[] seats = [_room.Comes("One"), _room.Comes("Two")];
        var people = Shelves.Curlew.Book.Situations[_room.Room.Offered.Single(d => d.Name == drill).Situation].People;
        int judged = Enumerable.Range(0, people.Length).First(i => people[i].Role == _room.Room.Offered.Single(d => d.Name == drill).Role);
        int other = judged == 0 ? 1 : 0;
        Seat?[] roles = new Seat?[people.Length];
        RoomOrder order = new(drill, 3, 7, CaseChoice.Together, [], [.. roles], judged);
        Assert.Contains("judged", order.Begin(_room.Room), StringComparison.Ordinal);
        (roles[judged], roles[other]) = (seats[0], seats[0]);
        Assert.Contains("only one", (order with { Roles = [.. roles] }).Begin(_room.Room), StringComparison.Ordinal);
        roles[other] = seats[1];
        Assert.Null((order with { Roles = [.. roles] }).Begin(_room.Room));
        Assert.Equal(seats[0].Drill, seats[1].Drill);
        Assert.Equal((judged, other), (seats[0].Person, seats[1].Person));
        Assert.Equal(["One", "Two"], seats[0].Drill!.Workers.Select(w => w.Name));
    }

    public void Dispose() => _room.Dispose();
}
