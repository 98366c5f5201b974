using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Electric;

public sealed class BatteryTests
{
    /// <summary>64 V at rest behind 30 mΩ at 900 A gives 37 V: checks of the trade, row 17. Here the rest voltage is that of a full battery, 32·2.105 V, and the current follows from the starter.</summary>
    [Fact]
    public void Trade_17_Cranking_BatterySinksToHalf()
    {
        using Rig rig = new(BatteryMachine.Plan, "standing");
        Assert.Equal(32 * 2.105, rig.At(1, "voltage of battery"), 0.05);
        rig.Do(2, "start switch", "start");
        double volts = rig.At(3, "voltage of battery");
        double amperes = rig.At(3.5, "current of battery");
        Assert.InRange(amperes, 850, 1000);
        Assert.Equal(volts, rig.At(3.6, "electromotive force of battery") - (0.030 * amperes), 0.2);
        Assert.Equal(38, rig.Reads(4, "voltmeter"), 1.01);
    }

    [Fact]
    public void Starter_GoodBattery_EngineRunsAfterItsTime()
    {
        using Rig rig = new(BatteryMachine.Plan, "standing");
        rig.Do(2, "start switch", "start");
        Assert.True(rig.At(7.9, "running of engine") < 0);
        Assert.True(rig.At(8.1, "running of engine") >= 0);
        Assert.Equal(0, rig.At(8.2, "current of starter"), 1e-9);
        Assert.True(rig.At(20, "current of battery") < 0, "the charger charges");
        Assert.Contains(rig.World.Journal!, j => FormattableString.Invariant(j.Sentence) == "engine fires.");
    }

    [Fact]
    public void Starter_TiredBattery_DrawsAndTurnsNothing()
    {
        using Rig rig = new(BatteryMachine.Plan, "low");
        rig.Do(2, "start switch", "start");
        rig.Break(1, "battery", "high resistance", ("resistance", 0.04));
        Assert.True(rig.At(60, "running of engine") < 0);
        Assert.True(rig.At(61, "cranking of starter") >= 0);
        Assert.True(rig.At(62, "turning of starter") < 0);
    }

    /// <summary>What is drawn from the wells is what the circuit says, to rounding: charge is an amount.</summary>
    [Fact]
    public void Discharge_HeadlightForAnHour_ChargeIsBooked()
    {
        using Rig rig = new(BatteryMachine.Plan, "standing");
        double before = rig.At(0.5, "charge of battery");
        rig.Do(1, "light switch", "on");
        double amperes = rig.At(2, "current of battery");
        double after = rig.At(3601, "charge of battery");
        double later = rig.At(3602, "current of battery");
        Assert.InRange((before - after) * 420 * 3600, later * 3600 * 0.999, amperes * 3600 * 1.001);
        Assert.True(later < amperes, "as its voltage falls it gives less");
    }

    /// <summary>Rest brings some of it back: the voltage soon after a heavy load says too little (common practice, no source).</summary>
    [Fact]
    public void Rest_AfterHeavyLoad_VoltageComesBack()
    {
        using Rig rig = new(BatteryMachine.Plan, "standing");
        rig.Break(0.5, "starter", "worn", ("voltage", 50));
        rig.Do(1, "start switch", "start");
        rig.Do(301, "start switch", "off");
        double soon = rig.At(302, "voltage of battery");
        double later = rig.At(4 * 3600, "voltage of battery");
        Assert.True(later > soon + 1, $"{soon} V, later {later} V");
    }

    /// <summary>Charged to where it gasses it takes almost nothing more; the gas is what still flows.</summary>
    [Fact]
    public void Charge_ForTwoDays_OnlyGasIsLeft()
    {
        using Rig rig = new(BatteryMachine.Plan, "running");
        double first = -rig.At(60, "current of battery");
        double last = -rig.At(48 * 3600, "current of battery");
        double gas = rig.At(48 * 3600, "gassing of battery");
        Assert.InRange(first, 40, 100);
        Assert.InRange(last, 1, 12);
        Assert.Equal(last, gas, 4.0);
    }
}
