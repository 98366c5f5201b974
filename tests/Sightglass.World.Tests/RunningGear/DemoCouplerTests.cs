using Sightglass.Book.Model;
using Sightglass.World.Tests.Electric;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.RunningGear;

/// <summary>Coupling and uncoupling as a whole, at both ends, from both sides, with turned vehicles: what is reached from where, what comes apart with the couplers and what cannot be coupled without them (common practice, no source).</summary>
public sealed class DemoCouplerTests
{
    private const string Express = "double-headed express, charged";

    public static TheoryData<string> Trains => [.. Books.Curlew.Book.Trains.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Between any two vehicles: a lever of either of them on each side of the train, so that nobody crosses; each hose, each jumper and the couplers in reach of the place between, the levers and angle cocks from beside alone.</summary>
    [Theory]
    [MemberData(nameof(Trains))]
    public void Couplings_OfATrain_AreReachedFromEitherSide(string train)
    {
        ClassBook book = Books.Curlew.Book.Coupled(train);
        Item[] locks = [.. book.Items.Values.Where(i => i.Kind.Name == "coupler lock")];
        Assert.Equal(book.Vehicles.Length - 1, locks.Length);
        foreach (Item held in locks)
        {
            Item[] couplers = [book.Items[held.From!.Item], book.Items[held.To!.Item]];
            foreach (Item lever in couplers.Select(c => book.Items[c.Parameters["lifted by"].Text]))
            {
                Assert.Equal([-1, 1], lever.Places.Select(p => Side(book, p)).Distinct().Order());
                Assert.Contains("conductor", lever.Authority!.Who);
                Assert.Equal("engineer", lever.Authority.Permission);
            }

            foreach (Item coupling in book.Items.Values.Where(i => i.Kind.Name is "hose coupling" or "jumper" && Vehicles(book, i).SequenceEqual(Vehicles(book, held))))
            {
                Assert.Contains(0, coupling.Places.Select(p => Side(book, p)));
                Assert.Contains(coupling.Places, p => Side(book, p) != 0);
                Assert.True(coupling.Authority!.Who.Length > 0, coupling.Name);
            }
        }
    }

    /// <summary>Whoever handles a hose between two vehicles reaches between them, from wherever they stand.</summary>
    [Fact]
    public void Hose_BetweenVehicles_NeedsProtectionFromEverySide()
    {
        ClassBook book = Books.Curlew.Book.Coupled("local train");
        Item[] hoses = [.. book.Items.Values.Where(i => i.Kind.Name == "hose coupling")];
        Assert.NotEmpty(hoses);
        Assert.Empty(hoses.Where(h => !book.Hazards.Values.Any(z => z.IsCritical && z.Protection == "going between" && z.Items.Contains(h.Name))).Select(h => h.Name));
    }

    /// <summary>Either lever parts the same two vehicles, also of one that is turned; hoses and jumpers go with it and both halves brake, elsewhere all stays coupled.</summary>
    [Theory]
    [InlineData("rear uncoupling lever", "at the rear", "brake pipe coupling at the rear", "brake pipe coupling between car 1 and car 2")]
    [InlineData("rear uncoupling lever of unit 2", "at the rear", "control line jumper at the rear", "communication line jumper between car 1 and car 2")]
    [InlineData("A end uncoupling lever of car 3", "between car 2 and car 3", "main reservoir pipe coupling between car 2 and car 3", "coupler lock at the rear")]
    [InlineData("B end uncoupling lever of car 2", "between car 2 and car 3", "communication line jumper between car 2 and car 3", "brake pipe coupling between car 3 and car 4")]
    public void Lever_Lifted_PartsTheTwoVehiclesWithAllBetweenThem(string lever, string where, string gone, string stays)
    {
        using Rig rig = DemoTrains.At(Express);
        rig.Do(2, lever, "lifted");
        Assert.True(rig.Holds(1, $"coupled of coupler lock {where}"));
        Assert.True(rig.Holds(3, $"parted of coupler lock {where}"));
        Assert.True(rig.Holds(3, $"parted of {gone}"));
        Assert.True(rig.Holds(3, $"coupled of {stays}"));
        Assert.True(rig.Holds(25, "brakes of every car are set"));
        Assert.Equal(where == "at the rear", rig.Holds(25, "something was torn out at the rear"));
    }

    /// <summary>Everything apart first: nothing is torn.</summary>
    [Fact]
    public void Lever_LiftedLast_TearsNothing()
    {
        using Rig rig = DemoTrains.At("local train, charged");
        foreach (string each in rig.Plan.Book.Items.Values.Where(i => i.Kind.Name is "hose coupling" or "jumper" && i.Name.EndsWith("at the rear", StringComparison.Ordinal)).Select(i => i.Name))
        {
            rig.Do(1, each, "parted");
        }

        rig.Do(2, "rear uncoupling lever", "lifted");
        Assert.True(rig.Holds(3, "the rear coupler is free"));
        Assert.False(rig.Holds(3, "something was torn out at the rear"));
    }

    /// <summary>Apart, no hose reaches; with a lever up the couplers do not lock; then couplers first, hoses after them.</summary>
    [Fact]
    public void Coupling_InAnyOtherOrder_DoesNotTake()
    {
        using Rig rig = DemoTrains.At("local train, charged");
        rig.Do(1, "rear brake pipe angle cock", "closed");
        rig.Do(2, "A end uncoupling lever of car 1", "lifted");
        rig.Do(3, "brake pipe coupling at the rear", "coupled");
        rig.Do(4, "coupler lock at the rear", "coupled");
        Assert.True(rig.Holds(5, "parted of brake pipe coupling at the rear"));
        Assert.True(rig.Holds(5, "parted of coupler lock at the rear"));
        rig.Do(6, "A end uncoupling lever of car 1", "down");
        rig.Do(7, "coupler lock at the rear", "coupled");
        rig.Do(8, "brake pipe coupling at the rear", "coupled");
        Assert.True(rig.Holds(9, "coupled of coupler lock at the rear"));
        Assert.True(rig.Holds(9, "coupled of brake pipe coupling at the rear"));
        rig.Do(10, "coupler lock at the rear", "parted");
        Assert.True(rig.Holds(11, "coupled of coupler lock at the rear")); // no hand does it, a lever does
    }

    /// <summary>Looking coupled is not coupled: a lock that has not dropped holds at a stand and lets go at the first pull; the tell-tale says so before.</summary>
    [Fact]
    public void Lock_ThatHasNotDropped_LetsGoWhenTheTrainMoves()
    {
        using Rig rig = DemoTrains.At("local train, charged");
        rig.Break(1, "A end coupler and knuckle of car 1", "lock up");
        Assert.False(rig.Holds(0.5, "the tell-tale of the A end coupler is seen up of car 1"));
        Assert.True(rig.Holds(2, "the tell-tale of the A end coupler is seen up of car 1"));
        Assert.True(rig.Holds(60, "coupled of coupler lock at the rear"));
        rig.Goes(61, 1);
        Assert.True(rig.Holds(62, "parted of coupler lock at the rear"));
        Assert.True(rig.Holds(62, "parted of brake pipe coupling at the rear"));
    }

    [Theory]
    [InlineData("rear coupler and knuckle", "jams")]
    [InlineData("rear uncoupling lever", "stuck")]
    [InlineData("coupler lock at the rear", "stuck")]
    public void Lever_OfWhatIsJammed_PartsNothing(string item, string fault)
    {
        using Rig rig = DemoTrains.At("local train, charged");
        rig.Break(1, item, fault);
        rig.Do(2, "rear uncoupling lever", "lifted");
        Assert.True(rig.Holds(3, "coupled of coupler lock at the rear"));
    }

    /// <summary>A knuckle that breaks under way, or the train that parts anywhere between the two vehicles: all of it comes apart, and a jumper that was live is pulled live.</summary>
    [Theory]
    [InlineData("rear coupler and knuckle", "broken")]
    [InlineData("brake pipe coupling at the rear", "train parted")]
    [InlineData("coupler lock at the rear", "train parted")]
    public void TrainParts_WithPowerOn_PullsTheJumpersLive(string item, string fault)
    {
        using Rig rig = DemoTrains.At("train with head-end power");
        Assert.True(rig.Holds(30, "live of head-end right jumper at the rear"));
        rig.Break(31, item, fault);
        Assert.True(rig.Holds(32, "parted of coupler lock at the rear"));
        Assert.True(rig.Holds(32, "pulled live of head-end right jumper at the rear"));
        Assert.True(rig.Holds(32, "parted of head-end left jumper at the rear"));
        rig.Do(33, "coupler lock at the rear", "coupled");
        Assert.Equal(fault == "broken", rig.Holds(34, "parted of coupler lock at the rear"));
    }

    /// <summary>−1 and 1 for a place beside the train, 0 for one at the middle, between its vehicles.</summary>
    private static int Side(ClassBook book, string place) => Math.Abs(book.Places[place].Position.Y) < 0.5 ? 0 : Math.Sign(book.Places[place].Position.Y);

    private static IEnumerable<int> Vehicles(ClassBook book, Item coupling) => new[] { coupling.From, coupling.To }.Select(e => book.Items[e!.Item].Vehicle.Index).Order();
}
