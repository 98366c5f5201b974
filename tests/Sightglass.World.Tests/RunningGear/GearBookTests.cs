using Sightglass.Plant.Plans;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.RunningGear;

/// <summary>Running gear of a book against statics: the same cases as of the solver, said in a book and run in a world.</summary>
public sealed class GearBookTests
{
    /// <summary>R_i = k_i·(z₀ + φ·x_i), ΣR = W, ΣR·x = W·e; a pair of springs at each x, half of it each, on an axle that weighs nothing. Source: statics; expected values worked out independently.</summary>
    [Theory]
    [InlineData(360e3, 0.10, "-2.0 0 2.2", "1 1 1", "117190.33 119909.37 122900.30")]
    [InlineData(400e3, 0.2, "-3 -1 1.5 3.2", "1 1.2 1.2 1", "89902.744 108642.37 109591.21 91863.683")]
    public void A4_14_BodyOnSprings_OffTheMiddle_CarriesTheClosedForm(double newtons, double e, string places, string stiffnesses, string expected)
    {
        double[] x = Numbers(places), k = Numbers(stiffnesses), forces = Numbers(expected);
        string book = GearMachine.Heads + FormattableString.Invariant($"  body: {{ kind: body, mass: {newtons / GearMachine.Gravity:R} kg, position: {{ x: {10 + e} m, y: 0 m, z: 2 m }} }}\n")
            + string.Concat(x.Select((at, i) => FormattableString.Invariant($"  a{i}: {{ kind: axle, position: {{ x: {10 + at} m, y: 0 m, z: 0.5 m }} }}\n")
                + GearMachine.Spring($"r{i}", "body", $"a{i}", 10 + at, 1, k[i] * 1e6) + GearMachine.Spring($"l{i}", "body", $"a{i}", 10 + at, -1, k[i] * 1e6)));
        using Rig rig = new(Rig.Compile(book), "standing");
        for (int i = 0; i < x.Length; i++)
        {
            Assert.Equal(forces[i], rig.Axle(1, $"a{i}"), 1e-4 * forces[i]); // the axle gives by a part in 10⁵ on its rail, the source's ground does not
            Assert.Equal(forces[i] / 2 / GearMachine.Gravity, rig.At(2, $"spring load of r{i}"), 1e-4 * forces[i]);
        }
    }

    /// <summary>
    /// A frame on three points: a bar across the front axle that carries it in the middle, two springs on the rear axle. Whatever is wedged under one end of the bar, the front wheels carry alike, and the frame stands as it stood. On four springs they do not. Source: statics, the lever.
    /// </summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A4_14_Truck_WedgedOnOneSide_CarriesEquallyOnlyWhenEqualised(bool equalised)
    {
        string book = GearMachine.Heads + """
              bogie: { kind: truck frame, mass: 30 t, position: { x: 5 m, y: 0 m, z: 1 m } }
              bar: { kind: equaliser, lies: across, mass: 200 kg, position: { x: 4 m, y: 0 m, z: 0.6 m } }
              front: { kind: axle, mass: 4 t, position: { x: 4 m, y: 0 m, z: 0.5 m } }
              rear: { kind: axle, mass: 4 t, position: { x: 6 m, y: 0 m, z: 0.5 m } }

            """ + GearMachine.Spring("rear right", "bogie", "rear", 6, 1, 1e6) + GearMachine.Spring("rear left", "bogie", "rear", 6, -1, 1e6) + GearMachine.Spring("right end", "bar", "front", 4, 1, 1e6) + GearMachine.Spring("left end", "bar", "front", 4, -1, 3e6)
            + (equalised ? GearMachine.Spring("seat", "bogie", "bar", 4, 0, 1e6) : GearMachine.Spring("right seat", "bogie", "bar", 4, 1, 1e7) + GearMachine.Spring("left seat", "bogie", "bar", 4, -1, 1e7));
        using Rig rig = new(Rig.Compile(book), "standing");
        Assert.Equal(38.2e3 * GearMachine.Gravity, rig.Axle(1, "front") + rig.Axle(2, "rear"), 0.01);
        Assert.Equal(19.2e3 * GearMachine.Gravity, rig.Axle(3, "front"), 1.0);
        rig.Break(4, "right end", "packed", ("lost", 1));
        double[] wheels = rig.Wheels(5, "front", "rear");
        Assert.Equal(equalised, Math.Abs(wheels[0] - wheels[1]) < 0.1);
        Assert.Equal(equalised, Math.Abs(wheels[2] - wheels[3]) < 0.1);
        Assert.Equal(19.2e3, wheels[0] + wheels[1], 1.0);
    }

    /// <summary>Fuel that runs out lightens the side that it leaves, within what is told on (50 kg); nobody touches anything else.</summary>
    [Fact]
    public void Tank_RunsOut_WheelsFollow()
    {
        using Rig rig = new(GearMachine.AlikePlan, "standing");
        double[] before = rig.Wheels(1, "a1", "a2", "a3", "a4");
        Assert.All(before, w => Assert.Equal(before[0], w, 1e-3));
        rig.Do(2, "drain", "open");
        foreach (double at in new[] { 30, 120, 600.0 })
        {
            double[] now = rig.Wheels(at, "a1", "a2", "a3", "a4");
            double right = rig.At(at, "mass of tank, right"), left = rig.At(at, "mass of tank, left");
            Assert.Equal(70e3 + 16e3 + 16e3 + right + left, now.Sum(), 50 + 1e-3);

            // The lever from 1 m at which the tanks hang to 0.75 m at which the wheels stand.
            double sides = now.Where((_, i) => i % 2 == 0).Sum() - now.Where((_, i) => i % 2 == 1).Sum();
            Assert.Equal((right - left) / 0.75, sides, 50 / 0.75);
        }

        Assert.True(rig.At(600, "mass of tank, right") < 1000);
        Assert.True(rig.At(600, "lean of body") < -1e-3);
    }

    /// <summary>At its end a spring is told, its height is its least one, and another in its place mends it; a wedge keeps it long.</summary>
    [Fact]
    public void Spring_MissingOrPacked_ShowsByItsHeight()
    {
        using Rig rig = new(GearMachine.AlikePlan, "standing");
        double usual = rig.Reads(1, "p1 right");
        Assert.Equal(1 - (((70e3 + 16e3 + 4e3 * 0.84 * 1.0) / 8 * GearMachine.Gravity) / 1.2e6), usual, 0.02);
        rig.Break(2, "p1 right", "packed", ("lost", 0.95));
        Assert.True(rig.At(3, "solid of p1 right") > 0);
        Assert.Equal(0.9625, rig.At(4, "height of p1 right"), 1e-3);
        rig.Mend(5, "p1 right", "packed");
        rig.Break(6, "p1 right", "missing");
        double[] now = rig.Wheels(7, "a1", "a2", "a3", "a4");
        Assert.Equal(0, rig.At(8, "spring load of p1 right"), 1e-9);
        Assert.True(now[0] < now[1] && now[3] < now[2], string.Join(' ', now));
        rig.Mend(9, "p1 right", "missing");
        Assert.Equal(usual, rig.Reads(10, "p1 right"), 1e-9);
    }

    /// <summary>A trial that asks about the tank alone neither solves springs nor hands weights on.</summary>
    [Fact]
    public void Only_NobodyAsksForWeights_LeavesThemOut()
    {
        Plan plan = GearMachine.AlikePlan, tank = plan.Only([plan.FindSignal("volume of tank, right")!]), wheel = plan.Only([plan.FindSignal("right wheel load of a1")!]);
        Assert.Empty(tank.Resolvers);
        Assert.DoesNotContain(tank.Switches, s => s.Follows);
        Assert.Single(wheel.Resolvers);
        Assert.Equal(2, wheel.Switches.Count(s => s.Follows));
    }

    private static double[] Numbers(string text) => [.. text.Split(' ').Select(t => double.Parse(t, System.Globalization.CultureInfo.InvariantCulture))];
}
