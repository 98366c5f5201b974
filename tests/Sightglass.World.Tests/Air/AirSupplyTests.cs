using Sightglass.Basics.Time;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>Making, storing and losing compressed air.</summary>
public sealed class AirSupplyTests
{
    private const double Psi = 6894.757293;
    private const double CubicFoot = 0.028316846592;

    private const string Head = """
        book: Air
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { panel: { x: 5 m, y: 2.4 m } }

        """;

    private const string Supply = Head + """
        items:
          reservoir: { kind: reservoir, volume: 30 ft^3 }
          governor: { kind: governor, senses: reservoir, cuts in: 130 psi, cuts out: 140 psi }
          motor: { kind: switch, usual: on, who: [hand], places: [panel] }
          compressor: { kind: compressor, to: reservoir, displacement: 80 ft^3/min, clearance: 0 %, driven by: motor, loaded by: governor }
          safety valve: { kind: safety valve, from: reservoir, diameter: 20 mm, opens at: 150 psi, blow-down: 8 psi }
        situations:
          empty: { text: From nothing. }
          full: { text: Already above where it cuts out., start: { pressure of reservoir: 145 psi } }
          governor stuck: { text: It never unloads., start: { pressure of reservoir: 120 psi }, faults: [ { fault: stuck, on: governor } ] }
          leaking: { text: A hole of three millimetres., start: { pressure of reservoir: 130 psi }, faults: [ { fault: leak, on: reservoir, diameter: 3 mm } ] }

        """;

    /// <summary>30 ft³ from 0 to 140 psig at 80 cfm takes 214.34478 s (Compressed Air and Gas Handbook, from memory). There the governor unloads.</summary>
    [Fact]
    public void A2_06_PumpUp_ByCompressorAndGovernor_TakesTheTimeOfTheClosedForm()
    {
        using Rig rig = new(Rig.Compile(Supply), "empty");
        Assert.Equal(140 * Psi * 200 / 214.34478, rig.At(200, "pressure of reservoir"), 50.0);
        Assert.Equal(1, rig.At(214.33, "told of governor"));
        Assert.Equal(0, rig.At(214.36, "told of governor"));
        Assert.Equal(140 * Psi, rig.At(600, "pressure of reservoir"), 50.0);
        Assert.Equal(0, rig.At(600, "flow of compressor"), 1e-9);
    }

    /// <summary>130 to 140 psig takes 15.310342 s; pumped up from where a leak made it cut in.</summary>
    [Fact]
    public void A2_06_PumpUp_FromCutInToCutOut_TakesTheTimeOfTheClosedForm()
    {
        using Rig rig = new(Rig.Compile(Supply.Replace("start: { pressure of reservoir: 145 psi }", "start: { pressure of reservoir: 130 psi }", StringComparison.Ordinal)), "full");
        Assert.Equal(1, rig.At(15.30, "told of governor"));
        Assert.Equal(0, rig.At(15.32, "told of governor"));
    }

    /// <summary>A pressure already above the cut-out at the start has it unloaded from the start.</summary>
    [Fact]
    public void Start_AboveCutOut_Unloaded()
    {
        using Rig rig = new(Rig.Compile(Supply), "full");
        Assert.Equal(0, rig.At(0.1, "told of governor"));
        Assert.Equal(145 * Psi, rig.At(60, "pressure of reservoir"), 1.0);
    }

    /// <summary>A governor that does not unload: the safety valve pops at its pressure and keeps the reservoir between there and its blow-down (common practice, no source).</summary>
    [Fact]
    public void GovernorStuck_Pumping_SafetyValveKeepsThePressure()
    {
        using Rig rig = new(Rig.Compile(Supply), "governor stuck");
        double highest = 0;
        double lowest = double.MaxValue;
        for (int second = 60; second < 360; second++)
        {
            double p = rig.At(second, "pressure of reservoir") / Psi;
            (highest, lowest) = (Math.Max(highest, p), Math.Min(lowest, p));
        }

        Assert.InRange(highest, 148, 150.001);
        Assert.InRange(lowest, 141.99, 144);
        Assert.Contains(rig.World.Journal!, e => e.ToString().Contains("pops open", StringComparison.Ordinal));
    }

    /// <summary>q = V·(dp/dt)/p_a: what the leak passes is what the pressure says (gas law; the rule of thumb of 49 CFR 232.205 rests on it).</summary>
    [Fact]
    public void A2_07_Leak_FlowAndRateOfPressure_Agree()
    {
        using Rig rig = new(Rig.Compile(Supply), "leaking");
        rig.Do(0, "motor", "off");
        double before = rig.At(59.5, "pressure of reservoir");
        double flow = rig.At(60, "leak flow of reservoir");
        double after = rig.At(60.5, "pressure of reservoir");
        Assert.Equal(30 * CubicFoot * (before - after) / 101_325, flow, 1e-4 * flow);
        Assert.True(flow > 0.001);
    }

    /// <summary>No air is made from nothing: what is in the stores and what the boundaries booked stays the same.</summary>
    [Theory]
    [InlineData("empty")]
    [InlineData("governor stuck")]
    [InlineData("leaking")]
    public void Mass_OverAnHour_Closes(string situation)
    {
        using Rig rig = new(Rig.Compile(Supply), situation);
        double before = Total(rig);
        rig.World.RunTo(SimTime.FromSeconds(3600));
        Assert.True(rig.World.Trouble is null, rig.World.Trouble);
        rig.World.CutHere();
        Assert.Equal(before, Total(rig), 1e-12 * 160);
    }

    /// <summary>All air, boundaries too. 80 ft³/min for an hour are 163 kg.</summary>
    private static double Total(Rig rig) => Enumerable.Range(0, rig.Plan.AmountNames[0].Length).Sum(i => rig.World.GetAmount(0, new(i)));
}
