using Sightglass.Basics.Diagnostics;
using Sightglass.Plant.Plans;
using Sightglass.Tests.Support;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>A machine hauled dead lives on the brake pipe of another one: its reservoir through a check valve and a small hole, its cylinders at a lower greatest pressure (common practice, no source).</summary>
public sealed class DeadEngineTests
{
    private const double Psi = 6894.757293;

    private const string Text = """
        book: Dead engine
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { cab: { x: 5 m, y: 2.4 m } }
        items:
          hauling reservoir: { kind: reservoir, volume: 40 m^3, start pressure: 140 psi }
          handle: { kind: handle, positions: [release, full service], who: [hand], places: [cab] }
          equalising reservoir: { kind: reservoir, volume: 4 L, start pressure: 110 psi }
          handle valve: { kind: regulating valve, from: hauling reservoir, to: equalising reservoir, diameter: 2 mm, exhaust diameter: 1.6 mm, width: 1 psi, set by: handle, pressures: { release: 110 psi, full service: 84 psi } }
          relay: { kind: relay valve, from: hauling reservoir, to: brake pipe, follows: equalising reservoir, diameter: 12 mm, exhaust diameter: 12 mm, width: 1 psi }
          brake pipe: { kind: air line, length: 40 m, diameter: 32 mm, start pressure: 110 psi }
          dead engine cock: { kind: hand valve, from: brake pipe, to: dead engine line, diameter: 12 mm, usual: closed, who: [hand], places: [cab] }
          dead engine line: { kind: air line, volume: 0.5 L }
          dead engine check: { kind: check valve, from: dead engine line, to: main reservoir, diameter: 3 mm, opens at: 18 psi }
          main reservoir: { kind: reservoir, volume: 450 L }
          brake reservoir: { kind: reservoir, volume: 100 L, start pressure: 110 psi }
          changeover: { kind: handle, positions: [full, reduced], who: [hand], places: [cab] }
          control valve: { kind: control valve, from: brake reservoir, to: cylinder, senses: brake pipe, diameter: 5 mm, exhaust diameter: 4 mm, limited by: changeover, limits: { full: 60 psi, reduced: 25 psi } }
          cylinder: { kind: brake cylinder, diameter: 250 mm, travel: 100 mm }
        situations:
          charged: { text: The brake pipe is charged. }

        """;

    private static readonly Lazy<Plan> s_plan = new(() => Rig.Compile(Text));

    /// <summary>
    /// Choked through 3 mm from 124.7 psi absolute until the reservoir has 0.528 of that, 51.2 psi: t = V·Δp/(C·A·0.6847·√(R·T)·p₁) = 0.45 m³ · 353 kPa/(0.62 · 7.069 mm² · 0.6847 · 290.1 m/s ·
    /// 859.8 kPa) = 212 s (choked flow of an ideal gas at one temperature, derived). It ends 18 psi below the pipe and does not come back when the pipe is emptied by a reduction.
    /// </summary>
    [Fact]
    public void Cock_Opened_FillsTheReservoirSlowlyAndNotToTheTop()
    {
        using Rig rig = new(s_plan.Value, "charged");
        Assert.Equal(0, rig.At(59, "pressure of main reservoir") / Psi, 1e-6);
        rig.Do(60, "dead engine cock", "open");
        Assert.Equal(51.2, rig.At(60 + 212, "pressure of main reservoir") / Psi, 1.5);
        Assert.True(rig.At(60 + 600, "pressure of main reservoir") / Psi > 84);
        double full = rig.At(3600, "pressure of main reservoir") / Psi;
        Assert.InRange(full, 110 - 18 - 4, 110 - 18 + 0.1);
        rig.Do(3600, "handle", "full service");
        Assert.Equal(full, rig.At(3900, "pressure of main reservoir") / Psi, 0.01);
    }

    /// <summary>2.5·(26 − 3) = 57.5 psi at full, 25 psi at reduced; changed while the brake is set, the cylinder goes to the other one.</summary>
    [Fact]
    public void Changeover_FullService_SetsTheGreatestCylinderPressure()
    {
        using Rig rig = new(s_plan.Value, "charged");
        rig.Do(1, "changeover", "reduced");
        rig.Do(10, "handle", "full service");
        Assert.Equal(25, rig.At(100, "pressure of cylinder") / Psi, 1.0);
        rig.Do(100, "changeover", "full");
        Assert.Equal(57.5, rig.At(200, "pressure of cylinder") / Psi, 3.0);
        rig.Do(200, "changeover", "reduced");
        Assert.Equal(25, rig.At(300, "pressure of cylinder") / Psi, 1.0);
        rig.Do(300, "handle", "release");
        Assert.InRange(rig.At(400, "pressure of cylinder") / Psi, -0.1, 1);
    }

    /// <summary>Without the handle a valve has the bits that it had: its greatest pressure is a number of its sheet.</summary>
    [Fact]
    public void Limit_OfOneHandlePosition_SameAsGreatest()
    {
        using Rig handle = new(s_plan.Value, "charged");
        using Rig number = new(Rig.Compile(Text.Replace("limited by: changeover, limits: { full: 60 psi, reduced: 25 psi }", "greatest: 60 psi", StringComparison.Ordinal)), "charged");
        foreach (Rig rig in (Rig[])[handle, number])
        {
            rig.Do(10, "handle", "full service");
        }

        Assert.Equal(number.At(100, "pressure of cylinder"), handle.At(100, "pressure of cylinder"));
    }

    /// <summary>The demo: hauled dead and charged, full service of the other machine gives it 25 psi, and release lets it go; its springs are let off by what the brake pipe brought.</summary>
    [Fact]
    public void Demo_HauledDead_BrakesFromTheOtherMachinesPipe()
    {
        DiagnosticList found = new();
        Plan plan = PlanCompiler.Compile(Books.Curlew.Book.Coupled("machine in tow"), found)!;
        using Rig rig = new(plan, "dead behind another machine, charged");
        Assert.True(rig.At(1, "the machine can be hauled") >= 0);
        rig.Do(10, "automatic brake handle of unit 2", "full service");
        Assert.Equal(25, rig.At(100, "pressure of rear brake cylinders") / Psi, 1.5);
        Assert.Equal(57.5, rig.At(100, "pressure of rear brake cylinders of unit 2") / Psi, 3.0);
        rig.Do(100, "automatic brake handle of unit 2", "release");
        Assert.True(rig.At(200, "brakes of both trucks are released") >= 0);
        rig.Do(200, "automatic brake handle of unit 2", "emergency");
        Assert.Equal(25, rig.At(260, "pressure of front brake cylinders") / Psi, 1.5);
        Assert.Equal(0, rig.At(260, "force of right spring brake"), 1e-6);
    }
}
