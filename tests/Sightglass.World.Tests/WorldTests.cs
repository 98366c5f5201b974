using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Situations;
using Xunit;

namespace Sightglass.World.Tests;

public sealed class WorldTests
{
    private static World Start(LaneBank bank, Plan plan, string situation, ulong number = 0, int lane = 0)
    {
        DiagnosticList found = new();
        SituationStart? start = SituationStart.Bind(plan, plan.Book.Situations[situation], found);
        Assert.True(start is not null, string.Join('\n', found));
        World world = new(bank, lane) { Journal = [] };
        start.Apply(world, 1, number);
        return world;
    }

    /// <summary>Torricelli: 1.2 m falls to 0.3 m in 1219.1158 s (White, Fluid Mechanics, from memory).</summary>
    [Fact]
    public void A1_01_SmallestBook_Drains_LevelAfterKnownTime()
    {
        Plan plan = Books.Smallest;
        using LaneBank bank = new(plan, 1e-7);
        World world = Start(bank, plan, "draining");
        double level = double.NaN;
        world.OnSample = w => level = w.Value(plan.FindSignal("level of tank")!);
        world.SampleAt(SimTime.FromSeconds(1219.1158));
        world.RunTo(SimTime.FromSeconds(1300));
        Assert.InRange(level, 0.3 * 0.9999, 0.3 * 1.0001);
    }

    [Fact]
    public void Curlew_IdleTenHours_FewSteps()
    {
        Plan plan = Books.Curlew;
        using LaneBank bank = new(plan);
        World world = Start(bank, plan, "idle, nothing wrong");
        world.RunTo(SimTime.FromSeconds(36000));
        Assert.True(world.Trouble is null, world.Trouble);
        long ten = world.Steps;
        Assert.True(ten < 300, $"{ten} steps");
        world.RunTo(SimTime.FromSeconds(360000));
        Assert.True(world.Steps < 2 * ten, $"{world.Steps} steps in 100 h, {ten} in 10 h");
    }
}
