using Sightglass.Basics.Time;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Electric;

public sealed class CircuitWorldTests
{
    [Fact]
    public void Contactor_SwitchOn_LampIsLit()
    {
        using Rig rig = new(BatteryMachine.Plan, "standing");
        Assert.True(rig.At(1, "lit of headlight") < 0);
        rig.Do(2, "light switch", "on");
        Assert.True(rig.At(2.1, "lit of headlight") >= 0);
        rig.Do(3, "light breaker", "off");
        Assert.True(rig.At(3.1, "lit of headlight") < 0);
        Assert.True(rig.At(3.2, "picked up of light contactor") >= 0);
    }

    /// <summary>A short of 0.5 Ω draws a good 13 times the rating: the magnet opens within its 20 ms.</summary>
    [Fact]
    public void Breaker_Short_TripsAtOnceAndAgain()
    {
        using Rig rig = new(BatteryMachine.Plan, "standing");
        rig.Do(1, "light switch", "on");
        rig.Break(2, "headlight", "shorted", ("resistance", 0.5));
        Assert.True(rig.At(2.05, "tripped of light breaker") >= 0);
        Assert.Equal(0, rig.At(2.06, "current of light breaker"), 1e-9);
        rig.Do(3, "light breaker", "on");
        Assert.True(rig.At(3.1, "tripped of light breaker") >= 0);
        rig.Mend(4, "headlight", "shorted");
        rig.Do(900, "light breaker", "on");
        Assert.True(rig.At(1000, "tripped of light breaker") < 0);
        Assert.True(rig.At(1001, "lit of headlight") >= 0);
    }

    /// <summary>Twice the rating is stood for a minute (the kind's own curve; common practice, no source).</summary>
    [Fact]
    public void Breaker_TwiceItsRating_TripsAfterAMinute()
    {
        using Rig rig = new(BatteryMachine.Plan, "standing");
        rig.Do(1, "light switch", "on");
        double volts = rig.At(2, "voltage of battery");
        rig.Break(10, "headlight", "shorted", ("resistance", volts / 20));
        Assert.True(rig.At(68, "tripped of light breaker") < 0);
        Assert.True(rig.At(80, "tripped of light breaker") >= 0);
    }

    /// <summary>One ground: its lamp goes dim, the other bright, and no breaker trips. Two grounds of opposite sides are a short (common practice, no source).</summary>
    [Fact]
    public void GroundLamps_PlusGrounded_OneDarkTheOtherBright()
    {
        using Rig rig = new(BatteryMachine.Plan, "standing");
        double before = rig.At(1, "brightness of ground lamp, plus");
        Assert.Equal(before, rig.At(1.5, "brightness of ground lamp, minus"), 0.01);
        rig.Break(2, "plus", "grounded");
        Assert.InRange(rig.At(3, "brightness of ground lamp, plus"), 0, 0.01);
        Assert.InRange(rig.At(3.5, "brightness of ground lamp, minus"), 0.6, 0.8);
        Assert.True(rig.At(4, "tripped of light breaker") < 0);
    }

    [Fact]
    public void Lamp_BurntOut_Dark()
    {
        using Rig rig = new(BatteryMachine.Plan, "standing");
        rig.Do(1, "light switch", "on");
        rig.Break(2, "headlight", "burnt out");
        Assert.True(rig.At(3, "lit of headlight") < 0);
        Assert.Equal(0, rig.At(3.5, "current of headlight"), 1e-9);
    }

    /// <summary>Killed and restored in the middle it goes on to the last bit, coils included.</summary>
    [Fact]
    public void Restore_InTheMiddle_SameHashAndSlots()
    {
        using Rig whole = new(BatteryMachine.Plan, "standing");
        using Rig first = new(BatteryMachine.Plan, "standing");
        using Rig second = new(BatteryMachine.Plan, "standing");
        foreach (Rig rig in new[] { whole, first })
        {
            rig.Do(1, "light switch", "on");
            rig.Do(500, "start switch", "start");
            rig.Do(700, "light switch", "off");
        }

        whole.World.RunTo(SimTime.FromSeconds(4000));
        first.World.RunTo(SimTime.FromSeconds(503.3));
        second.World.Restore(first.World.Save());
        second.World.RunTo(SimTime.FromSeconds(4000));
        Assert.Equal(whole.World.Hash, second.World.Hash);
        for (int i = 0; i < whole.Plan.Slots.Length; i++)
        {
            Assert.Equal(whole.World.GetSlot(new(i)), second.World.GetSlot(new(i)));
        }
    }

    /// <summary>A coil that its own contact, which opens while it is up, feeds: it says so and the world goes on.</summary>
    [Fact]
    public void Contactor_FeedsItselfByABackContact_Chatters()
    {
        using Rig rig = new(Rig.Compile(BatteryMachine.Text + """

              between: { kind: wire }
              buzzer: { kind: contactor, from: between, to: minus, picks at: 40 V, drops at: 20 V }
              back contact: { kind: contact, from: plus, to: between, coil: buzzer, closes when: dropped }
            """), "standing");
        Assert.True(rig.At(1, "chattering of buzzer") >= 0);
        Assert.True(rig.At(2, "lit of headlight") < 0);
    }
}
