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

    [Theory]
    [InlineData("idle, nothing wrong", 3600)]
    [InlineData("leaking compartment", 3600)]
    public void Run_LookedAtOftenOrSeldom_SameHash(string situation, double seconds)
    {
        ulong Looked(double every)
        {
            Plan plan = Books.Curlew;
            using LaneBank bank = new(plan);
            World world = Start(bank, plan, situation, 5);
            double next = 0;
            world.OnSample = w =>
            {
                foreach (Plant.Signals.Signal signal in plan.Signals)
                {
                    _ = w.Value(signal);
                }

                next += every;
                if (next < seconds)
                {
                    w.SampleAt(SimTime.FromSeconds(next));
                }
            };
            world.SampleAt(SimTime.Zero);
            world.RunTo(SimTime.FromSeconds(seconds));
            world.CutHere();
            return world.Hash;
        }

        Assert.Equal(Looked(60), Looked(1.3));
    }

    [Fact]
    public void Restore_AtManyMoments_SameHashAsNeverStopped()
    {
        Plan plan = Books.Curlew;
        using LaneBank bank = new(plan);
        World whole = Start(bank, plan, "leaking compartment", 5);
        Operate(whole);
        whole.RunTo(SimTime.FromSeconds(3000));
        whole.CutHere();
        Random chance = new(7);
        World first = Start(bank, plan, "leaking compartment", 5, lane: 1);
        Operate(first);
        double at = 0;
        using LaneBank other = new(plan);
        World current = first;
        for (int i = 0; i < 20; i++)
        {
            at += chance.NextDouble() * 150;
            current.RunTo(SimTime.FromSeconds(at));
            World next = new(i % 2 == 0 ? other : bank, 3 + (i % 2));
            next.Restore(Snapshots.WorldSnapshot.FromJson(current.Save().ToJson()));
            current = next;
        }

        current.RunTo(SimTime.FromSeconds(3000));
        current.CutHere();
        Assert.Equal(whole.Hash, current.Hash);
        Assert.Equal(whole.Steps, current.Steps);

        static void Operate(World world)
        {
            world.Do(new WorldAction.Operate(-1, "aft supply valve", "closed"), SimTime.FromSeconds(300.25));
            world.Do(new WorldAction.Operate(-1, "throttle", "notch 8"), SimTime.FromSeconds(700));
            world.Do(new WorldAction.Operate(-1, "emergency fuel cut-off, cab", "pushed"), SimTime.FromSeconds(1500));
        }
    }
}
