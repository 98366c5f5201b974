namespace Sightglass.World.Tests.Trade;

/// <summary>What stops an engine besides want of fuel, and keeps it from starting. Common practice, no source.</summary>
public sealed class EngineProtectionTests
{
    [Fact]
    public void StopButton_Pushed_StopsItAndKeepsItFromStartingUntilItIsOut()
    {
        using Rig rig = new(Books.Curlew, "idle, nothing wrong");
        Assert.True(Runs(rig, 5));
        rig.Do(10, "engine stop button", "pushed");
        Assert.False(Runs(rig, 11));
        rig.Do(20, "engine start station", "start");
        Assert.False(Runs(rig, 40));
        rig.Do(41, "engine start station", "off");
        rig.Do(60, "engine stop button", "out");
        rig.Do(70, "engine start station", "start");
        Assert.True(Runs(rig, 95));
    }

    /// <summary>A hole of 40 mm empties 200 L of water in a few minutes; the button stays out until it is pushed in, and comes out again as long as there is no water.</summary>
    [Fact]
    public void Water_LeakingAway_StopsItAndTheButtonTells()
    {
        using Rig rig = new(Books.Curlew, "idle, nothing wrong");
        rig.Break(10, "expansion tank", "leak", ("diameter", 0.04));
        Assert.Equal(0, rig.Reads(5, "low water button"));
        Assert.False(Runs(rig, 900));
        Assert.Equal(1, rig.Reads(901, "low water button"));
        rig.Do(910, "engine trip reset", "pushed");
        rig.Do(915, "engine trip reset", "rest");
        Assert.Equal(1, rig.Reads(920, "low water button"));
        rig.Do(930, "engine start station", "start");
        Assert.False(Runs(rig, 960));
    }

    [Fact]
    public void Engine_Seized_StopsAndIsNotTurned()
    {
        using Rig rig = new(Books.Curlew, "idle, nothing wrong");
        rig.Break(10, "engine", "seized", ("", 1));
        Assert.False(Runs(rig, 11));
        rig.Do(20, "engine start station", "start");
        Assert.False(Runs(rig, 60));
    }

    /// <summary>With half of both screens blocked notch 8 asks for more than passes, idle does not; the flag stays red until it is reset.</summary>
    [Fact]
    public void Intakes_HalfBlocked_SmokeUnderLoadAndLeaveTheFlagRed()
    {
        using Rig rig = new(Books.Curlew, "machine that loads");
        Assert.Equal(0, rig.Reads(5, "engine air filter indicator"));
        foreach (string side in new[] { "right", "left" })
        {
            rig.Break(10, $"engine intake, {side}", "blocked", ("share", 0.7));
        }

        rig.Do(20, "throttle", "notch 8");
        Assert.Equal(1, rig.Reads(60, "engine air filter indicator"));
        rig.Do(70, "throttle", "idle");
        Assert.Equal(1, rig.Reads(80, "engine air filter indicator"));
        rig.Do(90, "air filter flag reset", "pushed");
        rig.Do(95, "air filter flag reset", "rest");
        Assert.Equal(0, rig.Reads(100, "engine air filter indicator"));
    }

    private static bool Runs(Rig rig, double seconds) => rig.At(seconds, "running of engine") >= 0;
}
