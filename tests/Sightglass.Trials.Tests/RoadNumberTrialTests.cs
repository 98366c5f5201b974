using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Tests;

/// <summary>A case draws its machine like everything else: by (seed, case), whatever is run beside it.</summary>
public sealed class RoadNumberTrialTests
{
    private const string Draft = "empty-a-leaking-compartment-draft";

    /// <summary>One machine in four, 4096 times: 1024 with a deviation of 28 (binomial); five of these.</summary>
    [Fact]
    public void NumberOf_ManyCases_EachNumberAsOften()
    {
        TrialSetup setup = SweepTests.Setup(Draft, "leaking compartment");
        ILookup<string?, int> cases = Enumerable.Range(0, 4096).ToLookup(k => setup.NumberOf(new(1, (ulong)k)));
        Assert.Equal(["4101", "4104", "4107", "4112"], cases.Select(g => g.Key).Order(StringComparer.Ordinal));
        Assert.All(cases, g => Assert.InRange(g.Count(), 1024 - 140, 1024 + 140));
        Assert.NotEqual(Enumerable.Range(0, 64).Select(k => setup.NumberOf(new(1, (ulong)k))), Enumerable.Range(0, 64).Select(k => setup.NumberOf(new(2, (ulong)k))));
    }

    /// <summary>Of the same case on the machine it drew alone, and of the draws of the situation, which the road number leaves as they were. Of 32 cases each of the four numbers draws about eight.</summary>
    [Theory]
    [InlineData(Draft, "leaking compartment")]
    [InlineData("true-quantity", "gauges disagree")]
    public void Run_DrawnMachines_EachCaseAsOnItsMachineAlone(string card, string situation)
    {
        TrialSetup setup = SweepTests.Setup(card, situation);
        SweepOptions options = new() { Cases = 32, Threads = 1 };
        Outcome[] drawn = CaseSweep.Run(setup, options);
        foreach (string number in setup.Number.Words)
        {
            TrialSetup alone = Alone(card, situation, number);
            Outcome[] on = CaseSweep.Run(alone, options);
            int[] own = [.. Enumerable.Range(0, 32).Where(k => setup.NumberOf(new(1, (ulong)k)) == number)];
            Assert.NotEmpty(own);
            Assert.All(own, k => Assert.Equal(on[k], drawn[k]));
        }
    }

    [Fact]
    public void Shrink_FailureOfOneMachine_DepartsByItsRoadNumberAlone()
    {
        TrialSetup setup = SweepTests.Setup(Draft, "leaking compartment");
        TrialResult result = Result(setup, 64);
        Counterexample least = Shrinker.Shrink(setup, result.DrawsOf(result.Groups[0].Cases[0]), result.Groups[0].Mechanism);
        Assert.Contains(("road number", "4112"), least.Departs);
        Assert.Equal("4112", CaseStory.Tell(setup, least.Draws).Number);
        Assert.Equal(OutcomeKind.Failed, least.Outcome.Kind);
    }

    /// <summary>What fails on every machine is laid out on the one without modifications.</summary>
    [Fact]
    public void Shrink_FailureOfAllMachines_GoesToThePlainOne()
    {
        Card card = Reader("Card: Close everything\nFor: mechanical\nMust never: the engine starves.\nDone when: the engine runs. Stays so for 10 min.\n1. Go to the fuel panel on the right side.\n"
            + "2. Close the forward supply valve.\n3. Close the centre supply valve.\n4. Close the aft supply valve.\n");
        TrialSetup setup = TrialPreparation.Prepare(Books.CurlewFleet, card, Books.Curlew.Book.Situations["leaking compartment"], [])!;
        TrialResult result = Result(setup, 16);
        FailureGroup group = Assert.Single(result.Groups);
        Assert.Equal(["4101", "4104", "4107", "4112"], group.Numbers);
        int modified = group.Cases.First(k => result.NumberOf(k) != "4101");
        Counterexample least = Shrinker.Shrink(setup, result.DrawsOf(modified), group.Mechanism);
        Assert.Empty(least.Departs);
        Assert.Equal("4101", CaseStory.Tell(setup, least.Draws).Number);
    }

    [Fact]
    public void ByNumber_OfATrial_AddsUpToTheWhole()
    {
        TrialResult result = Result(SweepTests.Setup(Draft, "leaking compartment"), 96);
        Assert.Equal((result.Done, result.Stopped, result.Failed, result.Undecided), (Sum(n => n.Done), Sum(n => n.Stopped), Sum(n => n.Failed), Sum(n => n.Undecided)));
        Assert.Equal(result.Applicable, Sum(n => n.Applicable));

        int Sum(Func<NumberResult, int> of) => result.ByNumber.Sum(of);
    }

    private const string Vessel = """
        book: Vessel
        places: { yard: { x: 1 m, y: 2 m, z: 0 m } }
        roles: { mechanical: { walks: 1 m/s } }
        systems: { fuel: { medium: fuel, alive: yes } }
        items:
          tank: { kind: tank, system: fuel, floor area: 1 m^2, depth: 1 m, ports: { foot: { height: 0 mm } } }
          spare: { kind: tank, system: fuel, floor area: 1 m^2, depth: 1 m }
          hole: { kind: orifice, system: fuel, from: "tank, foot", to: outside, diameter: 4 mm }
        facts: { tank is empty: { is: level of tank < 1 mm } }
        road numbers:
          "12": {}
          "7": { modifications: [ { name: M, changes: { hole: { diameter: 8 mm } } } ] }
          "9": {}
          "3": {}
        situations:
          any: { people: [ { role: mechanical, at: yard } ], start: { fill of tank: 50 % } }
          some: { road number: ["9", "7"], people: [ { role: mechanical, at: yard } ], start: { fill of tank: 50 % } }
          one: { road number: "7", people: [ { role: mechanical, at: yard } ], start: { fill of tank: 50 % } }
        """;

    /// <summary>In the order of the author's file, and one machine for all numbers on which nothing differs.</summary>
    [Theory]
    [InlineData("any", "12 7 9 3", 2)]
    [InlineData("some", "9 7", 2)]
    [InlineData("one", "7", 1)]
    public void Prepare_SituationWithNumbers_DrawsTheseOnly(string situation, string numbers, int machines)
    {
        (Fleet fleet, Card card) = ReadVessel(Vessel);
        TrialSetup setup = TrialPreparation.Prepare(fleet, card, fleet.Class!.Book.Situations[situation], [])!;
        Assert.Equal(numbers.Split(' '), setup.Number.Words);
        Assert.Equal(machines, setup.Machines.Length);
        Assert.Equal(numbers.Split(' ').Order(StringComparer.Ordinal), Enumerable.Range(0, 64).Select(k => setup.NumberOf(new(1, (ulong)k))!).Distinct().Order(StringComparer.Ordinal));
        Outcome[] ends = CaseSweep.Run(setup, new() { Cases = 24, Threads = 1 });
        Assert.Equal(machines, ends.Select(o => o.Hash).Distinct().Count());
    }

    [Fact]
    public void Prepare_BookWithoutNumbers_TriesTheClass()
    {
        (Fleet fleet, Card card) = ReadVessel(Vessel[..Vessel.IndexOf("road numbers", StringComparison.Ordinal)]
            + "situations: { any: { people: [ { role: mechanical, at: yard } ], start: { fill of tank: 50 % } } }\n");
        TrialSetup setup = TrialPreparation.Prepare(fleet, card, fleet.Class!.Book.Situations["any"], [])!;
        Assert.Null(setup.NumberOf(new(1, 5)));
        TrialResult result = Result(setup, 8);
        Assert.Empty(result.ByNumber);
        Assert.Equal(8, result.Applicable);
    }

    /// <summary>What some machines lack is said with their numbers, once.</summary>
    [Fact]
    public void Check_SituationWithAnItemThatOneNumberLacks_SaysOnWhich()
    {
        (Fleet fleet, _) = ReadVessel(Vessel.Replace("hole: { diameter: 8 mm }", "spare: removed", StringComparison.Ordinal));
        DiagnosticList found = [];
        Situation any = fleet.Class!.Book.Situations["any"];
        TrialPreparation.Check(fleet, any with { Faults = [new FaultStart("leak", ["spare"], any.Span)] }, found);
        Assert.Equal("no item `spare` can have a fault (road number 7)", Assert.Single(found).Message);
    }

    private static (Fleet, Card) ReadVessel(string yaml)
    {
        DiagnosticList found = [];
        ClassBook? book = BookReader.Read([new SourceText("book.yaml", yaml)], [], KindLibrary.Catalog, found);
        Fleet? fleet = book is null ? null : Fleet.Compile(book, found);
        Assert.True(fleet is not null, string.Join('\n', found));
        Card? card = CardReader.Read(new SourceText("look.card", "Card: Wait\nFor: mechanical\nMust never: the tank is empty.\nDone when: not the tank is empty.\n1. Wait 60 s.\n"), fleet.Class!.Book, found);
        Assert.True(card is { HasErrors: false }, string.Join('\n', found));
        return (fleet, card);
    }

    private static TrialSetup Alone(string cardFile, string situation, string number)
    {
        Plan plan = Books.CurlewFleet.For(number, null)!;
        Card card = CardReader.Read(plan.Book.CardTexts.Single(t => Path.GetFileNameWithoutExtension(t.Path) == cardFile), plan.Book, [])!;
        return TrialPreparation.Prepare(plan, card, plan.Book.Situations[situation], [])!;
    }

    private static TrialResult Result(TrialSetup setup, int cases)
    {
        SweepOptions options = new() { Cases = cases, Threads = 1 };
        return new(setup, options, [.. CaseSweep.Run(setup, options)]);
    }

    private static Card Reader(string text) => CardReader.Read(new SourceText("card.card", text), Books.Curlew.Book, [])!;
}
