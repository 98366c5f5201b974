using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Training.Routes;

namespace Sightglass.Training.Tests.Routes;

/// <summary>Walks of the demo machine. What is asserted can be read off its places and hazards.</summary>
public sealed class RoutePlannerTests
{
    private static readonly ClassBook s_book = Books.Curlew.Book;

    [Fact]
    public void Plan_OfASystem_ShowsEveryItemOnceFromOneOfItsPlaces()
    {
        RoutePlan plan = Of(RouteRequest.OfSystem(s_book, "fuel"));
        string[] shown = [.. plan.Stops.SelectMany(s => s.Items).Select(i => i.Name)];
        Assert.Equal(s_book.Items.Values.Where(i => i.System == "fuel" && !i.Places.IsEmpty).Select(i => i.Name).Order(StringComparer.Ordinal), shown.Order(StringComparer.Ordinal));
        Assert.All(plan.Stops, s => Assert.All(s.Items, i => Assert.Contains(s.Place.Name, i.Places)));
        Assert.Empty(plan.LeftOut);
        Assert.Equal("cab steps, right", plan.Stops[0].Place.Name);
        Assert.True(plan.Metres > s_book.Length, "the panel on both sides and the engine room");
    }

    /// <summary>A conductor is not sent behind doors that crews leave shut; what stands only there is told, not silently missing.</summary>
    [Fact]
    public void Plan_ForARole_KeepsToItsPlacesAndSaysWhatIsNotShown()
    {
        RoutePlan plan = Of(RouteRequest.OfSystem(s_book, "fuel") with { Role = "conductor" });
        Assert.All(plan.Stops.SelectMany(s => s.Passed.Append(s.Place.Name)), p => Assert.Contains(p, s_book.Roles["conductor"].Reaches));
        Assert.Contains("fuel pump", plan.LeftOut.Select(i => i.Name));
        Assert.DoesNotContain("pipe", plan.LeftOut.Select(i => i.Kind.Name)); // what has no place at all is not a thing to show
    }

    [Fact]
    public void Plan_OneSideClosed_NobodyPassesThere()
    {
        RouteRequest request = RouteRequest.OfWhole(s_book) with { Closed = [.. RouteSides.PlacesOf(s_book, "left side")] };
        Assert.Equal(8, request.Closed.Length); // from the rear steps to the cab steps
        RoutePlan plan = Of(request);
        Assert.DoesNotContain(plan.Stops.SelectMany(s => s.Passed.Append(s.Place.Name)), request.Closed.Contains);
        Assert.Contains("battery boxes", plan.LeftOut.Select(i => i.Name));
        Assert.Contains(plan.Stops, s => s.Place.Name == "front, right");
    }

    /// <summary>An end that is closed off is no walk; an order that names things of both sides is kept.</summary>
    [Fact]
    public void Plan_InOrder_AsAsked()
    {
        RouteRequest request = new("order", ["battery boxes", "horn button", "air dryer"]) { InOrder = ["battery boxes", "horn button", "air dryer"] };
        RoutePlan plan = Of(request);
        Assert.Equal(request.InOrder, plan.Stops.SelectMany(s => s.Items).Select(i => i.Name));
        Assert.True(plan.Seconds > Of(request with { InOrder = [] }).Seconds);
        Assert.Null(RoutePlanner.Plan(s_book, request with { To = "fuel panel, left", Closed = ["fuel panel, left"] }));
    }

    [Fact]
    public void Plan_Underneath_NamesWhatIsToBeArranged()
    {
        RoutePlan plan = Of(new("underneath", ["traction motors", "forward drain cock"]));
        Assert.Equal(["blue signals"], plan.ToBeThere.Select(n => n.Protection.Name));
        Assert.Equal(["blue signals"], plan.ToTouch.Select(n => n.Protection.Name));
    }

    /// <summary>Ten people, room for three in the cab: four turns; on the ground the book says of no room.</summary>
    [Theory]
    [InlineData(10, 4)]
    [InlineData(3, 1)]
    [InlineData(1, 1)]
    public void TurnsOf_MorePeopleThanRoom_InTurns(int people, int turns)
    {
        RoutePlan plan = Of(new("gauges", ["cab fuel gauge", "panel fuel gauge"]));
        Assert.Equal(turns, plan.Stops.Single(s => s.Place.Name == "cab").TurnsOf(people));
        Assert.Equal(1, plan.Stops.Single(s => s.Place.Name == "fuel panel, right").TurnsOf(people));
    }

    [Fact]
    public void Plan_OfChanges_ShowsWhatTheModificationsChange()
    {
        RoutePlan plan = Of(RouteRequest.OfChanges(s_book.For("4104")));
        Assert.Equal(["cab fuel gauge"], plan.Stops.SelectMany(s => s.Items).Select(i => i.Name));
    }

    /// <summary>4107 has guards on all glasses, 4112 raised pickups: written as changes of three uses of an assembly, which are no items themselves.</summary>
    [Theory]
    [InlineData("4107", "sight glass")]
    [InlineData("4112", "tank")]
    public void Plan_OfChangesOfAssemblies_ShowsTheirPartsThatDiffer(string number, string kind)
    {
        ClassBook machine = s_book.For(number);
        string[] shown = [.. Of(RouteRequest.OfChanges(machine)).Stops.SelectMany(s => s.Items).Select(i => i.Name)];
        Assert.NotEmpty(shown);
        Assert.Equal(machine.ItemsInOrder.Where(i => i.Kind.Name == kind && i.System == "fuel" && !i.Places.IsEmpty).Select(i => i.Name).Order(), shown.Order());
        Assert.Contains(RouteRequest.Changes, RoutePurposes.Of(machine));
        Assert.Equal(s_book.Items.Keys, machine.AsDescribed().Items.Keys);
    }

    [Fact]
    public void Plan_SlowGroup_SameWayInMoreTime()
    {
        RoutePlan plan = Of(RouteRequest.OfSystem(s_book, "fuel"));
        RoutePlan slow = Of(RouteRequest.OfSystem(s_book, "fuel") with { Pace = 0.65 });
        Assert.Equal(plan.Metres, slow.Metres);
        Assert.Equal(2 * plan.Seconds, slow.Seconds, 1e-9);
    }

    /// <summary>Every walk of the book, and every card with what its steps name.</summary>
    [Fact]
    public void Plan_EveryWalkAndCardOfTheDemo_IsFound()
    {
        Assert.All(s_book.Walks.Values, walk =>
        {
            RoutePlan plan = Of(RouteRequest.Of(s_book, walk, _ => []));
            Assert.Equal(walk.To, plan.Stops[^1].Place.Name);
            Assert.True(plan.LeastSeconds > 0.85 * plan.Seconds, $"{walk.Name}: {plan.Seconds} s, at least {plan.LeastSeconds} s");
        });
        Assert.All(s_book.CardTexts, text =>
        {
            ClassBook spoken = s_book.For(text);
            Card card = CardReader.Read(text, spoken, [])!;
            string? word = CardCompiler.Bindings(card, spoken) is [var first, ..] ? first.Word : null;
            string[] items = [.. CardItems.Of(CardCompiler.TryCompile(card, spoken, word, [])!).Select(i => i.Name)];
            Assert.NotEmpty(items);
            Assert.NotNull(RoutePlanner.Plan(spoken, new(card.Title, [.. items])));
        });
    }

    private static RoutePlan Of(RouteRequest request) => RoutePlanner.Plan(s_book, request)!;
}
