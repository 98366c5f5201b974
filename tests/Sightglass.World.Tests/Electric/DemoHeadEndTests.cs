using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Electric;

/// <summary>The demo's head-end power at both speeds, with three coaches. Numbers are the book's own, which are invented; that standby is a lower speed without traction is common practice, no source.</summary>
public sealed class DemoHeadEndTests
{
    private const double LitrePerHour = 1e-3 / 3600;

    /// <summary>Three cars that start at once are more than standby has: the frequency falls, and after two seconds the contactor opens. One after another they stay on.</summary>
    [Fact]
    public void Standby_CarsAllAtOnce_IsKnockedDownAndOneAfterAnotherNot()
    {
        using Rig rig = DemoTrains.At("train with head-end power");
        rig.Do(10, "head-end power key", "off");
        rig.Do(20, "head-end set-up switch", "standby");
        Assert.Equal(60, rig.At(21, "frequency of head-end alternator"), 1e-3);
        rig.Do(60, "head-end power key", "on");
        Assert.True(rig.Holds(64, "starting of hotel power load of car 2"));
        Assert.True(rig.Holds(65, "overloaded of head-end alternator"));
        Assert.True(rig.Holds(80, "picked up of head-end knockdown relay"));
        Assert.Equal(0, rig.At(81, "voltage of right power line"), 1e-9);
        rig.Do(90, "head-end power key", "off");
        rig.Do(91, "hotel power breaker of car 2", "off");
        rig.Do(92, "hotel power breaker of car 3", "off");
        rig.Do(120, "head-end power key", "on");
        rig.Do(140, "hotel power breaker of car 2", "on");
        rig.Do(160, "hotel power breaker of car 3", "on");
        Assert.False(rig.Holds(200, "picked up of head-end knockdown relay"));
        Assert.True(rig.Holds(201, "every car has head-end power"));
        Assert.InRange(rig.At(202, "loading of head-end alternator"), 0.45, 0.65);
        Assert.InRange(rig.Reads(203, "head-end frequency meter"), 59, 60);
    }

    [Fact]
    public void Feed_CarsAllAtOnce_StaysOn()
    {
        using Rig rig = DemoTrains.At("train with head-end power");
        rig.Do(10, "head-end power key", "off");
        rig.Do(60, "head-end power key", "on");
        Assert.True(rig.Holds(64, "starting of hotel power load of car 2"));
        Assert.InRange(rig.Reads(65, "head-end voltmeter"), 440, 480);
        Assert.True(rig.Holds(120, "every car has head-end power"));
    }

    [Fact]
    public void Standby_ThrottleOpen_DoesNotLoad()
    {
        using Rig rig = DemoTrains.At("machine in service");
        Assert.True(rig.Holds(5, "the machine loads"));
        rig.Do(6, "head-end set-up switch", "standby");
        Assert.False(rig.Holds(10, "the machine loads"));
        rig.Do(11, "head-end set-up switch", "feed");
        Assert.True(rig.Holds(15, "the machine loads"));
    }

    /// <summary>It keeps its speed for the train: 70 L/h at full speed, 45 at standby, and 120 L/h more by the share of 600 kW that it gives.</summary>
    [Fact]
    public void Engine_AtIdleWithHeadEndPower_BurnsForItsSpeedAndItsLoad()
    {
        using Rig rig = DemoTrains.At("train with head-end power");
        double share = rig.At(60, "output of head-end alternator") / 600e3;
        Assert.InRange(share, 0.2, 0.25);
        Assert.Equal(70 + (120 * share), rig.At(61, "consumption of engine") / LitrePerHour, 0.5);
        rig.Do(70, "head-end set-up switch", "standby");
        Assert.Equal(45 + (120 * share), rig.At(80, "consumption of engine") / LitrePerHour, 0.5);
        rig.Do(90, "head-end power key", "off");
        Assert.Equal(19, rig.At(120, "consumption of engine") / LitrePerHour, 0.5);
    }
}
