using CsCheck;
using Sightglass.Network.Compile;
using Sightglass.Network.Springs;

namespace Sightglass.Network.Tests.Springs;

/// <summary>What holds of every vehicle on springs. Source: statics.</summary>
public sealed class SuspensionProperties
{
    private static readonly Gen<Stack.Shape> s_shapes =
        Gen.Select(Gen.Double[5e5, 4e6], Gen.Double[2e5, 1e6], Gen.Double[3e5, 1.2e6], Gen.Double[-1.5, 1.5], Gen.Double[-0.3, 0.3], (p, s, w, x, y) => new Stack.Shape(p, s, w, x, y));

    /// <summary>With one spring gone and up to two more softened, what the wheels carry is the weight, and its moments are those of the weight.</summary>
    [Fact]
    public void Wheels_OfAVehicleWithSoftSprings_CarryTheWeightAndItsMoments() =>
        Gen.Select(s_shapes, Gen.Select(Gen.Int[0, 15], Gen.Double[0.05, 1]).Array[0, 2], Gen.Int[0, 15]).Holds((shape, soft, gone) =>
        {
            Stack stack = new(shape);
            SuspensionState s = stack.With([.. soft.Select(x => (stack.Softened[x.Item1], x.Item2)), (stack.Softened[gone], 0)]);
            Assert.Equal(StandOutcome.Stands, s.Outcome);
            double[] wheels = [.. stack.Wheels.Select(w => s.Force(w))];
            double all = shape.Weight + 80e3;
            Assert.Equal(all, wheels.Sum(), 1e-6 * all);
            Assert.Equal(shape.Weight * shape.X, wheels.Zip(stack.WheelPlaces, (f, p) => f * p.X).Sum(), 1e-6 * all);
            Assert.Equal(shape.Weight * shape.Y, wheels.Zip(stack.WheelPlaces, (f, p) => f * p.Y).Sum(), 1e-6 * all);
        });

    [Fact]
    public void Wheels_OfTheMirroredVehicle_AreMirrored() =>
        s_shapes.Holds(shape =>
        {
            double[] one = Forces(shape), other = Forces(shape with { Y = -shape.Y });
            for (int i = 0; i < one.Length; i += 2)
            {
                Assert.Equal(one[i], other[i + 1], 1e-6 * shape.Weight);
                Assert.Equal(one[i + 1], other[i], 1e-6 * shape.Weight);
            }
        });

    /// <summary>All springs stiffer by one factor leave every load as it was.</summary>
    [Fact]
    public void Wheels_OnStifferSprings_CarryTheSame() =>
        Gen.Select(s_shapes, Gen.Double[0.2, 5]).Holds((shape, factor) =>
        {
            double[] one = Forces(shape with { Pivot = 4e7 }), other = Forces(shape with { Pivot = 4e7 * factor, Stiffer = factor });
            Assert.All(one.Zip(other), w => Assert.Equal(w.First, w.Second, 1e-6 * shape.Weight));
        });

    /// <summary>A secondary spring gone loads its own side of its own end less than any softening of it does.</summary>
    [Fact]
    public void Spring_ThatSoftens_UnloadsTheWheelsBesideItSteadily() =>
        s_shapes.Holds(shape =>
        {
            Stack stack = new(shape with { Y = 0 });
            Input spring = stack.Softened[0];
            double[] beside = [.. new[] { 1, 0.5, 0.1, 0.0 }.Select(f => stack.With((spring, f))).Select(s => s.Force(stack.Wheels[0]) + s.Force(stack.Wheels[2]))];
            Assert.Equal(beside.OrderDescending(), beside);
            Assert.True(beside[0] > beside[^1]);
        });

    private static double[] Forces(Stack.Shape shape)
    {
        Stack stack = new(shape);
        SuspensionState s = stack.With();
        Assert.Equal(StandOutcome.Stands, s.Outcome);
        return [.. stack.Wheels.Select(w => s.Force(w))];
    }
}
