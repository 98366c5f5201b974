using System.Collections.Immutable;
using CsCheck;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World.Snapshots;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>What holds of the fuel system holds of compressed air: looking changes nothing, a snapshot goes on the same, nothing is made from nothing.</summary>
public sealed class AirMachineTests(ITestOutputHelper output)
{
    private const double Psi = 6894.757293;

    private static readonly Plan s_plan = AirMachine.Plan;

    /// <summary>Controls with their positions, and every fault with its usual values.</summary>
    private static readonly (string Item, string Position)[] s_deeds =
        [.. s_plan.Book.Items.Values.Where(i => i.Positions.Length > 1).SelectMany(i => i.Positions.Select(p => (i.Name, p)))];

    private static readonly (string Item, string Fault)[] s_faults =
        [.. s_plan.Items.Values.SelectMany(i => i.Faults.Keys.Select(f => (i.Item.Name, f)))];

    [Fact]
    public void Idle_TenHoursAndAHundred_FewSteps()
    {
        using Rig rig = new(s_plan, "charged");
        rig.World.RunTo(SimTime.FromSeconds(36_000));
        long ten = rig.World.Steps;
        rig.World.RunTo(SimTime.FromSeconds(360_000));
        output.WriteLine($"{ten} steps in 10 h, {rig.World.Steps} in 100 h");
        Assert.True(rig.World.Trouble is null, rig.World.Trouble);
        Assert.True(ten < 300, $"{ten} steps");
        Assert.True(rig.World.Steps < 2 * ten, $"{rig.World.Steps} steps in 100 h, {ten} in 10 h");
    }

    /// <summary>From nothing: the reservoirs fill, the brake pipe follows its handle, the brakes are off (common practice, no source).</summary>
    [Fact]
    public void Empty_TenMinutesOfPumping_Charged()
    {
        using Rig rig = new(s_plan, "empty");
        Assert.InRange(rig.At(900, "pressure of second main reservoir") / Psi, 129, 141);
        Assert.Equal(110, rig.At(900, "pressure of brake pipe") / Psi, 1.0);
        Assert.Equal(110, rig.At(900, "pressure of rear of the brake pipe") / Psi, 1.0);
        Assert.Equal(0, rig.At(900, "pressure of front cylinder") / Psi, 0.5);
        Assert.Equal(0, rig.At(900, "pressure of coach cylinder") / Psi, 0.5);
    }

    [Fact]
    public void Run_LookedAtOftenOrSeldom_SameHash()
    {
        Assert.Equal(Looked(60), Looked(0.7));

        static ulong Looked(double every)
        {
            using Rig rig = new(s_plan, "empty");
            Operate(rig.World);
            for (double at = 0; at < 900; at += every)
            {
                rig.At(at, w =>
                {
                    foreach (Signal signal in w.Plan.Signals)
                    {
                        _ = w.Value(signal);
                    }

                    return 0;
                });
            }

            rig.World.RunTo(SimTime.FromSeconds(900));
            rig.World.CutHere();
            return rig.World.Hash;
        }
    }

    [Fact]
    public void Restore_AtManyMoments_SameHashAsNeverStopped()
    {
        using Rig whole = new(s_plan, "empty");
        Operate(whole.World);
        whole.World.RunTo(SimTime.FromSeconds(900));
        whole.World.CutHere();
        using Rig first = new(s_plan, "empty");
        Operate(first.World);
        using LaneBank bank = new(s_plan);
        World current = first.World;
        Random chance = new(3);
        double at = 0;
        for (int i = 0; i < 20; i++)
        {
            at += chance.NextDouble() * 45;
            current.RunTo(SimTime.FromSeconds(at));
            World next = new(bank, i % 8);
            next.Restore(WorldSnapshot.FromJson(current.Save().ToJson()));
            current = next;
        }

        current.RunTo(SimTime.FromSeconds(900));
        current.CutHere();
        Assert.Equal(whole.World.Hash, current.Hash);
        Assert.Equal(whole.World.Steps, current.Steps);
    }

    /// <summary>Whatever is done and whatever breaks: it finishes, no pressure falls below vacuum, air is neither made nor lost.</summary>
    [Fact]
    public void AnyDeedsAndFaults_HalfAnHour_FinishAboveVacuumWithAllTheirAir()
    {
        Gen<(int, double)[]> deeds = Gen.Select(Gen.Int[0, s_deeds.Length - 1], Gen.Double[0, 1500]).Array[0, 12];
        Gen<(int, double)[]> faults = Gen.Select(Gen.Int[0, s_faults.Length - 1], Gen.Double[0, 1500]).Array[0, 4];
        Gen.Select(Gen.Bool, deeds, faults).Holds((empty, done, broken) =>
        {
            using Rig rig = new(s_plan, empty ? "empty" : "charged");
            foreach ((int deed, double at) in done)
            {
                rig.Do(at, s_deeds[deed].Item, s_deeds[deed].Position);
            }

            foreach ((int fault, double at) in broken)
            {
                ItemPlan item = s_plan.Items[s_faults[fault].Item];
                rig.World.Do(new WorldAction.PutIn(item.Item.Name, s_faults[fault].Fault, item.Faults[s_faults[fault].Fault].ToImmutableSortedDictionary(v => v.Name, v => v.Usual)), SimTime.FromSeconds(at));
            }

            double before = Total(rig);
            rig.World.RunTo(SimTime.FromSeconds(1800));
            Assert.True(rig.World.Trouble is null, rig.World.Trouble);
            rig.World.CutHere();
            Assert.Equal(before, Total(rig), 1e-12 * 160);
            foreach (Item store in s_plan.Book.Items.Values.Where(i => s_plan.FindSignal($"pressure of {i.Name}") is not null))
            {
                Assert.True(rig.World.Value(s_plan.FindSignal($"pressure of {store.Name}")!) > -101_325, store.Name);
            }
        }, iter: 40);
    }

    private static void Operate(World world)
    {
        world.Do(new WorldAction.Operate(-1, "brake handle", "full service"), SimTime.FromSeconds(300.25));
        world.Do(new WorldAction.Operate(-1, "brake handle", "release"), SimTime.FromSeconds(420));
        world.Do(new WorldAction.Operate(-1, "rear angle cock", "open"), SimTime.FromSeconds(600));
        world.Do(new WorldAction.Operate(-1, "front truck cock", "closed"), SimTime.FromSeconds(700));
    }

    private static double Total(Rig rig) => Enumerable.Range(0, rig.Plan.AmountNames[0].Length).Sum(i => rig.World.GetAmount(0, new(i)));
}
