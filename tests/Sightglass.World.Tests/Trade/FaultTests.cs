using System.Collections.Immutable;
using Sightglass.Basics.Time;

namespace Sightglass.World.Tests.Trade;

/// <summary>What each fault of the fuel system does to the demo machine at idle (from the laws themselves; common practice, no source).</summary>
public sealed class FaultTests
{
    private const double Minute = 60;

    /// <summary>Weight of fuel, Pa/m: the pump lifts it by 0.2 m from line to line, the filter's lines stand 0.6 m apart.</summary>
    private const double Weight = 840 * 9.80665;

    /// <summary>Five times what a clean one drops at the same flow: 4 psi at 15 L/min, seven tenths of it linear. 0.1 %: the lines have settled.</summary>
    [Fact]
    public void FilterDirt_FactorFive_DropIsFiveTimesAsMuch()
    {
        using Rig rig = Idle();
        Assert.Equal(1, OverClean(5 * Minute), 0.001);
        PutIn(rig, 5 * Minute, "secondary filter", "dirt", ("factor", 5));
        Assert.Equal(5, OverClean(10 * Minute), 0.005);
        rig.World.Do(new WorldAction.TakeOut("secondary filter", "dirt"), SimTime.FromSeconds(10 * Minute));
        Assert.Equal(1, OverClean(15 * Minute), 0.001);

        double OverClean(double at)
        {
            double share = rig.At(at, "flow of secondary filter") / (15 * TradeMachine.LitrePerMinute);
            double drop = rig.At(at, "pressure of pump discharge line") - rig.At(at, "pressure of engine rail") - (0.6 * Weight);
            return drop / (4 * 6894.757293168 * ((0.7 * share) + (0.3 * share * share)));
        }
    }

    /// <summary>A share of the flow at the relief pressure is lost in proportion to the pressure: 40 % at 90 psi. 1e-3 of the flow.</summary>
    [Fact]
    public void PumpWorn_LosesItsShareByThePressure()
    {
        using Rig rig = Idle();
        PutIn(rig, 5 * Minute, "fuel pump", "worn", ("share", 0.4));
        double flow = rig.At(10 * Minute, "flow of fuel pump");
        double against = rig.At(10 * Minute, "pressure of pump discharge line") - rig.At(10 * Minute, "pressure of pump suction line") + (0.2 * Weight);
        const double Full = 15 * TradeMachine.LitrePerMinute;
        const double Relief = 90 * 6894.757293168;
        Assert.Equal(Full * (1 - (0.45 * against / Relief)), flow, 1e-3 * Full);
    }

    [Fact]
    public void ValveStuck_Operated_StaysWhereItIs()
    {
        using Rig rig = Idle();
        PutIn(rig, 60, "aft supply valve", "stuck");
        rig.Do(61, "aft supply valve", "closed");
        rig.At(62, "flow of aft supply valve");
        Assert.Equal(1, rig.World.GetSlot(rig.Plan.Items["aft supply valve"].Position!.Value));
        Assert.Contains(rig.World.Journal!, j => j.Text.Contains("but it does not move", StringComparison.Ordinal));
    }

    /// <summary>Closed it is tight; passing 5 % it lets the compartments even out slowly.</summary>
    [Fact]
    public void ValvePasses_Closed_LetsAShareThrough()
    {
        using Rig rig = Idle();
        foreach (string valve in (string[])["forward supply valve", "forward return valve"])
        {
            rig.Do(0, valve, "closed");
        }

        double tight = rig.At(Minute, "volume of forward compartment");
        Assert.Equal(tight, rig.At(60 * Minute, "volume of forward compartment"), 1e-12);
        Assert.Equal(0, rig.At(60 * Minute, "flow of forward supply valve"));
        PutIn(rig, 60 * Minute, "forward supply valve", "passes", ("share", 0.05));
        Assert.NotEqual(tight, rig.At(180 * Minute, "volume of forward compartment"), 1e-3);
    }

    [Fact]
    public void GaugeBiasAndStuck_ShowOtherThanTheTruth()
    {
        using Rig rig = Idle();
        double truth = rig.Reads(Minute, "cab fuel gauge");
        PutIn(rig, Minute, "cab fuel gauge", "bias", ("error", 0.1));
        Assert.Equal(truth + 0.1, rig.Reads(Minute + 1, "cab fuel gauge"), 0.0101);
        PutIn(rig, 2 * Minute, "cab fuel gauge", "stuck");
        double held = rig.Reads((2 * Minute) + 1, "cab fuel gauge");
        rig.Do((2 * Minute) + 2, "throttle", "notch 8");
        Assert.Equal(held, rig.Reads(120 * Minute, "cab fuel gauge"), 1e-9);
        Assert.True(rig.At(120 * Minute, "volume of forward compartment") < 0.55 * 0.8 * 1.03 * 2.8 * 1.05);
    }

    [Fact]
    public void GlassDirty_IsReadTooHigh()
    {
        using Rig rig = Idle();
        double clean = rig.Reads(Minute, "forward sight glass, right");
        PutIn(rig, Minute, "forward sight glass, right", "dirty", ("error", 0.05));
        Assert.Equal(clean + 0.05, rig.Reads(Minute + 1, "forward sight glass, right"), 1e-9);
        Assert.Equal(clean, rig.Reads(Minute + 1, "forward sight glass, left"), 1e-9);
    }

    [Fact]
    public void CutOffTripped_EngineStopsForWantOfFuel()
    {
        using Rig rig = Idle();
        PutIn(rig, Minute, "emergency cut-off valve", "tripped");
        Assert.True(rig.At(10 * Minute, "running of engine") < 0);
        Assert.Contains(rig.World.Journal!, j => j.Text == "Emergency cut-off valve falls shut.");
        Assert.Contains(rig.World.Journal!, j => j.Text == "Engine stops for want of fuel.");
    }

    /// <summary>The float shuts by itself at 760 mm; hanging, it lets the compartment run over. All supplies and returns are shut, so that nothing runs off.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void FillPort_FloatHangs_Overflows(bool hangs)
    {
        using Rig rig = Idle();
        rig.Do(0, "forward supply valve", "closed");
        rig.Do(0, "forward return valve", "closed");
        if (hangs)
        {
            PutIn(rig, 1, "forward fill port, right", "does not shut");
        }

        rig.Do(2, "forward fill port, right", "filling");
        double level = rig.At(30 * Minute, "level of forward compartment");
        Assert.Equal(hangs, rig.At(30 * Minute, "spilled of forward compartment") > 0.1);
        Assert.True(hangs ? level > 0.8 : level is > 0.745 and < 0.765, $"level {level}");
    }

    private static Rig Idle() => new(Books.Curlew, "idle, nothing wrong");

    private static void PutIn(Rig rig, double at, string item, string fault, params ReadOnlySpan<(string Name, double Value)> values)
    {
        ImmutableSortedDictionary<string, double>.Builder given = ImmutableSortedDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        foreach ((string name, double value) in values)
        {
            given[name] = value;
        }

        rig.World.Do(new WorldAction.PutIn(item, fault, given.ToImmutable()), SimTime.FromSeconds(at));
    }
}
