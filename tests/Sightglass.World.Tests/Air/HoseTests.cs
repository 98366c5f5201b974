using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>Hoses at the end of a vehicle, coupled to nothing.</summary>
public sealed class HoseTests
{
    private const double Psi = 6894.757293;
    private const double CubicFootPerMinute = 0.028316846592 / 60;

    private const string End = """
        book: Hoses
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { end: { x: 5 m, y: 2.4 m } }
        items:
          reservoir: { kind: reservoir, volume: 50 m^3, start pressure: 130 psi }
          angle cock: { kind: hand valve, from: reservoir, to: hose, diameter: 60 mm, who: [hand], places: [end] }
          hose: { kind: hose, length: 0.6 m, diameter: 32 mm, head diameter: 6 mm }
        situations:
          closed: { text: Cock closed. }
          burst: { text: A torn hose behind an open cock., start: { angle cock: open }, faults: [ { fault: burst, on: hose, after: 5 s } ] }

        """;

    /// <summary>
    /// 76 scfm through 6 mm at 130 psi with Cd 0.65 (trade scenario 14, computed), so 72.5 with 0.62; the cock before it takes 0.1 % of that. Before the cock opens nothing blows, and
    /// once it is shut the hose runs empty.
    /// </summary>
    [Fact]
    public void Head_CoupledToNothing_BlowsWhileTheCockIsOpen()
    {
        using Rig rig = new(Rig.Compile(End), "closed");
        Assert.Equal(0, rig.At(9, "head flow of hose") / CubicFootPerMinute, 1e-6);
        rig.Do(10, "angle cock", "open");
        Assert.Equal(72.5, rig.At(11, "head flow of hose") / CubicFootPerMinute, 1.0);
        rig.Do(11, "angle cock", "closed");
        Assert.Equal(0, rig.At(30, "pressure of hose") / Psi, 0.01);
    }

    /// <summary>Torn through, a hose blows by its own cross-section: (32/6)² of what its head lets go, at the pressure that is left in it.</summary>
    [Fact]
    public void Burst_BehindAnOpenCock_BlowsByItsCrossSection()
    {
        using Rig rig = new(Rig.Compile(End), "burst");
        Assert.Equal(0, rig.At(4.9, "leak flow of hose"), 1e-9);
        double ratio = rig.At(5.5, "leak flow of hose") / rig.At(5.5, "head flow of hose");
        Assert.Equal(32.0 * 32 / 36, ratio, 0.01);
    }
}
