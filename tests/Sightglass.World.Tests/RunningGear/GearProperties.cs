using CsCheck;
using Sightglass.Tests.Support;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.RunningGear;

/// <summary>What holds of every load on a book's springs. Source: statics.</summary>
public sealed class GearProperties
{
    private static readonly string[] s_axles = ["a1", "a2", "a3", "a4"];

    private static readonly Gen<(double Mass, double Along, double Across)> s_loads = Gen.Select(Gen.Double[10, 8e3], Gen.Double[-5, 5], Gen.Double[-1, 1]);

    /// <summary>With any load and any spring weak, what the wheels carry is the weight, and its moments are the load's.</summary>
    [Fact]
    public void Wheels_AnyLoadAndAWeakSpring_CarryTheWeightAndItsMoments() =>
        Gen.Select(s_loads, Gen.Int[1, 4], Gen.Double[0.05, 0.95]).Holds((load, axle, lost) =>
        {
            using Rig rig = new(GearMachine.AlikePlan, "standing");
            double before = rig.Wheels(1, s_axles).Sum();
            rig.Break(2, "body", "extra load", ("mass", load.Mass), ("along", load.Along), ("across", load.Across));
            rig.Break(3, $"p{axle} left", "cracked", ("lost", lost));
            double[] wheels = rig.Wheels(4, s_axles);
            double[] x = [2.7, 2.7, 5.3, 5.3, 14.7, 14.7, 17.3, 17.3];
            Assert.Equal(before + load.Mass, wheels.Sum(), 1e-6 * before);
            Assert.Equal(load.Mass * load.Along, wheels.Select((w, i) => w * (x[i] - 10)).Sum(), 1e-5 * before);
            Assert.Equal(load.Mass * load.Across, wheels.Select((w, i) => w * (i % 2 == 0 ? 0.75 : -0.75)).Sum(), 1e-5 * before);
        }, iter: 60);

    [Fact]
    public void Wheels_MirroredLoad_AreMirrored() =>
        s_loads.Holds(load =>
        {
            double[] one = Loaded(load), other = Loaded(load with { Across = -load.Across }), turned = Loaded(load with { Along = -load.Along });
            for (int i = 0; i < 8; i += 2)
            {
                Assert.Equal(one[i], other[i + 1], 0.01);
                Assert.Equal(one[i + 1], other[i], 0.01);
                Assert.Equal(one[i], turned[6 - i], 0.01);
            }
        }, iter: 40);

    private static double[] Loaded((double Mass, double Along, double Across) load)
    {
        using Rig rig = new(GearMachine.AlikePlan, "standing");
        rig.Break(1, "body", "extra load", ("mass", load.Mass), ("along", load.Along), ("across", load.Across));
        return rig.Wheels(2, s_axles);
    }
}
