using CsCheck;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Tests.Trade;

/// <summary>A gauge that knows two of four compartments (common practice, no source).</summary>
public sealed class QuadrantProperties
{
    private const double Hour = 3600;
    private static readonly string[] s_quadrants = ["front right", "front left", "rear left", "rear right"];
    private static readonly Plan s_plan = Rig.Compile(QuadrantMachine.Text);

    /// <summary>
    /// Joined and settled, the gauge is exact on any grade and cant at which the floors stay wet and the roofs dry. 1e-4 of the whole: what the
    /// step control leaves of a difference between levels.
    /// </summary>
    [Fact]
    public void Trade_Gauge_TwoOfFourJoinedAndSettled_ExactOnAnyGradeAndCant() =>
        Gen.Select(Gen.Double[-0.04, 0.04], Gen.Double[-0.1, 0.1], Gen.ULong[0, 1000]).Holds(
            (grade, cant, number) =>
            {
                using Rig rig = Tilted(grade, cant, number);
                double shown = rig.At(3 * Hour, Shown);
                double truth = rig.At(3 * Hour, Whole) / QuadrantMachine.Capacity;
                return Math.Abs(shown - truth) < 1e-4;
            },
            iter: 40);

    /// <summary>With the walls shut and 100 L pumped from one to its neighbour the sum is the same and the gauge is 5.2 % lower: 2 × 100 L of 3,840 L.</summary>
    [Fact]
    public void Trade_Gauge_TwoOfFourAfterATransfer_IsWrong() =>
        Gen.Select(Gen.Double[-0.04, 0.04], Gen.Double[-0.1, 0.1], Gen.ULong[0, 1000]).Holds(
            (grade, cant, number) =>
            {
                using Rig rig = Tilted(grade, cant, number);
                foreach (string wall in (string[])["front valve", "left valve", "rear valve", "right valve"])
                {
                    rig.Do(3 * Hour, wall, "closed");
                }

                rig.Do((3 * Hour) + 60, "transfer switch", "on");
                rig.Do((3 * Hour) + 180, "transfer switch", "off");
                double shown = rig.At(4 * Hour, Shown);
                double truth = rig.At(4 * Hour, Whole) / QuadrantMachine.Capacity;
                return Math.Abs(truth - shown - (0.2 / QuadrantMachine.Capacity)) < 2e-4;
            },
            iter: 20);

    /// <summary>2,200 US gal at 300 US gal/min: 7.33 min, in a tank whose float does not come into it. 0.1 %: the flow is that of an opening at 1 bar.</summary>
    [Fact]
    public void Trade_Fill_2200GallonsAt300_Takes7_33Minutes()
    {
        const string Text = """
            book: Filling
            edition: "1"
            notice: Invented.
            length: 10 m
            width: 3 m
            items:
              tank: { kind: tank, position: { x: 5 m, y: 0 m, z: 0.4 m }, shape: prismatic, length: 5 m, width: 2 m, depth: 1 m, ports: { neck: { height: 0.95 m } } }
              port: { kind: fill port, from: outside, to: "tank, neck", flow: 300 US gal/min, closes at height: 940 mm, usual: filling }
            situations:
              empty: { start: { volume of tank: 1 L } }
            """;
        using Rig rig = new(Rig.Compile(Text), "empty");
        const double Gallon = 3.785411784e-3;
        const double Seconds = 2200.0 / 300 * 60;
        Assert.Equal(0, rig.At(0, "spilled of tank"));
        Assert.Equal((2200 * Gallon) + 1e-3, rig.At(Seconds, "volume of tank"), 2.2 * Gallon);
        Assert.Equal(300 * Gallon / 60, rig.At(Seconds, "flow of port"), 0.3 * Gallon / 60);
    }

    private static Rig Tilted(double grade, double cant, ulong number)
    {
        Rig rig = new(s_plan, "standing", number);
        rig.World.Do(new WorldAction.SetInput("grade", grade), SimTime.Zero);
        rig.World.Do(new WorldAction.SetInput("cant", cant), SimTime.Zero);
        return rig;
    }

    private static double Shown(World world) => world.Value(world.Plan.Items["gauge"].Shown!);

    private static double Whole(World world) => s_quadrants.Sum(q => world.Value(world.Plan.FindSignal($"volume of {q}")!));
}
