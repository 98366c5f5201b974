using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Tests.Support;
using Sightglass.World.Snapshots;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>Hoses of two lines joined to each other by mistake. What follows is common practice, no source: it is the reason why brakes are tried at the last car after coupling.</summary>
public sealed class CrossedHosesTests
{
    private const double Psi = 6894.757293;
    private const string Pair = "brake pipe and main reservoir pipe hoses at the rear";
    private const string BrakePipe = "brake pipe coupling at the rear";
    private const string MainPipe = "main reservoir pipe coupling at the rear";

    private static readonly Lazy<ClassBook> s_book = new(() => Read("mistaken: { brake pipe: main reservoir pipe }, "));

    [Fact]
    public void Coupled_EndsWhoseHosesAreAlike_HaveAPairAtEveryCoupling()
    {
        ClassBook train = s_book.Value.Coupled("six coaches");
        Assert.Equal(6, train.Items.Values.Count(i => i.Kind.Name == "hose pair"));
        Assert.Equal([BrakePipe, MainPipe], train.Items[Pair].Parameters["couplings"].Names);
        Assert.Contains("brake pipe and main reservoir pipe hoses between car 5 and car 6", train.Items.Keys);
        Assert.Equal(["rear, left", "front, left of car 1"], train.Signs[$"{Pair} are seen crossed"].Places);
        Assert.DoesNotContain(TrainMachine.Book.Coupled("six coaches").Items.Values, i => i.Kind.Name == "hose pair");
    }

    /// <summary>The brake pipe of the cars gets main reservoir air past every valve: overcharged, and no brake of theirs answers the handle, while the gauge in the cab looks right.</summary>
    [Fact]
    public void Crossed_AtTheMachine_OverchargesTheCarsAndTakesTheirBrakes()
    {
        using Rig rig = Charged();
        PutIn(rig, 1);
        Assert.True(rig.At(0.5, Seen(rig)) < 0);
        Assert.True(rig.At(2, Seen(rig)) > 0);
        Assert.InRange(rig.At(600, "pressure of rear of the brake pipe of car 6") / Psi, 128, 140);
        Assert.Equal(110, rig.At(600, "pressure of main reservoir pipe of car 6") / Psi, 1.0);
        rig.Do(601, "brake handle", "full service");
        Assert.Equal(84, rig.Reads(700, "gauge") / Psi, 1.5);
        Assert.True(rig.At(700, "brakes of every car are released") >= 0);
        Assert.Equal(84, rig.At(700, "pressure of main reservoir pipe of car 6") / Psi, 3.0);
    }

    /// <summary>Taken apart and joined again with a look, each is with its like; the cars are let off of their overcharge by nobody.</summary>
    [Fact]
    public void Crossed_BothPartedAndCoupledAgain_AreRight()
    {
        using Rig rig = Charged();
        PutIn(rig, 1);
        foreach (string cock in (string[])["rear angle cock", "main reservoir rear cock", "front angle cock of car 1", "front main reservoir cock of car 1"])
        {
            rig.Do(60, cock, "closed");
        }

        rig.Do(70, BrakePipe, "parted");
        Assert.True(rig.At(71, Seen(rig)) > 0);
        rig.Do(72, MainPipe, "parted");
        Assert.True(rig.At(73, Seen(rig)) < 0);
        rig.Do(80, BrakePipe, "coupled");
        rig.Do(80, MainPipe, "coupled");
        rig.Do(90, "rear angle cock", "open");
        rig.Do(90, "front angle cock of car 1", "open");
        Assert.Equal(rig.At(300, "pressure of brake pipe of car 1"), rig.At(300, "pressure of brake pipe"), 1.0 * Psi);
    }

    /// <summary>With one of the two parted, the hoses that it joined are open and the other two are joined to each other still.</summary>
    [Fact]
    public void Crossed_OneOfThemParted_OpensTheTwoItJoined()
    {
        using Rig rig = Charged();
        PutIn(rig, 1);
        rig.Do(10, BrakePipe, "parted");
        Assert.True(rig.At(10.2, "head flow of rear brake pipe hose") > 1e-3);
        Assert.True(rig.At(10.2, "head flow of front main reservoir hose of car 1") > 1e-3);
        Assert.Equal(0, rig.At(10.2, "head flow of rear main reservoir hose"), 1e-9);
        Assert.Equal(0, rig.At(10.2, "head flow of front brake pipe hose of car 1"), 1e-9);
        Assert.True(rig.At(10.5, "pressure of brake pipe of car 1") > 118 * Psi);
    }

    /// <summary>Air is neither made nor lost through all of it: to 1e-12 of what has passed.</summary>
    [Fact]
    public void Crossed_PutInAndTakenOut_MassCloses()
    {
        using Rig rig = Charged();
        (double before, _) = Masses.Of(rig.World, 0);
        PutIn(rig, 1);
        rig.Do(20, "brake handle", "emergency");
        rig.Do(40, BrakePipe, "parted");
        rig.Do(60, MainPipe, "parted");
        rig.Do(80, BrakePipe, "coupled");
        PutIn(rig, 90);
        rig.Do(100, MainPipe, "coupled");
        rig.World.Do(new WorldAction.TakeOut(Pair, "crossed"), SimTime.FromSeconds(120));
        rig.Do(130, "brake handle", "release");
        rig.World.RunTo(SimTime.FromSeconds(200));
        Assert.True(rig.World.Trouble is null, rig.World.Trouble);
        (double after, double passed) = Masses.Of(rig.World, 0);
        Assert.Single(rig.Plan.Networks);
        Assert.True(Math.Abs(after - before) < 1e-12 * passed, $"{after - before} kg of {passed}");
    }

    [Fact]
    public void Restore_WhileCrossed_EndsWithTheSameHash()
    {
        using Rig whole = Charged();
        PutIn(whole, 1);
        whole.Do(40, "brake handle", "full service");
        whole.World.RunTo(SimTime.FromSeconds(20));
        string kept = whole.World.Save().ToJson();
        whole.World.RunTo(SimTime.FromSeconds(100));
        using Rig second = Charged();
        second.World.Restore(WorldSnapshot.FromJson(kept));
        second.World.RunTo(SimTime.FromSeconds(100));
        Assert.Equal(whole.World.Hash, second.World.Hash);
    }

    /// <summary>In the demo the brake test before departure finds it at the first truck of the first car.</summary>
    [Fact]
    public void Demo_BrakeTestBeforeDeparture_StopsAtTheFirstTruck()
    {
        ClassBook book = Books.Curlew.Book.Coupled("local train");
        DiagnosticList found = new();
        Plan? plan = PlanCompiler.Compile(book, found);
        Assert.True(plan is not null, string.Join('\n', found));
        using Rig rig = new(plan, "hoses crossed at the rear");
        rig.World.Begin(Rig.RunOf(plan, "Brake test before departure, brakes set"));
        rig.World.RunTo(SimTime.Never);
        Assert.Equal(Runs.OutcomeKind.Stopped, rig.World.Run!.Ended);
        Assert.Contains("the B truck of car 3 does not set", rig.World.Run.Mechanism, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mistaken: { brake pipe: main reservoir pipes }, ", "did you mean `main reservoir pipe`?")]
    [InlineData("mistaken: { brake pip: main reservoir pipe }, ", "did you mean `brake pipe`?")]
    public void Read_LineThatIsNotJoined_SaysWhichIs(string mistaken, string expected)
    {
        DiagnosticList found = new();
        BookReader.Read([new SourceText("book.yaml", TrainMachine.Text.Replace("joins: {", mistaken + "joins: {", StringComparison.Ordinal))], [], KindLibrary.Catalog, found);
        Assert.Contains(found, d => d.ToString().Contains(expected, StringComparison.Ordinal));
    }

    private static Rig Charged()
    {
        DiagnosticList found = new();
        Plan? plan = PlanCompiler.Compile(s_book.Value.Coupled("six coaches"), found);
        Assert.True(plan is not null, string.Join('\n', found));
        return new(plan, "charged");
    }

    private static void PutIn(Rig rig, double at) => rig.World.Do(new WorldAction.PutIn(Pair, "crossed", ImmutableSortedDictionary<string, double>.Empty), SimTime.FromSeconds(at));

    private static Func<World, double> Seen(Rig rig) => w => w.Value(rig.Plan.Signs[$"{Pair} are seen crossed"]);

    private static ClassBook Read(string mistaken)
    {
        DiagnosticList found = new();
        ClassBook? book = BookReader.Read([new SourceText("book.yaml", TrainMachine.Text.Replace("joins: {", mistaken + "joins: {", StringComparison.Ordinal))], [], KindLibrary.Catalog, found);
        Assert.True(book is not null && !found.HasErrors, string.Join('\n', found));
        return book;
    }
}
