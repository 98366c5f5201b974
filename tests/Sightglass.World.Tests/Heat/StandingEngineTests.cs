using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Heat;

/// <summary>The demo's engine while it stands: started by itself, or loaded on its own grids.</summary>
public sealed class StandingEngineTests
{
    /// <summary>Cold water, twenty seconds of bell, and the engine runs; warm again, nothing asks for it. Common practice, no source.</summary>
    [Fact]
    public void AutomaticStart_ColdWater_RingsAndStartsTheEngine()
    {
        using Rig rig = new(Books.Curlew, "cold night alone");
        double Bell(double at) => rig.At(at, w => w.Value(rig.Plan.Signs["the automatic start bell is heard"]));
        Assert.True(Bell(5) < 0 && rig.At(5, "running of engine") < 0);
        Assert.True(rig.At(5, w => w.Value(rig.Plan.Facts["the engine may start by itself"])) >= 0);
        double asked = 0;
        for (double t = 60; asked == 0 && t < 7200; t += 5)
        {
            asked = Bell(t) >= 0 ? t : 0;
        }

        Assert.True(asked > 60);
        Assert.InRange(rig.At(asked + 1, "temperature of cooling water"), 273.15 + 39.5, 273.15 + 40.1);
        Assert.True(rig.At(asked + 12, "running of engine") < 0); // at least 20 s of bell, of which up to 5 s had gone
        Assert.True(rig.At(asked + 60, "running of engine") >= 0);
        Assert.True(Bell(asked + 61) < 0);
    }

    /// <summary>Without fuel it cranks for twenty seconds and is locked out until its switch has been off.</summary>
    [Fact]
    public void AutomaticStart_EngineThatDoesNotFire_IsLockedOutAfterOneTry()
    {
        using Rig rig = new(Books.Curlew, "cold night alone");
        rig.Break(1, "engine", "seized");
        rig.Break(2, "starter motors", "worn", ("voltage", 60));
        double first = 0;
        for (double t = 60; first == 0 && t < 7200; t += 5)
        {
            first = rig.At(t, "picked up of automatic start relay") >= 0 ? t : 0;
        }

        Assert.True(first > 0);
        Assert.True(rig.At(first + 1, "cranking of starter motors") >= 0);
        Assert.True(rig.At(first + 30, "cranking of starter motors") < 0 && rig.At(first + 30, "picked up of automatic start lock-out") >= 0);
        Assert.True(rig.At(first + 900, "cranking of starter motors") < 0);
        rig.Do(first + 901, "automatic start switch", "off");
        Assert.True(rig.At(first + 905, "picked up of automatic start lock-out") < 0);
    }

    [Fact]
    public void AutomaticStart_Off_NeverStarts()
    {
        using Rig rig = new(Books.Curlew, "cold night alone");
        rig.Do(1, "automatic start switch", "off");
        Assert.True(rig.At(7200, "running of engine") < 0 && rig.At(7200, "temperature of cooling water") < 273.15 + 35);
    }

    /// <summary>
    /// What the generator gives of 840 kW: 155 of 210 L an hour in notch 3 are 620 kW; the current goes with its root (I²·R), 601 of 700 A. The blower turns with the current, and the grids settle where the air takes what comes in: 620 kW over
    /// 1.6 kW/K times what the blower gives. Source: Ohm's law and an energy balance.
    /// </summary>
    [Fact]
    public void SelfLoad_Notch3_HeatsTheGridsByWhatTheGeneratorGives()
    {
        using Rig rig = new(Books.Curlew, "machine that loads");
        Load(rig);
        double current = 700 * Math.Sqrt(155.0 / 210), heat = 840e3 * 155 / 210, share = current / 700;
        Assert.Equal(current, rig.Reads(40, "dynamic brake ammeter"), 21.0); // its resolution
        Assert.Equal(heat, rig.At(40, "heat of heat of the grids"), 0.03 * heat);
        double outside = rig.At(1500, "ambient temperature"), settled = rig.At(1500, "temperature of dynamic brake grids");
        // A blower of 86 % of its speed moves 86 % of its air or a little less heat (exponent below 1): between both.
        Assert.InRange(settled - outside, heat / 1600, heat / (1600 * share * share));
        Assert.True(settled < 273.15 + 750);
        Assert.True(rig.At(1500, w => w.Value(rig.Plan.Signs["the grid blower is heard to howl"])) >= 0);
    }

    /// <summary>The motors get nothing: they stay as cool as they were, where loaded on the rail they warm.</summary>
    [Fact]
    public void SelfLoad_Motors_StayCool()
    {
        using Rig rig = new(Books.Curlew, "machine that loads"), pulling = new(Books.Curlew, "machine that loads");
        Load(rig);
        pulling.Do(1, "throttle", "notch 3");
        Assert.True(pulling.At(900, "temperature of traction motors") > rig.At(900, "temperature of traction motors") + 3);
    }

    [Theory]
    [InlineData("parking brake control", "released")]
    [InlineData("self-load switch", "off")]
    public void SelfLoad_InterlockGone_DropsTheLoad(string control, string position)
    {
        using Rig rig = new(Books.Curlew, "machine that loads");
        Load(rig);
        Assert.True(rig.At(40, w => w.Value(rig.Plan.Facts["the machine loads its own grids"])) >= 0);
        rig.Do(41, "throttle", control == "self-load switch" ? "idle" : "notch 3");
        rig.Do(42, control, position);
        Assert.True(rig.At(60, "picked up of self-load relay") < 0);
        Assert.True(rig.At(60, w => w.Value(rig.Plan.Facts["the machine loads its own grids"])) < 0);
        Assert.True(rig.At(60, "told of braking current") < 0.01);
    }

    /// <summary>Its blower stands: within two minutes the grids glow. That is why the card listens first.</summary>
    [Fact]
    public void SelfLoad_BlowerStands_GridsGlow()
    {
        using Rig rig = new(Books.Curlew, "machine that loads");
        rig.Break(0.5, "grid blower", "does not turn");
        Load(rig);
        Assert.True(rig.At(40, w => w.Value(rig.Plan.Signs["the grid blower is heard to howl"])) < 0);
        Assert.True(rig.At(40, w => w.Value(rig.Plan.Facts["the grids glow"])) < 0);
        Assert.True(rig.At(300, w => w.Value(rig.Plan.Facts["the grids glow"])) >= 0);
    }

    private static void Load(Rig rig)
    {
        rig.Do(1, "throttle", "idle");
        rig.Do(2, "reverser", "centred");
        rig.Do(3, "parking brake control", "set");
        rig.Do(20, "self-load switch", "on");
        rig.Do(21, "throttle", "notch 3");
    }
}
