using Sightglass.Cards.Programs;

namespace Sightglass.Cards.Tests;

public sealed class PlaceFlowTests
{
    [Fact]
    public void PlacesAt_StraightOn_IsTheLastPlaceGoneTo() => Assert.Equal(
        ["", "cab", "cab", "fuel panel, right"],
        Places("Go to the cab.", "Wait 1 s.", "Go to the fuel panel on the right side."));

    [Fact]
    public void PlacesAt_Join_IsEveryPlaceThatLeadsThere() => Assert.Equal(
        ["", "", "|cab", "|cab"],
        Places("Check that fuel is smelled. If not, go to step 3.", "Go to the cab.", "Wait 1 s."));

    [Fact]
    public void PlacesAt_TwoPeople_EachHasAPlace() => Assert.Equal(
        ["", "", "cab", "fuel panel, left"],
        Places("Engineer: Go to the cab.", "Conductor: Go to the fuel panel on the left side.", "Engineer: Wait 1 s.", "Conductor: Wait 1 s.")[..4]);

    [Fact]
    public void IsReached_BehindAJump_IsNot()
    {
        CardProgram program = CardCompiler.Compile(Cards.Steps("Go to step 3.", "Wait 1 s.", "Wait 2 s."), TestBook.Book);
        PlaceFlow flow = PlaceFlow.Of(program.Ops);
        Assert.Equal([true, false, true, true], program.Ops.Select((_, i) => flow.IsReached(i)));
    }

    [Fact]
    public void Settle_OneSideWithinReach_LeavesNoChoice() => Assert.Contains("read aft sight glass, left -> P1", Cards.Ops("Go to the fuel panel on the left side.", "Read the aft sight glass as P1."), StringComparison.Ordinal);

    [Fact]
    public void Settle_TwoWaysToOneStep_LeavesTheChoiceToTheRun() => Assert.Contains(
        "read aft sight glass, left | aft sight glass, right -> P1",
        Cards.Ops("Go to the fuel panel on the left side.", "If fuel is smelled, go to step 4.", "Go to the fuel panel on the right side.", "Read the aft sight glass as P1."),
        StringComparison.Ordinal);

    private static string[] Places(params string[] steps)
    {
        CardProgram program = CardCompiler.Compile(Cards.Steps(steps), TestBook.Book);
        PlaceFlow flow = PlaceFlow.Of(program.Ops);
        return [.. program.Ops.Select((_, i) => string.Join('|', flow.PlacesAt(i)))];
    }
}
