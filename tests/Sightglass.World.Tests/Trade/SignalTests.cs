using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Snapshots;

namespace Sightglass.World.Tests.Trade;

/// <summary>Numbers told from one network to another: a float in a drum opens a valve of another system.</summary>
public sealed class SignalTests
{
    private const double FlowArea = 0.62 * 1e-4; // Cd·A of the steered valve, m²
    private const double SupplyFloor = 50; // m²
    private const double Seconds = 1000;

    /// <summary>The drum runs out through a hole; its float steers a valve under a wide supply. With a way back: the supply's level drives a pump into the drum.</summary>
    private static string Book(string band, string second = "far", string back = "") => $$"""
        book: Floats
        length: 20 m
        places: { panel: { x: 5 m, y: 2.4 m } }
        roles: { hand: { walks: 1.3 m/s } }
        systems: { near: { medium: fuel, alive: yes }, far: { medium: fuel, alive: yes } }
        items:
          drum: { kind: tank, system: near, floor area: 0.5 m^2, depth: 1.5 m, ports: { low: { height: 0 mm } } }
          hole: { kind: orifice, system: near, from: "drum, low", to: outside, diameter: 15 mm }
          float: { kind: transmitter, system: near, sends: level of drum / 1 m, band: {{band}} }
          supply: { kind: tank, system: {{second}}, floor area: 50 m^2, depth: 1.5 m, ports: { low: { height: 0 mm } } }
          steered valve: { kind: actuated valve, system: {{second}}, from: "supply, low", to: outside, opened by: float, area: 1 cm^2 }
          stop: { kind: hand valve, system: near, from: "drum, low", to: outside, area: 1 cm^2, usual: closed, who: [hand], places: [panel] }
        {{back}}
        situations:
          draining:
            people: [ { role: hand, at: panel } ]
            start: { volume of drum: 500 L, volume of supply: 50 m^3 }
            faults: [ { fault: stuck, on: float, after: 3 h } ]
        """;

    private const string WayBack = """
          second float: { kind: transmitter, system: far, sends: 2 - 1 * level of supply / 1 m, band: 0.1 % }
          well: { kind: tank, system: near, floor area: 10 m^2, depth: 1 m, ports: { low: { height: 0 mm } } }
          lift: { kind: displacement pump, system: near, from: "well, low", to: "drum, low", flow: 10 L/min, driven by: second float }
        """;

    /// <summary>
    /// h falls as (√h₀ − kt)², the valve's share with it; the volume drawn from the supply follows from ∫h dt. A share that is told when it has moved by the
    /// band stands above a falling one, by no more than the band. Derived by hand from Torricelli's law.
    /// </summary>
    [Theory]
    [InlineData("8 %", 0.08)]
    [InlineData("2 %", 0.02)]
    [InlineData("0.5 %", 0.005)]
    public void Run_FloatSteersValveOfAnotherSystem_AsByHandWithinTheBand(string band, double share)
    {
        double excess = Excess(band);
        double widest = share * FlowArea * Math.Sqrt(2 * 9.80665) * Seconds;
        Assert.InRange(excess, 0, widest);
        Assert.InRange(excess, 0.35 * widest, 0.65 * widest); // a staircase stands half a step above, on average
    }

    /// <summary>The same parts as one network: the same moments of telling, other steps.</summary>
    [Fact]
    public void Run_AllInOneSystem_TheSameWithinAHundredthOfTheBand()
    {
        double two = Drawn(Book("2 %")), one = Drawn(Book("2 %", second: "near"));
        Assert.Equal(one, two, 0.01 * 0.02 * FlowArea * Math.Sqrt(2 * 9.80665) * Seconds);
    }

    [Fact]
    public void Compile_TwoSystems_AreTwoNetworks()
    {
        Assert.Equal(2, Rig.Compile(Book("2 %")).Networks.Length);
        Assert.Single(Rig.Compile(Book("2 %", second: "near")).Networks);
    }

    [Theory]
    [InlineData("")]
    [InlineData(WayBack)]
    public void Run_LookedAtOftenOrSeldom_SameHash(string back)
    {
        Plan plan = Rig.Compile(Book("2 %", back: back));
        ulong seldom = Hash(plan, 500);
        Assert.Equal(seldom, Hash(plan, 7.3));
        Assert.Equal(seldom, Hash(plan, 0.1));
    }

    /// <summary>At any moment, in the middle of steps of both networks; into a fresh world.</summary>
    [Theory]
    [InlineData("")]
    [InlineData(WayBack)]
    public void Restore_AtAnyMoment_SameHash(string back)
    {
        Plan plan = Rig.Compile(Book("2 %", back: back));
        ulong whole = Hash(plan, 500);
        foreach (double moment in new[] { 0.001, 1, 33.3, 207.25, 400.0001, 612.5, 999.9 })
        {
            using Rig first = Started(plan);
            first.World.RunTo(SimTime.FromSeconds(moment));
            WorldSnapshot kept = WorldSnapshot.FromJson(first.World.Save().ToJson());
            using LaneBank bank = new(plan);
            World second = new(bank, 3);
            second.Restore(kept);
            second.RunTo(SimTime.FromSeconds(Seconds));
            second.CutHere();
            Assert.Equal(whole, second.Hash);
        }
    }

    /// <summary>Half way through, somebody opens a drain: the level, and with it the valve, goes on from where it is told then.</summary>
    [Fact]
    public void Run_ToldShare_IsNeverFurtherFromTheTruthThanTheBand()
    {
        using Rig rig = Started(Rig.Compile(Book("2 %")));
        rig.Do(400, "stop", "open");
        Assert.Equal(1.0, rig.At(0, "told of float"), 1e-12);
        for (int s = 1; s < 1000; s += 3)
        {
            double told = rig.At(s, "told of float"), level = 0;
            level = rig.At(s + 1, "level of drum");
            Assert.InRange(told - level, -1e-9, 0.02 + 0.003); // within 1 s the level falls by 3 mm at most
        }
    }

    [Fact]
    public void Run_StuckTransmitter_TellsOnWhatItTold()
    {
        using Rig rig = Started(Rig.Compile(Book("2 %").Replace("after: 3 h", "after: 100 s", StringComparison.Ordinal)));
        double told = rig.At(101, "told of float");
        Assert.Equal(told, rig.At(900, "told of float"));
        Assert.True(rig.At(901, "level of drum") < told - 0.3);
    }

    [Fact]
    public void Compile_TransmitterOfTwoSystems_IsRefused()
    {
        string text = Book("2 %").Replace("level of drum / 1 m", "(level of drum + level of supply) / 1 m", StringComparison.Ordinal);
        Assert.Contains("P015", Assert.ThrowsAny<Exception>(() => Rig.Compile(text)).Message, StringComparison.Ordinal);
    }

    private static double Excess(string band)
    {
        double k = 0.62 * Math.PI / 4 * 0.015 * 0.015 * Math.Sqrt(2 * 9.80665) / (2 * 0.5);
        double open = (1 - Math.Pow(1 - (k * Seconds), 3)) / (3 * k); // ∫h dt, h₀ = 1 m
        double root = 1 - (FlowArea * Math.Sqrt(2 * 9.80665) / (2 * SupplyFloor) * open);
        return Drawn(Book(band)) - (SupplyFloor * (1 - (root * root)));
    }

    private static double Drawn(string text)
    {
        using Rig rig = Started(Rig.Compile(text));
        return 50 - rig.At(Seconds, "volume of supply");
    }

    private static ulong Hash(Plan plan, double every)
    {
        using Rig rig = Started(plan);
        for (double at = every; at < Seconds; at += every)
        {
            rig.At(at, "volume of supply");
        }

        rig.World.RunTo(SimTime.FromSeconds(Seconds));
        rig.World.CutHere();
        return rig.World.Hash;
    }

    private static Rig Started(Plan plan) => new(plan, "draining");
}
