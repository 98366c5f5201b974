using Sightglass.Cards.Format;
using Sightglass.Cards.Missteps;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Tests;

public sealed class MisstepTests
{
    [Fact]
    public void LeaveOut_StepInTheMiddle_MovesTheRestAndTheJumps()
    {
        Card left = Misstep.LeaveOut(Cards.Steps("Check that fuel is smelled. If not, go to step 4.", "Wait 2 s.", "Wait 3 s.", "Wait 4 s.", "If fuel is smelled, go to step 2."), 3);
        Assert.Equal(
            ["1. Check that fuel is smelled. If not, go to step 3.", "2. Wait 2 s.", "3. Wait 4 s.", "4. If fuel is smelled, go to step 2."],
            Printed(left));
    }

    [Fact]
    public void LeaveOut_TargetOfAJump_SendsToTheStepInItsPlace() => Assert.Equal(
        ["1. Check that fuel is smelled. If not, go to step 2.", "2. Wait 3 s."],
        Printed(Misstep.LeaveOut(Cards.Steps("Check that fuel is smelled. If not, go to step 2.", "Wait 2 s.", "Wait 3 s."), 2)));

    [Fact]
    public void LeaveOut_LastStepThatIsATarget_SendsToTheEnd() => Assert.Equal(
        ["1. Check that fuel is smelled. If not, go to the end.", "2. Wait 2 s."],
        Printed(Misstep.LeaveOut(Cards.Steps("Check that fuel is smelled. If not, go to step 3.", "Wait 2 s.", "Wait 3 s."), 3)));

    [Fact]
    public void LeaveOut_StepWithNoticeAndList_TakesThemAlong()
    {
        Card card = Cards.Clean(Cards.Head + "1. Wait 1 s.\nCaution: Fuel is slippery. You can fall. Step on ties.\n2. In any order:\n   - Wait 2 s.\n   - Wait 3 s.\n3. Wait 4 s.");
        Assert.Equal(["1. Wait 1 s.", "2. Wait 4 s."], Printed(Misstep.LeaveOut(card, 2)));
        Assert.DoesNotContain("Caution", CardFormat.Format(Misstep.LeaveOut(card, 2)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "3. Repeat steps 1 to 2 until fuel is smelled, at most 3 times.")]
    [InlineData(2, "3. Repeat steps 1 to 2 until fuel is smelled, at most 3 times.")]
    [InlineData(3, "3. Repeat steps 1 to 2 until fuel is smelled, at most 3 times.")]
    public void LeaveOut_StepOfARepeat_ShrinksTheRange(int step, string expected)
    {
        Card card = Cards.Steps("Wait 1 s.", "Wait 2 s.", "Wait 3 s.", "Repeat steps 1 to 3 until fuel is smelled, at most 3 times.");
        Card left = Misstep.LeaveOut(card, step);
        Assert.Equal(expected, Printed(left)[^1]);
        Assert.NotNull(CardCompiler.TryCompile(left, TestBook.Book, null, []));
    }

    [Fact]
    public void LeaveOut_OnlyStepOfARepeat_TakesTheRepeatAlong() => Assert.Equal(
        ["1. Wait 2 s."],
        Printed(Misstep.LeaveOut(Cards.Steps("Wait 1 s.", "Repeat step 1 until fuel is smelled, at most 3 times.", "Wait 2 s."), 1)));

    [Fact]
    public void LeaveOut_Reading_LeavesANameWithoutANumber()
    {
        Card card = Cards.Steps("Read the cab fuel gauge as P1.", "Check that P1 is at most 5 %. If not, stop.");
        CardProgram program = CardCompiler.Compile(Misstep.LeaveOut(card, 1), TestBook.Book);
        Assert.Equal("P1", Assert.Single(program.Names).Name);
        Condition.Compare compare = Assert.IsType<Condition.Compare>(Assert.IsType<CardOp.Check>(program.Ops[0]).Condition);
        Assert.False(compare.Expression.Evaluate([double.NaN]) <= compare.Value);
    }

    [Fact]
    public void LeaveOut_AskingForProtection_StillGivesItBack()
    {
        Card card = Cards.Steps("Ask the engineer for protection. Wait for the answer, at most 1 min. If not, stop.", "Give back protection.");
        Assert.IsType<CardOp.GiveBack>(CardCompiler.Compile(Misstep.LeaveOut(card, 1), TestBook.Book).Ops[0]);
    }

    [Fact]
    public void LeaveOut_AtTheSameTime_TakesItsListAlong()
    {
        Card card = Cards.Clean(Cards.WithHead("Wait 1 s.", "At the same time:\n   - Engineer: Wait 2 s.\n   - Conductor: Wait 3 s.", "Set the blue signals at the cab."));
        Assert.Equal(["1. Wait 1 s.", "2. Set the blue signals at the cab."], Printed(Misstep.LeaveOut(card, 2)));
        Assert.Equal(2, CardCompiler.Compile(Misstep.LeaveOut(card, 1), TestBook.Book).MostAtOnce);
    }

    [Fact]
    public void LeaveOut_LineOfAList_KeepsTheOthersAndItsNames()
    {
        Card card = Cards.Clean(Cards.WithHead("For each car:\n   - Go to the A truck, right of the car.\n   - Read the A truck window, right of the car as P1.", "Check that P1 is at most 5 psi. If not, stop."));
        Card left = Misstep.LeaveOut(card, 1, 2);
        Assert.Equal(["1. For each car:", "2. Check that P1 is at most 5 psi. If not, stop."], Printed(left));
        CardProgram program = CardCompiler.Compile(left, TestBook.Book);
        Assert.Equal(3, program.Ops.Count(o => o is CardOp.Go));
        Assert.Equal("P1", Assert.Single(program.Names).Name);
    }

    [Fact]
    public void LeaveOut_OnlyLineOfAList_LeavesTheStepOut() => Assert.Equal(
        ["1. Wait 1 s."], Printed(Misstep.LeaveOut(Cards.Steps("For each car:\n   - Wait 5 s.", "Wait 1 s."), 1, 1)));

    [Theory]
    [InlineData(1, 0)]
    [InlineData(1, 3)]
    [InlineData(2, 1)]
    public void LeaveOut_NoSuchLine_Throws(int step, int line) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Misstep.LeaveOut(Cards.Steps("In any order:\n   - Wait 5 s.\n   - Wait 6 s.", "Wait 1 s."), step, line));

    [Fact]
    public void LeaveOut_GoingThere_LeavesTheChoiceToThePlace()
    {
        Card card = Cards.Steps("Go to the fuel panel on the left side.", "Read the aft sight glass as P1.");
        Assert.True(Assert.IsType<CardOp.Read>(CardCompiler.Compile(card, TestBook.Book).Ops[1]).Item.IsSettled);
        ItemChoice open = Assert.IsType<CardOp.Read>(CardCompiler.Compile(Misstep.LeaveOut(card, 1), TestBook.Book).Ops[0]).Item;
        Assert.Equal("aft sight glass, right", open.At(TestBook.PanelRight).Name);
        Assert.Equal("aft sight glass, left", open.At(TestBook.PanelLeft).Name);
        Assert.Equal("aft sight glass, left", open.At(TestBook.Cab).Name);
    }

    [Fact]
    public void LeaveOut_EachStepOfTheLeakCard_CompilesAndIsOneShorter()
    {
        Card card = Cards.Clean(Cards.Leak);
        for (int step = 1; step <= card.Steps.Count(); step++)
        {
            Card left = Misstep.LeaveOut(card, step);
            Assert.Equal(card.Steps.Count() - 1, left.Steps.Count());
            Assert.NotNull(CardCompiler.TryCompile(left, TestBook.Book, "aft", []));
            Assert.Empty(Cards.Read(CardFormat.Format(left)).Found);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(9)]
    public void LeaveOut_NoSuchStep_Throws(int step) => Assert.Throws<ArgumentOutOfRangeException>(() => Misstep.LeaveOut(Cards.Clean(Cards.Leak), step));

    private static string[] Printed(Card card) => [.. CardFormat.Format(card).Split('\n').Where(l => l.Length > 0 && char.IsAsciiDigit(l[0]))];
}
