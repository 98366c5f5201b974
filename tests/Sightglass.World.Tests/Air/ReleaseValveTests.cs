using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>A car charged higher than the brake pipe now stands holds its brake until it is let off by hand (common practice, no source).</summary>
public sealed class ReleaseValveTests
{
    private const double Psi = 6894.757293;

    private static string Car(string release) => $$"""
        book: Release
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { side: { x: 5 m, y: 2.4 m } }
        items:
          main reservoir: { kind: reservoir, volume: 1 m^3, start pressure: 140 psi }
          handle: { kind: handle, positions: [high, low], who: [hand], places: [side] }
          equalising reservoir: { kind: reservoir, volume: 4 L, start pressure: 125 psi }
          handle valve: { kind: regulating valve, from: main reservoir, to: equalising reservoir, diameter: 2 mm, exhaust diameter: 1.6 mm, width: 1 psi, set by: handle, pressures: { high: 125 psi, low: 110 psi } }
          relay: { kind: relay valve, from: main reservoir, to: brake pipe, follows: equalising reservoir, diameter: 5 mm, exhaust diameter: 8 mm, width: 1 psi }
          brake pipe: { kind: air line, length: 25 m, diameter: 32 mm, start pressure: 125 psi }
          auxiliary reservoir: { kind: reservoir, volume: 26 L, start pressure: 125 psi }
          cylinder: { kind: brake cylinder, diameter: 200 mm, travel: 150 mm }
          control valve: { kind: control valve, from: auxiliary reservoir, to: cylinder, senses: brake pipe, diameter: 4 mm, exhaust diameter: 3 mm, release: {{release}} }
          release valve: { kind: release valve, lets down: control valve, diameter: 3 mm, who: [hand], places: [side] }
        situations:
          high: { text: Charged to 125 psi. }

        """;

    /// <summary>
    /// The next machine gives 110 psi: the brake stays set though its handle stands in release. Held open a while, the valve lets it off and it stays off. The auxiliary reservoir of a graduated
    /// car keeps what it has above the brake pipe, that of a direct one is what was let down.
    /// </summary>
    [Theory]
    [InlineData("graduated")]
    [InlineData("direct")]
    public void Open_ChargedTooHigh_LetsTheBrakeOff(string release)
    {
        using Rig rig = new(Rig.Compile(Car(release)), "high");
        rig.Do(10, "handle", "low");
        Assert.True(rig.At(300, "pressure of cylinder") > 10 * Psi);
        Assert.Equal(0, rig.At(300, "flow of release valve"), 1e-12);
        rig.Do(301, "release valve", "open");
        Assert.True(rig.At(301.1, "flow of release valve") > 0);
        rig.Do(311, "release valve", "closed");
        Assert.InRange(rig.At(400, "pressure of cylinder") / Psi, -0.1, 1);
        Assert.Equal(110, rig.At(400, "pressure of brake pipe") / Psi, 1.5);
        double left = rig.At(400, "pressure of auxiliary reservoir") / Psi;
        Assert.InRange(left, release == "graduated" ? 113 : 106, release == "graduated" ? 125 : 112);
    }
}
