using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Heat;

/// <summary>Heat as it is stored, made and carried off, against closed forms.</summary>
public sealed class HeatTests
{
    private const double Zero = 273.15;

    /// <summary>C 500 kJ/K, hA 250 W/K, 10 °C outside: from 95 °C 44.558421 °C after 1800 s; with 12 kW from 95 °C 73.043077 °C. Incropera ch. 5 (from memory).</summary>
    [Theory]
    [InlineData(false, 44.558421)]
    [InlineData(true, 73.043077)]
    public void A5_01_LumpedMass_CoolsAndIsHeldByItsHeater(bool heated, double celsius)
    {
        using Rig rig = new(HeatMachine.Plan, "hot block");
        if (heated)
        {
            rig.Do(0, "heater switch", "on");
        }

        Assert.Equal(celsius, rig.At(1800, "temperature of block") - Zero, 0.002);
    }

    /// <summary>A dry bearing gives more, a broken heater nothing; mended it gives what it should.</summary>
    [Fact]
    public void Source_TooStrongOrDead_GivesSo()
    {
        using Rig rig = new(HeatMachine.Plan, "hot block");
        rig.Do(0, "heater switch", "on");
        rig.Break(10, "heater", "too strong", ("share", 0.5));
        Assert.Equal(18_000, rig.At(11, "heat of heater"), 1e-6);
        rig.Break(12, "heater", "dead", ("", 1));
        Assert.Equal(0, rig.At(13, "heat of heater"), 1e-6);
        rig.Mend(14, "heater", "dead");
        rig.Mend(14, "heater", "too strong");
        Assert.Equal(12_000, rig.At(15, "heat of heater"), 1e-6);
    }

    /// <summary>Two masses even out with τ = 1/(G·(1/C₁ + 1/C₂)) and lose nothing. Derived.</summary>
    [Fact]
    public void Exchanger_BetweenTwoMasses_EvensOutAndKeepsTheHeat()
    {
        using Rig rig = new(HeatMachine.Plan, "hot block");
        (double left, double right) = (rig.At(0, "temperature of left"), rig.At(0, "temperature of right"));
        const double Seconds = 300;
        double difference = (left - right) * Math.Exp(-Seconds * 6 * ((1 / 2000.0) + (1 / 3000.0)));
        double mean = ((2 * left) + (3 * right)) / 5;
        Assert.Equal(difference, rig.At(Seconds, "temperature of left") - rig.At(Seconds, "temperature of right"), 0.002);
        Assert.Equal(mean, ((2 * rig.At(Seconds, "temperature of left")) + (3 * rig.At(Seconds, "temperature of right"))) / 5, 1e-9);
    }

    /// <summary>I²R₀ = 210.7 kW, α = 3e-4/K, m·c = 41.4 kJ/K, hA = 260 W/K: 465.43 K above the air after 120 s. Derived (A5_04 of the engineering list).</summary>
    [Fact]
    public void A5_04_Grid_UnderLoad_WarmsAsItsResistanceRises()
    {
        using Rig rig = new(HeatMachine.Plan, "hot block");
        double air = rig.At(0, "temperature of grid");
        rig.Do(0, "load switch", "on");
        double outside = 10 + Zero;
        // It begins 5 K above the air outside: the closed form from there.
        double loss = 260 - (0.0003 * 210_700);
        double final = 210_700 / loss;
        double expected = final + ((air - outside - final) * Math.Exp(-120 * loss / 41_400));
        Assert.Equal(expected, rig.At(120, "temperature of grid") - outside, 0.5);
    }

    /// <summary>Grids 465 K above the air, load off: with the fan 71 K after 5 min, with a blower that the grid's own current feeds about 386 K. Common practice, no source (trade scenario 18); numbers by the closed form.</summary>
    [Fact]
    public void Trade_18_LoadOff_OffIsNotCool()
    {
        using Rig rig = new(HeatMachine.Plan, "hot grids");
        double air = 20 + Zero;
        Assert.Equal(71, rig.At(300, "temperature of grid") - air, 1.0);
        Assert.Equal(386, rig.At(300, "temperature of own grid") - air, 1.5);
    }

    /// <summary>ε·C_min·ΔT of 0.43923012·21 600 W/K at 88 and 32 °C: 531.29 kW, crossflow, exact. Derived (A5_03 of the engineering list).</summary>
    [Fact]
    public void A5_03_Radiator_WithEverythingOpen_GivesItsDuty()
    {
        using Rig rig = new(HeatMachine.Plan, "hot day");
        Assert.Equal(531_292.75, rig.At(0, "heat of radiator"), 1.0);
    }

    /// <summary>The stream is what its fans move times what its screen and its shutter let through; heat goes with its power 0.6.</summary>
    [Fact]
    public void Radiator_FanScreenShutterDoor_LeaveTheirShareOfTheStream()
    {
        using Rig rig = new(HeatMachine.Plan, "hot day");
        double Share(double at) => rig.At(at, "heat of radiator") / (9487.3706 * (rig.At(at, "temperature of water") - 32 - Zero));
        Assert.Equal(1, Share(1), 1e-9);
        rig.Break(2, "second fan", "does not turn", ("", 1));
        Assert.Equal(Math.Pow(0.5, 0.6), Share(3), 1e-9);
        rig.Break(4, "screen", "blocked", ("share", 0.9));
        Assert.Equal(Math.Pow(0.05, 0.6), Share(5), 1e-9);
        rig.Do(6, "body door", "open");
        Assert.Equal(Math.Pow(0.3, 0.6), Share(7), 1e-9);
        rig.Do(8, "screen", "brushed");
        Assert.Equal(Math.Pow(0.5, 0.6), Share(9), 1e-9);
        rig.Break(10, "shutter", "stuck shut", ("", 1));
        Assert.Equal(0, Share(11), 1e-9);
        rig.Do(12, "shutter", "wired open");
        Assert.Equal(Math.Pow(0.5, 0.6), Share(13), 1e-9);
    }

    /// <summary>It comes in above 80 °C and goes out below 74 °C, to the moment.</summary>
    [Fact]
    public void Thermostat_WarmingAndCooling_SwitchesAtItsTemperatures()
    {
        using Rig rig = new(HeatMachine.Plan, "hot day");
        Assert.True(rig.At(1, "turning of first fan") >= 0);
        double seconds = 10e6 / 9487.3706 * Math.Log((88 - 32) / (74.0 - 32));
        Assert.True(rig.At(seconds - 1, "turning of first fan") >= 0);
        Assert.True(rig.At(seconds + 1, "turning of first fan") < 0);
        Assert.Equal(74 + Zero, rig.At(seconds + 60, "temperature of water"), 0.01);
    }
}
