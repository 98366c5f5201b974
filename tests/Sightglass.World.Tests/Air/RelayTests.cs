using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>Relays whose conditions the book says.</summary>
public sealed class RelayTests
{
    private const double Psi = 6894.757293;

    private const string Machine = """
        book: Relays
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { cab: { x: 5 m, y: 2.4 m } }
        items:
          reservoir: { kind: reservoir, volume: 100 L, start pressure: 100 psi }
          drain: { kind: hand valve, from: reservoir, to: outside, diameter: 4 mm, who: [hand], places: [cab] }
          overspeed: { kind: switch, who: [hand], places: [cab] }
          handle: { kind: handle, positions: [release, suppression, emergency], who: [hand], places: [cab] }
          penalty: { kind: relay, picks up when: on of overspeed, drops when: suppression of handle and not on of overspeed }
          late: { kind: relay, picks up when: on of overspeed, drops when: not on of overspeed, after: 5 s }
          low air: { kind: relay, picks up when: pressure of reservoir < 60 psi, drops when: pressure of reservoir > 90 psi }
          knockdown: { kind: relay, picks up when: picked up of penalty or picked up of low air, drops when: release of handle and not picked up of penalty and not picked up of low air }
          bleeder: { kind: actuated valve, from: reservoir, to: outside, opened by: penalty, diameter: 1 mm }
          emergency vent: { kind: actuated valve, from: reservoir, to: outside, opened by: handle, openings: { release: 0 %, suppression: 0 %, emergency: 100 % }, diameter: 25 mm }
          feed: { kind: regulating valve, from: reservoir, to: small, diameter: 3 mm, set: 50 psi, cut out by: penalty }
          small: { kind: reservoir, volume: 1 L }
          lamp: { kind: lamp, lit when: picked up of knockdown, places: [cab] }
        situations:
          charged: { text: Charged. }
          stuck: { text: The relay sticks., faults: [ { fault: stuck, on: penalty } ] }
          low: { text: Low from the start., start: { pressure of reservoir: 50 psi } }

        """;

    /// <summary>A switch picks it up at once; it holds when the switch goes back, and drops by the handle. What it opens and cuts out follows.</summary>
    [Fact]
    public void Relay_SwitchOnAndOff_HoldsUntilTheHandleResetsIt()
    {
        using Rig rig = new(Rig.Compile(Machine), "charged");
        Assert.Equal(0, rig.At(9, "told of penalty"));
        rig.Do(10, "overspeed", "on");
        Assert.Equal(1, rig.At(10.01, "told of penalty"));
        Assert.True(rig.At(11, "flow of bleeder") > 0);
        rig.Do(12, "handle", "suppression");
        Assert.Equal(1, rig.At(13, "told of penalty"));
        rig.Do(14, "overspeed", "off");
        Assert.Equal(0, rig.At(14.01, "told of penalty"));
        Assert.Equal(0, rig.At(15, "flow of bleeder"));
        Assert.Equal(1, rig.At(15, "told of knockdown"));
        rig.Do(16, "handle", "release");
        Assert.Equal(0, rig.At(16.01, "told of knockdown"));
    }

    /// <summary>With a delay it picks up when its condition has held so long, and not for less (first-order lag, derived: half of the way after the delay).</summary>
    [Fact]
    public void Relay_WithADelay_PicksUpAfterIt()
    {
        using Rig rig = new(Rig.Compile(Machine), "charged");
        rig.Do(10, "overspeed", "on");
        rig.Do(13, "overspeed", "off");
        Assert.Equal(0, rig.At(30, "told of late"));
        rig.Do(60, "overspeed", "on");
        Assert.Equal(0, rig.At(64.9, "told of late"));
        Assert.Equal(1, rig.At(65.1, "told of late"));
        rig.Do(70, "overspeed", "off");
        Assert.Equal(0, rig.At(70.1, "told of late"));
    }

    /// <summary>Cut out by it, a valve neither supplies nor exhausts.</summary>
    [Fact]
    public void CutOut_ByARelayThatIsPickedUp_Shut()
    {
        using Rig rig = new(Rig.Compile(Machine), "charged");
        Assert.Equal(50, rig.At(60, "pressure of small") / Psi, 1.0);
        rig.Do(60, "overspeed", "on");
        Assert.Equal(0, rig.At(61, "flow of feed"), 1e-9);
    }

    /// <summary>A pressure picks it up on its crossing: within a thousandth of a psi.</summary>
    [Fact]
    public void Relay_PressureFalls_PicksUpOnTheCrossing()
    {
        using Rig rig = new(Rig.Compile(Machine), "charged");
        rig.Do(1, "drain", "open");
        double t = 1;
        while (rig.At(t += 0.25, "told of low air") < 0.5)
        {
            Assert.True(t < 200);
        }

        Assert.InRange(rig.At(t, "pressure of reservoir") / Psi, 58, 60);
        Assert.Equal(1, rig.At(t, "told of knockdown"));
    }

    /// <summary>What holds already when a situation begins has picked up.</summary>
    [Fact]
    public void Start_ConditionHolds_PickedUp()
    {
        using Rig rig = new(Rig.Compile(Machine), "low");
        Assert.Equal(1, rig.At(0.1, "told of low air"));
        Assert.Equal(1, rig.At(0.1, "told of knockdown"));
    }

    /// <summary>Stuck it stays dropped.</summary>
    [Fact]
    public void Stuck_SwitchOn_Nothing()
    {
        using Rig rig = new(Rig.Compile(Machine), "stuck");
        rig.Do(10, "overspeed", "on");
        Assert.Equal(0, rig.At(20, "told of penalty"));
    }

    /// <summary>A valve that a handle opens: 100 L from 100 psi through 25 mm choked falls by 1/e in V/(C·ρ₀·R·T): about 1.7 s (choked flow with a wall that keeps the temperature, derived).</summary>
    [Fact]
    public void Actuated_HandleInEmergency_EmptiesAtOnce()
    {
        using Rig rig = new(Rig.Compile(Machine), "charged");
        rig.Do(10, "handle", "emergency");
        double rate = 0.62 * Math.PI * 0.025 * 0.025 / 4 * 0.6847 * Math.Sqrt(287.05 * 293.15) / 0.1;
        Assert.Equal((114.695949 * Math.Exp(-rate)) - 14.695949, rig.At(11, "pressure of reservoir") / Psi, 0.3);
    }
}
