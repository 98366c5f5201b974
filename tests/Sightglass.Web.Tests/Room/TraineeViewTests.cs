using System.Collections.Immutable;
using System.Text.Json;
using System.Text.RegularExpressions;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Training.Drills;
using Sightglass.Web.Live;
using Sightglass.Web.Room;
using Sightglass.Web.Room.Trainee;
using Sightglass.World;

namespace Sightglass.Web.Tests.Room;

/// <summary>Issue: no page, message or log to a trainee holds a value, name or fault that the place does not show.</summary>
public sealed partial class TraineeViewTests : IDisposable
{
    private const string Drill = "a leak in the yard";

    /// <summary>Pieces that name places, protections or cards of the book, whatever is so in the world: they are the same everywhere.</summary>
    private static readonly string[] s_still = ["far", "ways", "place", "side", "held", "plate", "head"];

    private readonly TrainingRoom _room = new(Shelves.Curlew, null, TimeProvider.System);
    private readonly IDisposable _page;
    private readonly Seat _seat;
    private readonly DrillSession _session;
    private readonly TraineeDesk _desk;
    private readonly TraineeView _view;

    public TraineeViewTests()
    {
        Assert.Null(_room.Join("A. <b>Alder</b>", out Seat? seat, out _));
        _seat = seat!;
        _desk = new(_room, _seat);
        _view = new(_room, _seat, _desk);
        _page = _room.Open(_seat);
        Assert.Null(_room.Begin(Drill, 1, 3, [_seat]));
        _session = _seat.Drill!.Session!;
        _session.Wanted = Pace.Hold;
        _session.Release(HoldReason.Brief);
    }

    /// <summary>
    /// All pairs of a place and an indication: what cannot be read or operated from a place is not named there; and when everything out of reach is changed at once, faults put in and
    /// controls moved, the page stays the same to the letter, unless what is seen, heard or smelled there has changed.
    /// </summary>
    [Fact]
    public void Pieces_AtEveryPlace_HoldNothingThatThePlaceDoesNotShow()
    {
        ClassBook book = _session.Plan.Book;
        int same = 0, pairs = 0;
        foreach (string place in book.Places.Keys.Where(p => _session.Ask(w => w.HindranceOf(new WorldAction.Walk(_seat.Person, p))) == World.People.Hindrance.None))
        {
            GoTo(place);
            Sight sight = _session.Current.Sights[_seat.Person];
            ImmutableArray<Fragment> pieces = _view.Pieces();
            HashSet<string> named = [.. pieces.Where(p => !s_still.Contains(p.Id)).SelectMany(p => Texts().Matches(p.Html).Select(m => System.Net.WebUtility.HtmlDecode(m.Groups[1].Success ? m.Groups[1].Value : m.Groups[2].Value).Trim()))];
            foreach (Item item in book.Items.Values.Where(i => !i.Places.Contains(place) && !book.Systems.ContainsKey(i.Name)))
            {
                pairs++;
                Assert.False(named.Contains(item.Name) || named.Contains(Words.Capital(item.Name)), $"{item.Name} is named at {place}");
            }

            foreach (Item item in book.Items.Values.Where(i => i.Places.Contains(place) && !i.Kind.Symbol.Contains("tank", StringComparison.Ordinal)))
            {
                Assert.True(named.Contains(item.Name) || named.Contains(Words.Capital(item.Name)), $"{item.Name} is not named at {place}");
            }

            string before = JsonSerializer.Serialize(sight with { At = SimTime.Zero });
            (string, string)[] put = Disturb(book, place);
            Sight after = _session.Current.Sights[_seat.Person];
            if (JsonSerializer.Serialize(after with { At = SimTime.Zero }) == before)
            {
                same++;
                Assert.Equal(pieces, Fresh());
                Assert.Equal(pieces, _view.Pieces());
            }

            foreach ((string item, string fault) in put)
            {
                Assert.Null(_session.Do(new WorldAction.TakeOut(item, fault)));
            }
        }

        Assert.True(pairs > 20_000, $"{pairs} pairs");
        Assert.True(same > 20, $"{same} places stayed the same");
    }

    /// <summary>A page that keeps what has not changed shows what one would that is made from nothing, whatever is done.</summary>
    [Fact]
    public void Pieces_WhateverIsDone_AreThoseOfAPageMadeFromNothing()
    {
        int walked = 0;
        for (int i = 0; i < 400; i++)
        {
            WorldAction wish = Rooms.Wish(_session, 5, i);
            walked += _session.Act(wish) is null && wish is WorldAction.Walk ? 1 : 0;
            _desk.Take(i % 7 == 0 ? new() { Do = "note", To = $"line {i}" } : i % 11 == 0 ? new() { Do = "card", What = TraineeCards.Of(_session.Plan.Book)[i % 5].Name } : new() { Do = "operate", What = "no such thing" });
            Assert.Equal(Fresh(), _view.Pieces());
            _session.Forward(_session.Current.Now + SimTime.FromSeconds(i % 3));
            Assert.Equal(Fresh(), _view.Pieces());
        }

        Assert.True(walked > 5, $"walked {walked} times");
    }

    /// <summary>Whoever comes to what is shut is told so, and where there is no way any more; while they walk they know of nothing.</summary>
    [Fact]
    public void Pieces_NobodyGetsThere_SayWhatWasFoundOut()
    {
        GoTo("cab steps, right");
        string[] gates = ["cab steps and grab irons", "emergency window exit", "machinery door, right", "machinery door, left", "rear ladders"];
        foreach (string gate in gates)
        {
            Assert.Null(_session.Do(new WorldAction.PutIn(gate, gate.Contains("door", StringComparison.Ordinal) ? "stuck" : "cannot be used", ImmutableSortedDictionary<string, double>.Empty)));
        }

        WorldAction walk = new WorldAction.Walk(_seat.Person, "cab rear wall");
        Assert.DoesNotContain("Nobody gets by", Signs(), StringComparison.Ordinal);
        Assert.Null(_session.Act(walk));
        _session.Forward(_session.Current.Now + SimTime.FromSeconds(10));
        Assert.Equal("cab rear wall", _session.Current.Sights[_seat.Person].Towards);
        _session.Forward(_session.Current.Now + SimTime.FromSeconds(300));
        foreach (string gate in gates.Where(g => g != "emergency window exit" || Signs().Contains(g, StringComparison.Ordinal)))
        {
            Assert.Contains(gate, Signs(), StringComparison.Ordinal);
        }

        Assert.Contains("Nobody gets by: cab steps and grab irons; ", Signs(), StringComparison.Ordinal);
        Assert.Contains("There is no way to cab rear wall.", Signs(), StringComparison.Ordinal);
        Assert.Equal(World.People.Hindrance.NoWay, _session.Ask(w => w.HindranceOf(walk)));
        Assert.Null(_session.Do(new WorldAction.TakeOut(gates[0], "cannot be used")));
        _session.Forward(_session.Current.Now + SimTime.FromSeconds(1));
        Assert.DoesNotContain(gates[0], Signs(), StringComparison.Ordinal);
        Assert.Equal(World.People.Hindrance.None, _session.Ask(w => w.HindranceOf(walk)));

        string Signs() => System.Net.WebUtility.HtmlDecode(_view.Pieces().Single(p => p.Id == "signs").Html);
    }

    [Fact]
    public void Pieces_OnTheWay_ShowNothingToRead()
    {
        string far = _session.Plan.Book.Places.Values.Last(p => p.OnGround && p.Name != _session.Current.Sights[_seat.Person].Place).Name;
        Assert.Null(_session.Act(new WorldAction.Walk(_seat.Person, far)));
        ImmutableArray<Fragment> pieces = _view.Pieces();
        Assert.DoesNotContain(pieces, p => p.Id.StartsWith("it-", StringComparison.Ordinal));
        Assert.Contains(pieces, p => p.Id == "place" && p.Html.Contains("On the way", StringComparison.Ordinal));
        Assert.DoesNotContain("p-dot", pieces.Single(p => p.Id == "plate").Html, StringComparison.Ordinal);
    }

    /// <summary>What is not theirs they are told of first, and can; the evaluation knows.</summary>
    [Fact]
    public void Take_WhatIsNotTheirs_IsToldThenDoneAndFails()
    {
        BoundDrill drill = _session.Drill;
        string role = drill.Situation.People[_seat.Person].Role;
        Item item = drill.Plan.Book.Items.Values.First(i => i.Authority is { Who.IsEmpty: false } a && !a.Who.Contains(role) && i.Positions.Length == 2 && drill.Plan.Items.TryGetValue(i.Name, out ItemPlan? plan) && plan.Position is not null && i.Vehicle.IsTheMachine);
        GoTo(item.Places[0]);
        string now = _session.Current.Sights[_seat.Person].Items.Single(i => i.Name == item.Name).Position!;
        string other = item.Positions.First(p => p != now);
        _desk.Take(new() { Do = "operate", What = item.Name, To = other });
        Assert.Equal(item.Name, _desk.Doubt!.Value.Item);
        Assert.Contains(_view.Pieces(), p => p.Id == "state" && p.Html.Contains("It will be noted", StringComparison.OrdinalIgnoreCase));
        Assert.Equal(now, _session.Current.Sights[_seat.Person].Items.Single(i => i.Name == item.Name).Position);
        _desk.Take(new() { Do = "operate", What = item.Name, To = other, Sure = true });
        Assert.Null(_desk.Doubt);
        _session.Forward(_session.Current.Now + SimTime.FromSeconds(item.OperateSeconds + 1));
        Assert.Equal(other, _session.Current.Sights[_seat.Person].Items.Single(i => i.Name == item.Name).Position);
        Assert.Contains(_session.Current.Sheet!.Failures, l => l.Said.Contains(item.Name, StringComparison.Ordinal));
    }

    /// <summary>Whatever a page sends that is not ours: nothing breaks, and it is said.</summary>
    [Theory]
    [InlineData("operate", "no such thing", "open")]
    [InlineData("operate", "throttle", "no such position")]
    [InlineData("walk", "nowhere", "")]
    [InlineData("ask", "peace", "")]
    [InlineData("give back", "dead wire", "")]
    [InlineData("set", "chocks", "moon")]
    [InlineData("report", "that all is well", "")]
    [InlineData("tell", "nobody", "x")]
    [InlineData("pace", "", "60")]
    [InlineData("go", "", "")]
    [InlineData("back", "", "NaN")]
    [InlineData("practise", "light the train", "")]
    [InlineData("note", "", "   ")]
    [InlineData("inject", "engine", "stalled")]
    [InlineData(null, null, null)]
    public void Take_WhatCannotBe_IsSaidAndChangesNothing(string? wish, string? what, string? to)
    {
        int notes = _session.Current.Notes.Length;
        RoomDrill drill = _seat.Drill!;
        _desk.Take(new() { Do = wish, What = what, To = to });
        Assert.False(string.IsNullOrEmpty(_desk.Refused));
        Assert.Equal(notes, _session.Current.Notes.Length);
        Assert.Same(drill, _seat.Drill);
        Assert.Contains(_view.Pieces(), p => p.Id == "state" && p.Html.Contains("Not done", StringComparison.Ordinal));
    }

    [Fact]
    public void Pieces_NameWithMarkup_IsText()
    {
        TraineeView waiting = new(_room, JoinAnother(out Seat other), new(_room, other));
        Assert.Contains(waiting.Pieces(), p => p.Html.Contains("&lt;i&gt;", StringComparison.Ordinal));
        Assert.DoesNotContain(waiting.Pieces(), p => p.Html.Contains("<i>Birch", StringComparison.Ordinal));
    }

    public void Dispose()
    {
        _page.Dispose();
        _room.Dispose();
    }

    private ImmutableArray<Fragment> Fresh() => new TraineeView(_room, _seat, _desk).Pieces();

    private Seat JoinAnother(out Seat seat)
    {
        Assert.Null(_room.Join("<i>Birch</i>", out Seat? joined, out _));
        return seat = joined!;
    }

    private void GoTo(string place)
    {
        if (_session.Current.Sights[_seat.Person].Place == place)
        {
            return;
        }

        Assert.Null(_session.Act(new WorldAction.Walk(_seat.Person, place)));
        Assert.True(_session.Forward(_session.Current.Now + SimTime.FromSeconds(600), w => w.PlaceOf(w.People[_seat.Person]) == place), place);
    }

    /// <summary>Puts a fault into everything out of reach that has one that only shows where it stands.</summary>
    private (string Item, string Fault)[] Disturb(ClassBook book, string place)
    {
        (string, string)[] put =
        [
            .. from item in book.Items.Values
               where !item.Places.Contains(place) && item.Reading is not null && _session.Plan.Items.TryGetValue(item.Name, out ItemPlan? _)
               from fault in _session.Plan.Items[item.Name].Faults.Keys.Where(f => f is "stuck" or "bias" or "dirty").Take(1)
               select (item.Name, fault),
        ];
        foreach ((string item, string fault) in put)
        {
            Assert.Null(_session.Do(new WorldAction.PutIn(item, fault, ImmutableSortedDictionary<string, double>.Empty)));
        }

        return put;
    }

    /// <summary>Attribute values and texts between tags.</summary>
    [GeneratedRegex("=\"([^\"]*)\"|>([^<]+)<")]
    private static partial Regex Texts();
}
