using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Format;
using Sightglass.Cards.Missteps;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Story;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Tests;

/// <summary>A card that calls another does its steps in place.</summary>
public sealed class CalledCardTests
{
    private const string Head = "Card: Caller\nFor: mechanical; told: mechanical desk\nNeeds: lamp\nDone when: the engine runs.\n\n";
    private const string Calls = Head + """
        1. Go to the fuel panel on the right side.
        2. Read the aft sight glass as P1.
        3. Do card "Close off a compartment" with C = centre.
        4. Tell the mechanical desk: {P1}.
        """;

    [Fact]
    public void Compile_Call_PutsTheOthersStepsInPlaceWithNamesOfTheirOwn() => Assert.Equal(
        """
        0: [1] go fuel panel, right
        1: [2] read aft sight glass, right -> P1
        2: [3] do card Close off a compartment (C = centre)
        3: [3>1] mechanical: read centre sight glass, right -> P1
        """.Replace("mechanical: ", "", StringComparison.Ordinal),
        string.Join("\n", Cards.OpsOf(Calls).Split('\n').Take(4)));

    [Fact]
    public void Compile_EndOfTheCalledCard_GoesOnBehindTheCall() => Assert.Equal(
        """
        4: [3>2] set centre supply valve = closed
        5: [3>3] check centre supply valve = closed else 7
        6: [3>4] jump 9
        7: [3>5] tell mechanical desk: the centre supply valve stays open, its glass shows {P1 in cm}
        8: [3>5] stop: the centre supply valve stays open, its glass shows {P1 in cm}
        9: [4] tell mechanical desk: {P1 in cm}
        10: [4] done
        """,
        string.Join("\n", Cards.OpsOf(Calls).Split('\n').Skip(4)));

    [Fact]
    public void Compile_NamesOfBothCards_AreTwoNumbers()
    {
        CardProgram program = CardCompiler.Compile(Cards.Clean(Calls), TestBook.Book);
        Assert.Equal(["P1", "P1"], program.Names.Select(n => n.Name));
        CardOp.Tell own = Assert.IsType<CardOp.Tell>(program.Ops[9]);
        CardOp.Tell called = Assert.IsType<CardOp.Tell>(program.Ops[7]);
        Assert.Equal("10\u202Fcm", own.Text.Say([0.10, 0.20]));
        Assert.EndsWith("20\u202Fcm", called.Text.Say([0.10, 0.20]), StringComparison.Ordinal);
    }

    [Fact]
    public void Compile_Call_InheritsTheMustNevers() => Assert.Equal(
        ["centre compartment overflows"], CardCompiler.Compile(Cards.Clean(Calls), TestBook.Book).MustNever.Select(f => f.Name));

    [Fact]
    public void Compile_CallOfACallingCard_InheritsBothAndTellsItFurtherIn()
    {
        CardProgram program = CardCompiler.Compile(Cards.Clean(Head + "1. Go to the fuel panel on the right side.\n2. Do card \"Look round\"."), TestBook.Book);
        Assert.Equal(["much fuel is on the ground", "aft compartment overflows"], program.MustNever.Select(f => f.Name));
        Assert.Equal([0, 0, 1, 2, 2], program.Ops.Take(5).Select(o => o.Called?.Depth ?? 0));
        Assert.All(program.Ops.Skip(2).SkipLast(1), o => Assert.Equal(2, o.Step));
    }

    [Fact]
    public void LeaveOut_Call_StaysForbiddenWhatItForbade() => Assert.Equal(
        ["centre compartment overflows"], CardCompiler.Compile(Misstep.LeaveOut(Cards.Clean(Calls), 3), TestBook.Book).MustNever.Select(f => f.Name));

    [Theory]
    [InlineData("Do card \"Close of a compartment\" with C = aft.", "C051", "did you mean `Close off a compartment`?")]
    [InlineData("Do card \"Close off a compartment\".", "C054", "one of forward, centre, aft")]
    [InlineData("Do card \"Close off a compartment\" with T = aft.", "C054", "it has C")]
    [InlineData("Do card \"Close off a compartment\" with C = rear.", "C054", "it stands for one of forward, centre, aft")]
    [InlineData("Do card \"Look round\" with C = aft.", "C054", "leave `with …` away")]
    [InlineData("Do card \"Caller\".", "C052", "Repeat")]
    [InlineData("Do card \"There\".", "C052", "Repeat")]
    [InlineData("Do card \"Broken\".", "C053", "mend that card first")]
    public void Read_CallThatCannotBe_IsAnErrorAtTheCall(string step, string code, string fix)
    {
        DiagnosticList found = Cards.Read(Head + "1. Go to the fuel panel on the right side.\n2. " + step).Found;
        Diagnostic error = Assert.Single(found, d => d.Severity == Severity.Error);
        Assert.Equal((code, 7), (error.Code, error.Span.Line));
        Assert.Contains(fix, error.Fix, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_CallByOthersWithLess_IsWarned()
    {
        string text = "Card: Caller\nFor: conductor\nDone when: the engine runs.\n\n1. Do card \"Close off a compartment\" with C = aft.";
        Assert.Equal(["C055", "C056"], Cards.Codes(text).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Check_CallFromWhereTheCalledCardReachesNothing_IsToldAtTheCall()
    {
        (Card? card, DiagnosticList found) = Cards.Read(Head + "1. Go to the cab.\n2. Do card \"Close off a compartment\" with C = aft.");
        CardLint.Check(card!, TestBook.Book, found);
        Assert.Equal([7], found.Where(d => d.Code == "L020").Select(d => d.Span.Line).Distinct());
    }

    [Fact]
    public void Compile_LetterOfTheCaller_IsPassedOn()
    {
        string text = Head.Replace("Done", "Let T be the compartment, one of centre, aft.\nDone", StringComparison.Ordinal)
            + "1. Go to the fuel panel on the right side.\n2. Do card \"Close off a compartment\" with C = T.";
        Assert.Contains("set aft supply valve = closed", Cards.OpsOf(text, "aft"), StringComparison.Ordinal);
    }

    [Fact]
    public void Tell_Call_SaysTheTitleAndTheLetter()
    {
        CardStory story = new(CardCompiler.Compile(Cards.Clean(Calls), TestBook.Book), EnglishForms.Language);
        Assert.Equal("You took the card \"Close off a compartment\" with C = centre.", story.Tell(2));
        Assert.Contains("and went on to step 5", story.Tell(5, held: false), StringComparison.Ordinal);
    }

    [Fact]
    public void Format_Call_StaysAsItIs() => Assert.Equal(Calls.ReplaceLineEndings("\n") + "\n", CardFormat.Format(Cards.Clean(Calls)));
}
