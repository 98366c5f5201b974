using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>From the air in a cylinder to the force at the rail.</summary>
public sealed class BrakeUnitTests
{
    private const double Psi = 6894.757293;

    private const string Book = """
        book: Units
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { cab: { x: 5 m, y: 2.4 m } }
        items:
          reservoir: { kind: reservoir, volume: 1 m^3, start pressure: 100 psi }
          cock: { kind: hand valve, from: reservoir, to: shoes, diameter: 6 mm, who: [hand], places: [cab] }
          other cock: { kind: hand valve, from: reservoir, to: pads, diameter: 6 mm, who: [hand], places: [cab] }
          shoes: { kind: brake cylinder, diameter: 8 in, travel: 4 in, count: 4, clearance: 0.5 L, leverage: 3.5, friction: 0.25 }
          pads: { kind: brake cylinder, acts on: disc, diameter: 10 in, travel: 2 in, clearance: 0.5 L, leverage: 5, friction: 0.35, radius ratio: 0.55 }
        situations:
          released: { text: "Released." }

        """;

    /// <summary>
    /// By hand: area of four pistons of 8 in 4·π/4·8² = 201.06 in², of one of 10 in 78.54 in²; force = area·(pressure − 8 psi), shoes by the lever, at the rail by friction and, for
    /// discs, radii (Coulomb; statics).
    /// </summary>
    [Fact]
    public void Force_ShoesAndPads_ByAreaLeverAndFriction()
    {
        const double PoundForce = 4.4482216152605;
        using Rig rig = new(Rig.Compile(Book), "released");
        Assert.Equal(0, rig.At(1, "retarding force of shoes"));
        Assert.Equal(0, rig.At(1, "piston travel of shoes"), 1e-6);
        rig.Do(1, "cock", "open");
        rig.Do(1, "other cock", "open");
        double shoes = (rig.At(120, "pressure of shoes") / Psi) - 8;
        double pads = (rig.At(120, "pressure of pads") / Psi) - 8;
        Assert.True(shoes > 80);
        Assert.Equal(201.062 * shoes * PoundForce, rig.At(120, "force of shoes"), 1.0);
        Assert.Equal(201.062 * shoes * 3.5 * PoundForce, rig.At(120, "shoe force of shoes"), 4.0);
        Assert.Equal(201.062 * shoes * 3.5 * 0.25 * PoundForce, rig.At(120, "retarding force of shoes"), 1.0);
        Assert.Equal(78.5398 * pads * 5 * 0.35 * 0.55 * PoundForce, rig.At(120, "retarding force of pads"), 1.0);
    }

    /// <summary>Air that is filled in is found again: what the reservoir lost fills clearance and swept volume of all pistons (Boyle), and they are out by their travel.</summary>
    [Fact]
    public void Travel_Filled_IsThatOfThePiston()
    {
        using Rig rig = new(Rig.Compile(Book), "released");
        rig.Do(1, "cock", "open");
        Assert.Equal(4 * 0.0254, rig.At(120, "piston travel of shoes"), 1e-4);
        double lost = (100 * Psi) - rig.At(120, "pressure of reservoir");
        double swept = 4 * ((Math.PI / 4 * 8 * 8 * 4 * 1.6387064e-5) + 0.0005);
        double filled = ((rig.At(120, "pressure of shoes") + 101325) * swept) - (101325 * 4 * 0.0005);
        Assert.Equal(filled, lost * 1, 0.01 * filled);
        Assert.Equal(0, rig.At(120, "piston travel of pads"), 1e-6);
    }
}
