using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Electric;

/// <summary>Head-end power and what goes along with it, over a train. Where no other source is named: common practice, no source.</summary>
public sealed class PoweredTrainTests
{
    /// <summary>One coach behind R + jX alone: the upper root of V⁴ + V²·(2(RP + XQ) − Vs²) + (R² + X²)(P² + Q²) = 0, 472.05603 V between phases and 183.45818 A. Source: A3-03, any text of power flow.</summary>
    [Fact]
    public void Voltage_A3_03ConstantPowerBehindACable_IsTheUpperRoot()
    {
        Plan plan = Rig.Compile("""
            book: A3-03
            length: 20 m
            situations: { on: { } }
            items:
              bars: { kind: busbar }
              far bars: { kind: busbar }
              source: { kind: three-phase source, to: bars, power: 1 MW, inner impedance: 0.0001 % }
              feeder: { kind: three-phase cable, from: bars, to: far bars, resistance: 20 mOhm, reactance: 15 mOhm }
              load: { kind: three-phase load, from: far bars, power: 120 kW, power factor: 80 % }
            """);
        using Rig rig = new(plan, "on");
        Assert.Equal(472.05603, rig.At(1, "voltage of far bars"), 1e-3);
        Assert.Equal(183.45818, rig.At(2, "current of feeder"), 1e-3);
        Assert.Equal(120_000, rig.At(3, "consumption of load"), 1e-3);
        Assert.Equal(120_000 + (3 * 673.13809), rig.At(4, "output of source"), 1.0);
    }

    [Fact]
    public void Key_On_LoopClosesAndTheWholeTrainIsLive()
    {
        using Rig rig = new(PoweredTrain.Plan("two coaches"), "train");
        Assert.True(rig.At(1, "picked up of power contactor") >= 0);
        Assert.InRange(rig.At(2, "voltage of B line of car 2"), 465, 480);
        Assert.True(rig.At(3, "working of car load of car 2") >= 0);
        Assert.True(rig.At(4, "live of power jumper between car 1 and car 2") >= 0);
        double lost = rig.At(5, "output of alternator") - rig.At(5.1, "consumption of car load of car 1") - rig.At(5.2, "consumption of car load of car 2");
        Assert.InRange(lost, 1, 1500);
        Assert.Equal(60 * (1 - (0.03 * rig.At(6, "output of alternator") / 500e3)), rig.At(6.1, "frequency of alternator"), 1e-9);
        rig.Do(7, "key", "off");
        Assert.Equal(0, rig.At(8, "voltage of B line of car 2"), 1e-9);
        Assert.True(rig.At(9, "live of A receptacle of car 1") < 0);
    }

    /// <summary>Whatever opens the loop keeps the train dark: the last cover, a plug that is not home, a broken pin. Bypassed it comes on all the same.</summary>
    [Theory]
    [InlineData("B receptacle of car 2", "cover contact open")]
    [InlineData("power jumper at the rear", "not home")]
    [InlineData("power jumper between car 1 and car 2", "not home")]
    public void Loop_OpenSomewhere_TrainIsDarkAndLiveWithTheBypass(string item, string fault)
    {
        using Rig rig = new(PoweredTrain.Plan("two coaches"), "train");
        rig.Break(1, item, fault);
        Assert.Equal(0, rig.At(2, "voltage of A line of car 1"), 1e-9);
        rig.Do(3, "bypass", "on");
        Assert.InRange(rig.At(4, "voltage of A line of car 1"), 470, 480);
    }

    [Fact]
    public void Cover_OfTheLastCarOpened_TrainIsDark()
    {
        using Rig rig = new(PoweredTrain.Plan("two coaches"), "train");
        rig.Do(1, "B receptacle of car 2", "open");
        Assert.True(rig.At(2, "picked up of power contactor") < 0);
        Assert.Equal(0, rig.At(3, "voltage of power line"), 1e-9);
    }

    /// <summary>A jumper parted under voltage is noted, and the train goes dark; parted dead it is not. Its covers stand open: with that of the car shut, the rest of the train has power again.</summary>
    [Fact]
    public void Jumper_PartedLive_IsNoted()
    {
        using Rig rig = new(PoweredTrain.Plan("two coaches"), "train");
        rig.Do(1, "power jumper between car 1 and car 2", "parted");
        Assert.True(rig.At(2, "pulled live of power jumper between car 1 and car 2") >= 0);
        Assert.Equal(0, rig.At(3, "voltage of A line of car 1"), 1e-9);
        rig.Do(3.1, "B receptacle of car 1", "shut");
        Assert.InRange(rig.At(3.2, "voltage of A line of car 1"), 470, 480);
        rig.Do(3.3, "key", "off");
        rig.Do(4, "power jumper at the rear", "parted");
        Assert.True(rig.At(5, "pulled live of power jumper at the rear") < 0);
    }

    /// <summary>Trade 15: the machine's own power is off and the wayside feeds the far end: the meter in the cab shows 0 and the jumper at the machine is live.</summary>
    [Fact]
    public void Meter_Trade15WaysideAtTheRear_ShowsNothingAndTheJumperIsLive()
    {
        using Rig rig = new(PoweredTrain.Plan("two coaches"), "train");
        rig.Do(1, "key", "off");
        rig.Do(2, "engine switch", "stop");
        rig.Do(3, "wayside switch of car 2", "on");
        Assert.Equal(0, rig.Reads(4, "meter"));
        Assert.True(rig.At(5, "live of power jumper at the rear") >= 0);
        Assert.InRange(rig.At(6, "greatest voltage of power receptacle"), 450, 480);
    }

    /// <summary>Two sources that meet are not in step: the breaker of the machine opens at once.</summary>
    [Fact]
    public void Sources_TwoThatMeet_BreakerTrips()
    {
        using Rig rig = new(PoweredTrain.Plan("two coaches"), "train");
        rig.Do(1, "wayside switch of car 2", "on");
        Assert.True(rig.At(20, "tripped of power breaker") >= 0);
    }

    /// <summary>One phase on the frame trips nothing and is told; a second one on another phase is a short.</summary>
    [Fact]
    public void Phase_OnTheFrame_IsToldAndTwoTrip()
    {
        using Rig rig = new(PoweredTrain.Plan("two coaches"), "train");
        Assert.True(rig.At(1, "grounded of alternator") < 0);
        rig.Break(2, "A line of car 2", "grounded", ("phase", 1), ("resistance", 0.01));
        Assert.InRange(rig.At(3, "frame voltage of alternator"), 250, 280);
        Assert.True(rig.At(4, "tripped of power breaker") < 0);
        Assert.True(rig.At(5, "working of car load of car 2") >= 0);
        rig.Break(6, "A line of car 1", "grounded", ("phase", 2), ("resistance", 0.01));
        Assert.True(rig.At(60, "tripped of power breaker") >= 0);
    }

    /// <summary>A phase that is open at the plug: the load behind it has too little, the one before it works.</summary>
    [Fact]
    public void Jumper_OpenPhase_OnlyWhatIsBehindItLacks()
    {
        using Rig rig = new(PoweredTrain.Plan("two coaches"), "train");
        rig.Break(1, "power jumper between car 1 and car 2", "open phase", ("phase", 2));
        Assert.True(rig.At(2, "working of car load of car 1") >= 0);
        Assert.True(rig.At(3, "working of car load of car 2") < 0);
        Assert.True(rig.At(4, "live of power jumper between car 1 and car 2") >= 0);
    }

    [Fact]
    public void Load_Shorted_BreakerTripsAndTheTrainIsDark()
    {
        using Rig rig = new(PoweredTrain.Plan("two coaches"), "train");
        rig.Break(1, "car load of car 2", "shorted", ("resistance", 0.005));
        Assert.True(rig.At(30, "tripped of power breaker") >= 0);
        Assert.Equal(0, rig.At(31, "voltage of A line of car 1"), 1e-9);
    }

    /// <summary>Trade 20: the wires of the doors change sides within each vehicle and in each jumper, so that a turned car opens on the same side of the train; two wires crossed once more open the wrong one.</summary>
    [Fact]
    public void Doors_Trade20OfATurnedCar_OpenOnTheSameSideOfTheTrain()
    {
        using Rig straight = new(PoweredTrain.Plan("two coaches"), "train");
        straight.Do(1, "left door switch", "on");
        Assert.True(straight.At(2, "picked up of left door magnet of car 2") >= 0);
        Assert.True(straight.At(3, "picked up of right door magnet of car 2") < 0);
        using Rig turned = new(PoweredTrain.Plan("one turned"), "turned");
        turned.Do(1, "left door switch", "on");
        Assert.True(turned.At(2, "picked up of left door magnet of car 1") >= 0);
        Assert.True(turned.At(3, "picked up of right door magnet of car 2") >= 0);
        Assert.True(turned.At(4, "picked up of left door magnet of car 2") < 0);
        turned.Break(5, "doors jumper between car 1 and car 2", "crossed pins", ("pin", 5), ("other", 6));
        Assert.True(turned.At(6, "picked up of left door magnet of car 2") >= 0);
        Assert.True(turned.At(7, "picked up of right door magnet of car 2") < 0);
    }

    /// <summary>Trade 16, on a door wire: open, whatever is behind it does not answer; shorted to another, both do.</summary>
    [Fact]
    public void Pins_Trade16OpenOrShorted_WhatIsBehindDoesNotAnswerOrBothDo()
    {
        using Rig rig = new(PoweredTrain.Plan("two coaches"), "train");
        rig.Do(1, "left door switch", "on");
        rig.Break(2, "doors jumper between car 1 and car 2", "shorted pins", ("pin", 5), ("other", 6));
        Assert.True(rig.At(3, "picked up of right door magnet of car 2") >= 0);
        Assert.True(rig.At(4, "picked up of left door magnet of car 2") >= 0);
        rig.Mend(5, "doors jumper between car 1 and car 2", "shorted pins");
        rig.Break(6, "doors jumper between car 1 and car 2", "open pin", ("pin", 6));
        Assert.True(rig.At(7, "picked up of left door magnet of car 2") < 0);
        Assert.True(rig.At(8, "picked up of left door magnet of car 1") >= 0);
    }

    /// <summary>Killed and restored in the middle it goes on to the last bit.</summary>
    [Fact]
    public void Restore_InTheMiddle_SameHash()
    {
        using Rig whole = new(PoweredTrain.Plan("two coaches"), "train");
        using Rig second = new(PoweredTrain.Plan("two coaches"), "train");
        whole.World.RunTo(SimTime.FromSeconds(100));
        second.World.Restore(whole.World.Save());
        whole.World.RunTo(SimTime.FromSeconds(500));
        second.World.RunTo(SimTime.FromSeconds(500));
        Assert.Equal(whole.World.Hash, second.World.Hash);
        for (int i = 0; i < whole.Plan.Slots.Length; i++)
        {
            Assert.Equal(whole.World.GetSlot(new(i)), second.World.GetSlot(new(i)));
        }
    }
}
