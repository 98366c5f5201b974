using Sightglass.Plant.Plans;
using Sightglass.World.Journal;
using Sightglass.World.Runs;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.People;

/// <summary>People who work at the same time are joined when all are done.</summary>
public sealed class TogetherTests
{
    [Theory]
    [InlineData("Wait 60 s.", "Wait 100 s.", 101)]
    [InlineData("Wait 100 s.", "Wait 60 s.", 101)]
    [InlineData("Wait 60 s.", "Wait 60 s.", 61)]
    public void Run_AtTheSameTime_LastsAsLongAsTheLongest(string hand, string mate, double seconds)
    {
        using Rig rig = new(Card.Plan("", $"At the same time:\n   - Hand: {hand}\n   - Mate: {mate}", "Wait 1 s."), "standing");
        World world = Card.Run(rig);
        Assert.Equal((OutcomeKind.Done, seconds), (world.Run!.Ended, Math.Round(world.Run.EndedAt.Seconds, 3)));
    }

    [Fact]
    public void Run_BothWalkAndWork_EachWithHandsOfHisOwn()
    {
        Plan plan = Card.Plan(
            "",
            "At the same time:\n   - Hand: Go to the panel.\n   - Mate: Turn the throttle to full.",
            "At the same time:\n   - Hand: Open supply valve A.\n   - Mate: Wait until the fuel gauge shows at most 49 %, at most 5 h. If not, stop.",
            "Check that supply valve A is open. If not, stop: shut.");
        using Rig rig = new(plan, "standing");
        World world = Card.Run(rig);
        Assert.Equal(OutcomeKind.Done, world.Run!.Ended);
        Assert.Equal(1, world.GetSlot(plan.Items["supply valve A"].Position!.Value));
        Assert.Contains(world.Journal!, j => j.Kind == JournalKind.Finding && j.Text.StartsWith("The mate waited until", StringComparison.Ordinal));
    }

    [Fact]
    public void Run_OneStops_AllStop()
    {
        using Rig rig = new(Card.Plan("", "At the same time:\n   - Hand: Wait 5 h.\n   - Mate: Check that the fuel gauge shows low. If not, stop: not low."), "standing");
        World world = Card.Run(rig);
        Assert.Equal((OutcomeKind.Stopped, "not low"), (world.Run!.Ended, world.Run.Mechanism));
        Assert.True(world.Run.EndedAt.Seconds < 60);
    }
}
