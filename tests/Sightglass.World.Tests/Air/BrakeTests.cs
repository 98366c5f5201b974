using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>Brake pipe, control valves, cylinders: one vehicle under a handle.</summary>
public sealed class BrakeTests
{
    private const double Psi = 6894.757293;

    /// <summary>A vehicle whose auxiliary reservoir has 3.25 times the volume that its cylinder's piston sweeps, charged to 70 psi; a handle that takes the brake pipe down and up.</summary>
    private static string Vehicle(string valve) => $$"""
        book: Brakes
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { cab: { x: 5 m, y: 2.4 m } }
        items:
          main reservoir: { kind: reservoir, volume: 1 m^3, start pressure: 140 psi }
          handle: { kind: handle, positions: [release, r10, r15, r30], who: [hand], places: [cab] }
          equalising reservoir: { kind: reservoir, volume: 4 L, start pressure: 70 psi }
          handle valve: { kind: regulating valve, from: main reservoir, to: equalising reservoir, diameter: 2 mm, exhaust diameter: 1.6 mm, width: 1 psi, set by: handle, pressures: { release: 70 psi, r10: 60 psi, r15: 55 psi, r30: 40 psi } }
          relay: { kind: relay valve, from: main reservoir, to: brake pipe, follows: equalising reservoir, diameter: 5 mm, exhaust diameter: 8 mm, width: 1 psi }
          brake pipe: { kind: air line, length: 25 m, diameter: 32 mm, start pressure: 70 psi }
          auxiliary reservoir: { kind: reservoir, volume: 26 L, start pressure: 70 psi }
          cylinder: { kind: brake cylinder, diameter: 200 mm, travel: 254.324 mm, clearance: 0.01 L, moves at: 0.1 psi, out at: 0.2 psi }
          control valve: { kind: control valve, from: auxiliary reservoir, to: cylinder, senses: brake pipe, diameter: 4 mm, exhaust diameter: 3 mm, width: 0.5 psi, {{valve}} }
          vent valve: { kind: vent valve, from: brake pipe, diameter: 25 mm, trips at: 6 psi, chamber: 1 L, choke diameter: 2 mm }
          conductor's valve: { kind: hand valve, from: brake pipe, to: outside, diameter: 25 mm, who: [hand], places: [cab] }
        situations:
          charged: { text: "Charged, released.", start: { pressure of brake pipe: 70 psi } }

        """;

    /// <summary>
    /// p = k·r − p_a in a cylinder swept from nothing, k = 3.25; beyond r = 19.93 psi both equalise at 50.07 psi (Boyle; tolerance against the closed form 0.5 psi, of
    /// practice 3 psi: a 1913 air-brake text, read in excerpt).
    /// </summary>
    [Theory]
    [InlineData("r10")]
    [InlineData("r15")]
    [InlineData("r30")]
    public void A2_08_Reduction_DirectValve_CylinderByBoyle(string position)
    {
        using Rig rig = new(Rig.Compile(Vehicle("release: direct")), "charged");
        rig.Do(10, "handle", position);
        double reduction = 70 - (rig.At(240, "pressure of brake pipe") / Psi);
        double expected = Math.Min((3.25 * reduction) - 14.695949, 50.071541);
        Assert.Equal(expected, rig.At(240, "pressure of cylinder") / Psi, 0.5);
    }

    /// <summary>Direct release: a rise of the brake pipe by a few psi lets the brake off to the end (common practice, no source).</summary>
    [Fact]
    public void Release_DirectValve_PartOfTheWay_GoesToTheEnd()
    {
        using Rig rig = new(Rig.Compile(Vehicle("release: direct")), "charged");
        rig.Do(10, "handle", "r15");
        Assert.True(rig.At(120, "pressure of cylinder") > 30 * Psi);
        rig.Do(120, "handle", "r10");
        Assert.Equal(0, rig.At(300, "pressure of cylinder") / Psi, 0.2);
    }

    /// <summary>Graduated release: the cylinder holds ratio·(reduction − insensitivity), up and down again (common practice, no source).</summary>
    [Fact]
    public void Release_GraduatedValve_PartOfTheWay_HoldsTheRest()
    {
        using Rig rig = new(Rig.Compile(Vehicle("release: graduated, ratio: 2.5, insensitivity: 3 psi, greatest: 50 psi, reference volume: 4 L")), "charged");
        rig.Do(10, "handle", "r15");
        Assert.Equal(2.5 * (15 - 3), rig.At(120, "pressure of cylinder") / Psi, 2.0);
        rig.Do(120, "handle", "r10");
        Assert.Equal(2.5 * (10 - 3), rig.At(240, "pressure of cylinder") / Psi, 2.0);
        rig.Do(240, "handle", "r30");
        Assert.Equal(50, rig.At(360, "pressure of cylinder") / Psi, 1.0);
        rig.Do(360, "handle", "release");
        Assert.Equal(0, rig.At(600, "pressure of cylinder") / Psi, 0.2);
    }

    /// <summary>A service reduction leaves the vent valve shut, an opened conductor's valve trips it and empties the pipe (common practice, no source).</summary>
    [Fact]
    public void VentValve_ServiceAndEmergency_OpensOnlyInTheSecond()
    {
        using Rig rig = new(Rig.Compile(Vehicle("release: direct")), "charged");
        rig.Do(10, "handle", "r30");
        for (double at = 10; at < 60; at += 0.5)
        {
            Assert.Equal(0, rig.At(at, "flow of vent valve"), 1e-9);
        }

        rig.Do(60, "conductor's valve", "open");
        double most = 0;
        for (double at = 60; at < 63; at += 0.1)
        {
            most = Math.Max(most, rig.At(at, "flow of vent valve"));
        }

        Assert.True(most > 0.05, $"{most} m³/s");
        Assert.True(rig.At(65, "pressure of brake pipe") < 12 * Psi);
    }

    /// <summary>The relay gives the brake pipe the equalising reservoir's pressure, whatever leaks from the pipe (maintaining; common practice, no source).</summary>
    [Fact]
    public void Relay_PipeLeaking_KeepsTheSetPressure()
    {
        string book = Vehicle("release: direct").Replace("released.\",", "released.\", faults: [ { fault: leak, on: brake pipe, diameter: 2 mm } ],", StringComparison.Ordinal);
        using Rig rig = new(Rig.Compile(book), "charged");
        Assert.Equal(70, rig.At(300, "pressure of brake pipe") / Psi, 1.0);
        Assert.Equal(rig.At(300, "leak flow of brake pipe"), rig.At(300, "flow of relay"), 0.02 * rig.At(300, "flow of relay"));
    }
}
