using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Format;
using Sightglass.Cards.Missteps;
using Sightglass.Cards.Names;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Story;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Tests;

/// <summary><c>For each</c>: a list done for one after the other, its noun meaning the one at hand.</summary>
public sealed class RoundTests
{
    private const string Walk = """
        For each car from the first to the last:
           - Go to the A truck, right of the car.
           - Check that the A truck window, right of the car shows set. If not, stop, and tell the mechanical desk: the A truck of {car} is not set.
        """;

    [Fact]
    public void Compile_ForEachCar_DoesTheListForOneAfterTheOther() => Assert.Equal(
        """
        0: [1] go A truck, right of car 1
        1: [1] check A truck window, right of car 1 set (68947.5729..551580.583) else 8
        2: [1] go A truck, right of car 2
        3: [1] check A truck window, right of car 2 set (68947.5729..551580.583) else 10
        4: [1] go A truck, right of car 3
        5: [1] check A truck window, right of car 3 set (68947.5729..551580.583) else 12
        6: [2] wait 1 s
        7: [2] done
        8: [1] tell mechanical desk: the A truck of car 1 is not set.
        9: [1] stop: the A truck of car 1 is not set.
        10: [1] tell mechanical desk: the A truck of car 2 is not set.
        11: [1] stop: the A truck of car 2 is not set.
        12: [1] tell mechanical desk: the A truck of car 3 is not set.
        13: [1] stop: the A truck of car 3 is not set.
        """.Replace("is not set.", "is not set", StringComparison.Ordinal),
        Cards.Ops(Walk, "Wait 1 s."));

    [Theory]
    [InlineData("For each car from the first to the last:", "1 2 3")]
    [InlineData("For each car:", "1 2 3")]
    [InlineData("For each car of the train:", "1 2 3")]
    [InlineData("For each Car from the last to the first:", "3 2 1")]
    [InlineData("For each car from car 2 to the last:", "2 3")]
    [InlineData("For each car from the last to the car 2:", "3 2")]
    [InlineData("For each car from car 2 to car 2:", "2")]
    [InlineData("For each car out of car 3, car 1:", "3 1")]
    public void Compile_Range_GoesThroughItInOrder(string each, string cars) => Assert.Equal(
        cars.Split(' ').Select(c => $"A truck, right of car {c}"),
        Program(each + "\n   - Go to the A truck, right of the car.").Ops.OfType<CardOp.Go>().Select(g => g.Place.Name));

    [Theory]
    [InlineData("Close the supply valve of the compartment.")]
    [InlineData("Close the compartment's supply valve.")]
    [InlineData("Close the compartment supply valve.")]
    public void Compile_ThingsOfTheBook_AreCalledAfterTheNoun(string line) => Assert.Equal(
        ["aft supply valve", "centre supply valve", "forward supply valve"],
        Program("For each compartment:\n   - " + line).Ops.OfType<CardOp.Set>().Select(s => s.Item.ToString()));

    [Fact]
    public void Compile_NounOfALetter_GoesThroughItsWordsInTheirOrder()
    {
        Card card = Cards.Clean(Cards.Head + "Let C be the compartment, one of forward, aft.\n1. For each compartment:\n   - Close the supply valve of the compartment.\n   - Open the return valve of C.\n");
        Assert.Equal(
            ["forward supply valve", "aft return valve", "aft supply valve", "aft return valve"],
            CardCompiler.Compile(card, TestBook.Book, "aft").Ops.OfType<CardOp.Set>().Select(s => s.Item.ToString()));
    }

    [Theory]
    [InlineData("Open the return valve of each other compartment.", "centre return valve, forward return valve, aft return valve, forward return valve, aft return valve, centre return valve")]
    [InlineData("Open the aft return valve.", "aft return valve, aft return valve, aft return valve")]
    public void Compile_OthersAndNames_AreNotTheOneAtHand(string line, string items) => Assert.Equal(
        items, string.Join(", ", Program("For each compartment:\n   - " + line).Ops.OfType<CardOp.Set>().Select(s => s.Item)));

    [Fact]
    public void Compile_NameWithTheNounInIt_StaysThatName() => Assert.Equal(
        ["fuel is seen at the foot of the aft compartment"],
        Program("For each compartment:\n   - Look for fuel at the foot of the aft compartment. If not, stop.").Ops.OfType<CardOp.Look>().Select(l => l.Sign.Name).Distinct());

    [Fact]
    public void Compile_RoundInARound_GoesThroughBoth() => Assert.Equal(
        ["A truck, right of car 2", "B truck, right of car 2", "A truck, right of car 3", "B truck, right of car 3"],
        Program("For each car from car 2 to the last:\n   - For each truck: Go to the truck, right of the car. Wait 1 s.").Ops.OfType<CardOp.Go>().Select(g => g.Place.Name));

    [Fact]
    public void Compile_NamedTruckInARoundOfTrucks_IsThatTruck() => Assert.Equal(
        ["A truck, right of car 3", "A truck, right of car 3"],
        Program("For each car from car 3 to the last:\n   - For each truck: Go to the A truck, right of the car.").Ops.OfType<CardOp.Go>().Select(g => g.Place.Name));

    [Fact]
    public void Compile_NextRound_LeavesTheRestOfTheList() => Assert.Equal(
        """
        0: [1] if A truck window, right of car 2 set (68947.5729..551580.583) else 2
        1: [1] jump 3
        2: [1] wait 1 s
        3: [1] check A truck window, right of car 3 set (68947.5729..551580.583) else 5
        4: [1] wait 2 s
        5: [2] done
        """,
        Cards.Ops(
            "For each car from car 2 to car 2:\n   - If the A truck window, right of the car shows set, go on with the next car.\n   - Wait 1 s.",
            "For each car from car 3 to car 3:\n   - Check that the A truck window, right of the car shows set. If not, go on with the next car.\n   - Wait 2 s.").Replace("[2] check", "[1] check", StringComparison.Ordinal).Replace("[2] wait", "[1] wait", StringComparison.Ordinal));

    [Fact]
    public void Compile_PersonOfALine_DoesItInEachRound() => Assert.Equal(
        ["conductor", "conductor", "conductor"],
        Program("For each car:\n   - Conductor: Go to the A truck, right of the car.").Ops.OfType<CardOp.Go>().Select(g => g.Person!.Name));

    [Fact]
    public void Compile_CallInARound_SetsTheOthersLetter() => Assert.Equal(
        ["aft", "centre", "forward"],
        Program("For each compartment:\n   - Do card \"Close off a compartment\" with C = the compartment.").Ops.OfType<CardOp.Call>().Select(c => c.Binding!.Word));

    [Fact]
    public void Compile_TwoHundredCars_IsWithinBounds()
    {
        Vehicle[] cars = [.. Enumerable.Range(1, 200).Select(n => new Vehicle(n, $"car {n}"))];
        ClassBook book = TestBook.Book with
        {
            Vehicles = [Vehicle.Alone, .. cars],
            Places = cars.Select(c => new Place(c.NameOf("A truck, right"), Span.None, new(25 * c.Index, 2.4, 0), true, "") { Vehicle = c }).ToImmutableSortedDictionary(p => p.Name, p => p, StringComparer.Ordinal),
        };
        DiagnosticList found = [];
        Card? card = CardReader.Read(new SourceText("test.card", Cards.WithHead("For each car:\n   - Go to the A truck, right of the car.\n   - Wait 5 s.")), book, found);
        CardLint.Check(card!, book, found);
        Assert.Empty(found);
        Assert.Equal(401, CardCompiler.Compile(card!, book).Ops.Length);
    }

    [Fact]
    public void Read_TooManyRounds_HasItsCode() =>
        Assert.Contains("C070", Cards.Codes(Cards.WithHead($"For each x out of {string.Join(", ", Enumerable.Range(1, 150))}:\n   - For each y out of {string.Join(", ", Enumerable.Range(1, 150))}: Wait 5 s.")));

    [Fact]
    public void Read_TextThatSpeaksOfTheCar_IsTold()
    {
        Assert.Contains("C046", Cards.Codes(Cards.WithHead("For each car:\n   - Tell the mechanical desk: the car drags.")));
        Assert.DoesNotContain("C046", Cards.Codes(Cards.WithHead("For each car:\n   - Tell the mechanical desk: {car} drags, no other car does.")));
    }

    [Fact]
    public void Lint_ListOutOfReach_IsToldAtItsLine()
    {
        Card card = Cards.Steps("For each car:\n   - Go to the A truck, right of the car.\n   - Check that the B truck window, right of the car shows set. If not, stop.");
        DiagnosticList found = [];
        CardLint.Check(card, TestBook.Book, found);
        Diagnostic told = Assert.Single(found, d => d.Code == "L020");
        Assert.StartsWith("Check that the B truck window", told.Span.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Tell_Round_NamesTheOneAtHand()
    {
        CardStory story = new(Program(Walk), EnglishForms.Language);
        Assert.Equal("You went to the A truck, right of car 2.", story.Tell(2));
        Assert.Equal("You checked, and it was not so: the A truck window, right of car 3 shows set (it showed 5 psi).", story.Tell(5, held: false, shown: "5 psi"));
    }

    [Theory]
    [InlineData("For each  car of the train :\n  * go to the A truck, right of the car", "1. For each car:\n   - Go to the A truck, right of the car.")]
    [InlineData("For each car from the last to the first:\n a. Wait 5s", "1. For each car from the last to the first:\n   - Wait 5 s.")]
    [InlineData("For each x out of aft, centre:\n - Close the x supply valve", "1. For each x out of aft and centre:\n   - Close the x supply valve.")]
    [InlineData("For each car:\n - for each truck: go to the truck, right of the car. Wait 5 s", "1. For each car:\n   - For each truck: Go to the truck, right of the car. Wait 5 s.")]
    [InlineData("For each car:\n - If fuel is smelled, go on with the next car", "1. For each car:\n   - If fuel is smelled, go on with the next car.")]
    public void Format_ForEach_PrintsItOneWay(string step, string printed) =>
        Assert.EndsWith("\n" + printed + "\n", CardFormat.Format(Cards.Steps(step)), StringComparison.Ordinal);

    [Fact]
    public void LeaveOut_RoundThatReads_LeavesANameWithoutANumber()
    {
        Card card = Cards.Steps("For each car:\n   - Read the A truck window, right of the car as P1.", "Check that P1 is at most 5 psi. If not, stop.");
        CardProgram program = CardCompiler.Compile(Misstep.LeaveOut(card, 1), TestBook.Book);
        Assert.Equal("P1", Assert.Single(program.Names).Name);
        Assert.IsType<CardOp.Check>(program.Ops[0]);
    }

    private static CardProgram Program(string step) => CardCompiler.Compile(Cards.Steps(step), TestBook.Book);
}
