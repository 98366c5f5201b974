using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.RunningGear;

/// <summary>The demo's weights against statics, worked out from masses and places alone.</summary>
public sealed class DemoWheelTests
{
    private const double Density = 840;

    private static readonly string[] s_axles = ["first axle", "second axle", "third axle", "fourth axle"];

    /// <summary>All springs of a stage alike: the weight by eight, its moment along by the 12.2 m between the trucks, its moment across by the 1.5 m between the rails. Source: statics; masses and places from the book's files.</summary>
    [Theory]
    [InlineData("over the shop pit", 1, 1)]
    [InlineData("aft compartment emptied", 1, 1)]
    [InlineData("sand on the right alone", 1, 0)]
    public void Wheels_EverySpringWhole_AreTheClosedForm(string situation, double sand, double sandLeft)
    {
        using Rig rig = new(Books.Curlew, situation);
        (double Mass, double X, double Y)[] body =
        [
            (73e3, 10.58, -0.005), (rig.At(1, "volume of forward compartment") * Density, 8.07, 0), (rig.At(1, "volume of centre compartment") * Density, 9.225, 0),
            (rig.At(1, "volume of aft compartment") * Density, 11.69, 0), (250 * sand, 3.70, 1.5), (250 * sandLeft, 3.70, -1.5), (250 * sand, 16.30, 1.5),
        ];
        double total = body.Sum(b => b.Mass) + (2 * 9e3) + (4 * 5.5e3), along = body.Sum(b => b.Mass * (b.X - 10.5)), across = body.Sum(b => b.Mass * b.Y);
        double[] wheels = rig.Wheels(1, s_axles);
        for (int i = 0; i < 8; i++)
        {
            double expected = (total / 8) + ((i < 4 ? -1 : 1) * along / 12.2 / 4) + ((i % 2 == 0 ? 1 : -1) * across / 1.5 / 4);
            Assert.Equal(expected, wheels[i], 25.0); // three compartments, each told on within 50 kg
        }

        Assert.True(rig.At(1, w => w.Value(rig.Plan.Facts["the wheel loads are right"])) >= 0);
        Assert.InRange(rig.Reads(2, "coupler height, front"), 0.82, 0.88);
        Assert.InRange(rig.Reads(2, "coupler height, rear"), 0.82, 0.88);
    }

    /// <summary>Full it weighs what its head says: some 120 t. Whatever breaks, the weight stays.</summary>
    [Fact]
    public void Wheels_SpringGone_WeighTheSameAndAcrossTheTruckLosesToo()
    {
        using Rig rig = new(Books.Curlew, "over the shop pit");
        double[] before = rig.Wheels(1, s_axles);
        rig.Break(2, "first axle spring, right", "missing");
        double[] now = rig.Wheels(3, s_axles);
        Assert.Equal(before.Sum(), now.Sum(), 0.01);
        Assert.InRange(before.Sum() + (0.3 * 7300 * 0.84), 118e3, 122e3);
        Assert.True(now[0] < before[0] - 1e3 && now[3] < before[3] - 1e3 && now[1] > before[1] + 1e3 && now[2] > before[2] + 1e3, string.Join(' ', now));
        Assert.True(rig.At(4, w => w.Value(rig.Plan.Facts["the wheel loads are right"])) < 0);
        rig.Do(5, "front truck spring set", "new");
        Assert.All(rig.Wheels(6, s_axles).Zip(before), w => Assert.Equal(w.Second, w.First, 0.01));
    }

    /// <summary>Snow on the right of the roof: the right side by the lever, and the machine leans and shows it.</summary>
    [Fact]
    public void Wheels_SnowOnOneSide_LeanShows()
    {
        using Rig rig = new(Books.Curlew, "snow on one side");
        double[] wheels = rig.Wheels(1, s_axles);
        double sides = wheels.Where((_, i) => i % 2 == 0).Sum() - wheels.Where((_, i) => i % 2 == 1).Sum();
        Assert.Equal(((2e3 * (1 - 0.005)) + (250 * 1.5) - (73e3 * 0.005)) / 0.75, sides, 1.0); // the load lies 1 m beside the middle of the body, which is 5 mm off
        Assert.True(rig.At(2, "lean of machine body") > 0);
    }
}
