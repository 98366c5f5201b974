using Sightglass.Basics.Time;
using Sightglass.Tests.Support;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>The speed of the train is said, not worked out: indicators show it and relays read it.</summary>
public sealed class SpeedTests
{
    private const double Psi = 6894.757293;

    /// <summary>One mile an hour, m/s: 1,609.344 m in 3,600 s (international mile).</summary>
    private const double Mph = 1609.344 / 3600;

    private const string Machine = """
        book: Speed
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { cab: { x: 5 m, y: 2.4 m } }
        items:
          reservoir: { kind: reservoir, volume: 100 L, start pressure: 100 psi }
          bleeder: { kind: actuated valve, from: reservoir, to: outside, diameter: 4 mm, opened by: trip }
          trip: { kind: relay, picks up when: speed > 85 mph, drops when: speed < 80 mph }
          indicator: { kind: gauge, shows: speed, scale: 0 mph .. 120 mph, resolution: 1 mph, places: [cab] }
        situations:
          standing: { text: Standing. }
          fast: { text: Too fast from the start., start: { speed: 90 mph } }

        """;

    [Fact]
    public void Relay_AboveAndBelowItsSpeeds_PicksUpAndDrops()
    {
        using Rig rig = new(Rig.Compile(Machine), "standing");
        Assert.Equal(0, rig.Reads(1, "indicator"));
        Say(rig, 10, 84.9);
        Assert.Equal(0, rig.At(11, "flow of bleeder"), 1e-12);
        Say(rig, 20, 85.6);
        Assert.Equal(86, rig.Reads(21, "indicator") / Mph, 1e-9);
        Assert.True(rig.At(21, "flow of bleeder") > 0);
        Say(rig, 30, 81);
        Assert.Equal(1, rig.At(31, "told of trip"));
        Say(rig, 40, 79.9);
        Assert.Equal(0, rig.At(41, "told of trip"));
        Assert.Equal(0, rig.At(41, "flow of bleeder"), 1e-12);
    }

    [Fact]
    public void Start_TooFast_TrippedAtOnce()
    {
        using Rig rig = new(Rig.Compile(Machine), "fast");
        Assert.Equal(1, rig.At(0.1, "told of trip"));
        Assert.Equal(90, rig.Reads(0.1, "indicator") / Mph, 1e-9);
    }

    /// <summary>The demo's penalty by overspeed: the brakes set at a service rate and the power goes; slower again it stays until the handle has stood in suppression (common practice, no source).</summary>
    [Fact]
    public void Penalty_ByOverspeed_StaysUntilReset()
    {
        using Rig rig = new(Books.Curlew, "standing with air");
        rig.Do(0.5, "independent brake handle", "released");
        Say(rig, 5, 100);
        Assert.Equal(0, rig.At(9, "told of penalty relay"));
        Say(rig, 10, 106);
        Assert.Equal(0, rig.At(11, "flow of pipe vent valve"), 1e-9);
        Assert.True(rig.At(40, "pressure of front brake cylinders") / Psi > 50);
        Assert.Equal(1, rig.At(40, "told of power knockdown relay"));
        rig.Do(41, "automatic brake handle", "suppression");
        Assert.Equal(1, rig.At(45, "told of penalty relay"));
        Say(rig, 50, 60);
        Assert.Equal(0, rig.At(51, "told of penalty relay"));
        rig.Do(60, "automatic brake handle", "release");
        Assert.Equal(110, rig.At(150, "pressure of brake pipe") / Psi, 1.0);
    }

    private static void Say(Rig rig, double at, double mph) => rig.World.Do(new WorldAction.SetInput("speed", mph * Mph), SimTime.FromSeconds(at));
}
