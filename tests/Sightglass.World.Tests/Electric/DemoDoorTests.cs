using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Electric;

/// <summary>The communication line of the demo's trains: doors, loops, announcements, buzzer, brake lights. Where no other source is named: common practice, no source.</summary>
public sealed class DemoDoorTests
{
    private const string Turned = "bet, doors of a turned car";
    private const string Local = "train at the platform, doors shut";

    /// <summary>Trade 20: the conductor opens the right doors in a coach; those of the turned car open on its own left, which is the same side of the train.</summary>
    [Fact]
    public void Doors_Trade20TurnedCar_OpenOnTheSameSideOfTheTrain()
    {
        using Rig rig = DemoTrains.At(Turned);
        Assert.True(rig.Holds(1, "picked up of doors closed relay"));
        OpenRight(rig, 2, car: 3);
        for (int car = 2; car <= 5; car++)
        {
            Assert.True(rig.Holds(3 + (0.1 * car), $"right doors of car {car} are open"), $"car {car}");
        }

        Assert.True(rig.Holds(4, "left doors of car 6 are open"));
        Assert.True(rig.Holds(5, "closed of A end right door of car 6"));
        Assert.False(rig.Holds(6, "picked up of doors closed relay"));
        rig.Do(7, "right door switch of car 3", "shut all");
        Assert.True(rig.Holds(8, "doors of every car are shut"));
        Assert.True(rig.Holds(9, "picked up of doors closed relay"));
    }

    /// <summary>Trade 20: two wires crossed once more in a plug, and the doors of what is behind it open on the wrong side.</summary>
    [Fact]
    public void Doors_Trade20WiresCrossedInAPlug_OpenOnTheWrongSide()
    {
        using Rig rig = DemoTrains.At(Turned);
        rig.Break(1, "communication line jumper between car 5 and car 6", "crossed pins", ("pin", 5), ("other", 6));
        OpenRight(rig, 2, car: 3);
        Assert.True(rig.Holds(3, "right doors of car 6 are open"));
        Assert.True(rig.Holds(4, "right doors of car 5 are open"));
        Assert.True(rig.Holds(5, "closed of A end left door of car 6"));
    }

    /// <summary>From the panel of the turned car: its own right is the left of the train.</summary>
    [Fact]
    public void Doors_Trade20OpenedInTheTurnedCar_AnswerOnItsOwnSide()
    {
        using Rig rig = DemoTrains.At(Turned);
        OpenRight(rig, 2, car: 6);
        Assert.True(rig.Holds(3, "right doors of car 6 are open"));
        Assert.True(rig.Holds(4, "left doors of car 4 are open"));
        Assert.True(rig.Holds(5, "closed of A end right door of car 4"));
    }

    [Fact]
    public void Doors_TrainMoves_SwitchOpensNothing()
    {
        using Rig rig = DemoTrains.At(Local);
        rig.Goes(1, 20);
        OpenRight(rig, 2, car: 2);
        Assert.True(rig.Holds(3, "doors of every car are shut"));
        rig.Goes(4, 0);
        Assert.True(rig.Holds(5, "right doors of car 1 are open"));
    }

    /// <summary>A contact that does not make: the lamps of its car disagree, those before it are both dark, and the throttle gives nothing until the door is locked out.</summary>
    [Fact]
    public void Loop_ContactOpen_LampsSayWhichCarAndTheCutOutPassesIt()
    {
        using Rig rig = DemoTrains.At(Local);
        Assert.True(rig.Holds(1, "power is available"));
        rig.Break(2, "B end left door contact of car 2", "does not close");
        Assert.False(rig.Holds(3, "power is available"));
        Assert.False(rig.Holds(4, "lit of doors closed lamp"));
        Assert.False(rig.Holds(5, "lit of B loop lamp of car 1"));
        Assert.False(rig.Holds(6, "lit of A loop lamp of car 2"));
        Assert.True(rig.Holds(7, "lit of B loop lamp of car 2"));
        Assert.True(rig.Holds(8, "lit of A loop lamp of car 3"));
        rig.Do(9, "door bypass", "on");
        Assert.True(rig.Holds(10, "power is available"));
        Assert.False(rig.Holds(11, "lit of doors closed lamp"));
        rig.Do(12, "door bypass", "off");
        rig.Do(13, "B end left door cut-out of car 2", "locked out");
        Assert.True(rig.Holds(14, "lit of doors closed lamp"));
        Assert.True(rig.Holds(15, "power is available"));
    }

    [Theory]
    [InlineData("B communication receptacle of car 3", "cover contact open")]
    [InlineData("communication line jumper at the rear", "not home")]
    [InlineData("communication line jumper between car 2 and car 3", "not home")]
    public void Loop_OpenAtAPlug_LightStaysDark(string item, string fault)
    {
        using Rig rig = DemoTrains.At(Local);
        rig.Break(1, item, fault);
        Assert.False(rig.Holds(2, "lit of doors closed lamp"));
        Assert.False(rig.Holds(3, "lit of B loop lamp of car 3"));
        Assert.True(rig.Holds(4, "doors of every car are shut"));
    }

    /// <summary>The loop is passed on by what stands between: a trailing machine, a car without doors in it.</summary>
    [Fact]
    public void Loop_ThroughATrailingMachine_IsOneLoop()
    {
        using Rig rig = DemoTrains.At("double-headed express, charged");
        Assert.True(rig.Holds(1, "lit of doors closed lamp"));
        rig.Do(2, "A end right door of car 6", "open");
        Assert.False(rig.Holds(3, "lit of doors closed lamp"));
    }

    /// <summary>Trade 16, on the wire of the announcements: open at a pin, everything from there on is silent.</summary>
    [Fact]
    public void Announcement_Trade16OpenPin_IsHeardUpToThePlug()
    {
        using Rig rig = DemoTrains.At(Local);
        rig.Do(1, "announcement button", "speaking");
        Assert.True(rig.Holds(2, "an announcement is heard in car 3"));
        rig.Break(3, "communication line jumper between car 2 and car 3", "open pin", ("pin", 3));
        Assert.True(rig.Holds(4, "an announcement is heard in car 2"));
        Assert.False(rig.Holds(5, "an announcement is heard in car 3"));
        rig.Do(6, "buzzer button of car 3", "pushed");
        Assert.True(rig.Holds(7, "the buzzer is heard"));
        rig.Do(8, "communication breaker", "off");
        Assert.False(rig.Holds(9, "the buzzer is heard"));
    }

    [Fact]
    public void BrakeLights_ApplicationAndRelease_TellOnlyWhenEveryCarHas()
    {
        using Rig rig = DemoTrains.At("local train, charged");
        Assert.True(rig.Holds(20, "lit of brakes released lamp"));
        Assert.False(rig.Holds(21, "lit of brakes set lamp"));
        rig.Do(22, "automatic brake handle", "full service");
        Assert.True(rig.Holds(90, "lit of brakes set lamp"));
        Assert.False(rig.Holds(91, "lit of brakes released lamp"));
        rig.Break(92, "set contact of car 2", "does not close");
        Assert.False(rig.Holds(93, "lit of brakes set lamp"));
        rig.Do(94, "automatic brake handle", "release");
        Assert.True(rig.Holds(240, "lit of brakes released lamp"));
        Assert.True(rig.Holds(241, "picked up of released switch of car 3"));
    }

    private static void OpenRight(Rig rig, double at, int car)
    {
        rig.Do(at, $"door key of car {car}", "on");
        rig.Do(at + 0.1, $"right door switch of car {car}", "open all");
    }
}
