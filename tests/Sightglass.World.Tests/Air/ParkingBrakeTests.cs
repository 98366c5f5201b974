using Sightglass.Plant.Calculators;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>Spring-applied, air-released parking brakes (common practice, no source, unless said).</summary>
public sealed class ParkingBrakeTests
{
    private const double Psi = 6894.757293;

    private static string Machine(string more) => $$"""
        book: Parking brake
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { ground: { x: 5 m, y: 2.4 m } }
        items:
          main reservoir: { kind: reservoir, volume: 900 L, start pressure: 130 psi }
          parking brake valve: { kind: cutout cock, from: main reservoir, to: spring brake, diameter: 6 mm, vent diameter: 4 mm, who: [hand], places: [ground] }
          spring brake: { kind: spring brake, volume: 3 L, spring force: 60 kN, begins at: 60 psi, start pressure: 130 psi{{more}} }
          spring brake release: { kind: spring brake release, releases: [spring brake], arms at: 60 psi, who: [hand], places: [ground] }
          service valve: { kind: hand valve, from: main reservoir, to: service cylinder, diameter: 6 mm, who: [hand], places: [ground] }
          service cylinder: { kind: brake cylinder, diameter: 200 mm, travel: 80 mm }
        situations:
          charged: { text: Air holds the spring back. }
          in tow: { text: "Dead in tow, the main reservoir leaks.", faults: [ { fault: leak, on: main reservoir, diameter: 1.6 mm } ] }

        """;

    /// <summary>
    /// Dead in tow and losing air: the spring begins to drag under way, when the reservoir has come down to where it begins. Isothermal choked blow-down, t = τ·ln(p₀/p) with
    /// τ = V/(Cd·A·ψ·√(RT)) (A2-02; White, Fluid Mechanics, ch. 9, from memory).
    /// </summary>
    [Fact]
    public void Trade_09_DeadInTow_LosingAir_DragsWhenTheReservoirIsDown()
    {
        using Rig rig = new(Rig.Compile(Machine("")), "in tow");
        double area = 0.62 * Math.PI / 4 * 1.6e-3 * 1.6e-3;
        double decay = 0.903 / (area * 0.68473146 * Math.Sqrt(287.05 * 293.15));
        double begins = decay * Math.Log((130 + 14.695949) / (60 + 14.695949));
        Assert.Equal(0, rig.At(0.99 * begins, "force of spring brake"));
        Assert.True(rig.At(1.02 * begins, "force of spring brake") > 0);
        Assert.True(rig.At(2 * begins, "force of spring brake") > 20_000);
    }

    /// <summary>
    /// Released by hand on 1 %, a machine of 130 short tons is drawn by 2,600 lb and nothing holds it; air that comes back arms the spring again, and losing it then applies the brake.
    /// </summary>
    [Fact]
    public void Trade_10_ReleasedByHand_NothingHoldsUntilAirArmsIt()
    {
        Assert.Equal(2600, ParkingHold.Force(2000 * 130, 0.01), 1.0);
        using Rig rig = new(Rig.Compile(Machine("")), "charged");
        rig.Do(1, "parking brake valve", "closed");
        Assert.Equal(60_000, rig.At(60, "force of spring brake"), 1000.0);
        rig.Do(60, "spring brake release", "pulled");
        Assert.Equal(0, rig.At(61, "force of spring brake"));
        Assert.Equal(0, rig.At(3600, "force of spring brake"));
        rig.Do(3600, "parking brake valve", "open");
        Assert.Equal(0, rig.At(3700, "force of spring brake"));
        rig.Do(3700, "parking brake valve", "closed");
        Assert.Equal(60_000, rig.At(3800, "force of spring brake"), 1000.0);
    }

    /// <summary>Pulled while its air holds the spring back, the release does nothing that lasts.</summary>
    [Fact]
    public void Release_PulledWithAirIn_StaysArmed()
    {
        using Rig rig = new(Rig.Compile(Machine("")), "charged");
        rig.Do(1, "spring brake release", "pulled");
        rig.Do(10, "parking brake valve", "closed");
        Assert.Equal(60_000, rig.At(120, "force of spring brake"), 1000.0);
    }

    /// <summary>Service brake on a spring brake: without anti-compounding the forces add, with it the spring gives way to the air in the cylinder.</summary>
    [Theory]
    [InlineData("", true)]
    [InlineData(", anti-compounded by: service cylinder", false)]
    public void Trade_11_ServiceOnSpringBrake_AddsUnlessAntiCompounded(string more, bool adds)
    {
        using Rig rig = new(Rig.Compile(Machine(more)), "charged");
        rig.Do(1, "parking brake valve", "closed");
        double spring = rig.At(60, "force of spring brake");
        rig.Do(60, "service valve", "open");
        double service = rig.At(120, "force of service cylinder");
        Assert.True(service > 20_000);
        Assert.Equal(adds ? spring : 0, rig.At(120, "force of spring brake"), 1.0);
    }
}
