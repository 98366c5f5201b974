using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Plant.Calculators.Fuel;

namespace Sightglass.Plant.Tests.Calculators;

/// <summary>What is under a plane in a tank, against closed forms, the machine's own tank, and a plain sum over many small columns.</summary>
public sealed class TankContentsTests
{
    private const double Degree = Math.PI / 180;

    /// <summary>Level at the two ends of a tank of 2.4 m × 1.0 m on 3°, wet all over and as a wedge; the wetted length is 2.1399703 m. Source: geometry, derived; worked out independently.</summary>
    [Theory]
    [InlineData(0.56288934, 0.43711067, 1.2, 0)]
    [InlineData(0.11215109, 0, 0.12, 1 - (2.1399703 / 2.4))]
    public void A1_11_BoxOnAGrade_FromItsGlasses_HoldsTheVolume(double first, double second, double volume, double dry)
    {
        GlassPlane plane = GlassPlane.Of(first, second, 2.4, Math.Tan(3 * Degree), 0, 0)!.Value;
        TankContents contents = new BoxTank(2.4, 1, 0.9).Under(plane);
        Assert.Equal(volume, contents.Volume, 1e-7);
        Assert.Equal(dry, contents.Dry, 1e-7);
    }

    /// <summary>R 0.6 m, L 2.5 m: V = L[R²·acos((R−h)/R) − (R−h)√(2Rh−h²)]. Source: Marks' handbook (from memory); worked out independently.</summary>
    [Theory]
    [InlineData(0.35, 0.68602155)]
    [InlineData(0.6, 1.4137167)]
    [InlineData(1.2, 2.8274334)]
    public void A1_10_LyingCylinder_OnTheLevel_HoldsTheVolume(double level, double volume) =>
        Assert.Equal(volume, new LyingTank(0.6, 2.5).Under(new(level, 0, 0)).Volume, 1e-7);

    /// <summary>On any grade, filled to anything, the tank that runs in the machine and this one say the same of each other.</summary>
    [Theory]
    [InlineData(0.01, 0.5)]
    [InlineData(0.03, 0.02)]
    [InlineData(-0.03, 0.02)]
    [InlineData(0.03, 0.87)]
    [InlineData(0, 0.4)]
    public void BoxTank_AgainstTheStoreOfTheMachine_HoldsWhatItHolds(double grade, double meanDepth)
    {
        const double length = 2.4, width = 1.1, depth = 0.9, density = 840;
        Scalar[] k = [.. PrismaticTank.ParametersOf(length * width, length, depth, density, grade).Select(v => new Scalar(v))];
        Scalar mass = new(meanDepth * length * width * density), pressure = default, capacity = default;
        PrismaticTank.Evaluate(ref mass, ref k[0], ref pressure, ref capacity);
        double middle = (pressure.V - Physical.Atmosphere) / PrismaticTank.Weight(density, grade);
        Assert.Equal(meanDepth * length * width, new BoxTank(length, width, depth).Under(new(middle, grade, 0)).Volume, 2e-6);
    }

    /// <summary>Against columns: any shape under any plane, roof included.</summary>
    [Theory]
    [InlineData(0.3, 0, 0)]
    [InlineData(0.3, 0.05, 0.02)]
    [InlineData(0.05, 0.05, 0.08)]
    [InlineData(-0.02, 0.08, -0.1)]
    [InlineData(0.85, 0.06, 0.1)]
    [InlineData(0.05, 0.08, 1e-9)]
    [InlineData(0.45, -0.1, 0.15)]
    public void Under_AnyPlane_IsTheSumOfItsColumns(double middle, double along, double across)
    {
        GlassPlane plane = new(middle, along, across);
        const double length = 2.4, width = 1.2, depth = 0.9;
        Check(new BoxTank(length, width, depth).Under(plane), length, width, (_, _) => (0, depth));
        Check(new UprightTank(0.6, depth).Under(plane), 1.2, 1.2, (x, y) => (x * x) + (y * y) < 0.36 ? (0, depth) : (0, 0));
        Check(new LyingTank(0.45, length).Under(plane), length, 0.9, (_, y) => (0.45 - Math.Sqrt(0.2025 - (y * y)), 0.45 + Math.Sqrt(0.2025 - (y * y))));

        void Check(TankContents contents, double l, double w, Func<double, double, (double Floor, double Roof)> column)
        {
            const int n = 600;
            double sum = 0;
            for (int i = 0; i < n; i++)
            {
                for (int j = 0; j < n; j++)
                {
                    (double x, double y) = (((i + 0.5) / n * l) - (l / 2), ((j + 0.5) / n * w) - (w / 2));
                    (double floor, double roof) = column(x, y);
                    sum += Math.Max(0, Math.Min(roof, middle - (along * x) - (across * y)) - floor);
                }
            }

            Assert.Equal(sum * l * w / (n * n), contents.Volume, 5e-4); // columns of a few mm: the rim of a circle is ragged by as much
        }
    }

    [Fact]
    public void Of_GlassThatShowsNothing_TakesTheOtherAndTheGrade()
    {
        Assert.Equal(new GlassPlane(0.1 - (0.03 * 1.2), 0.03, 0), GlassPlane.Of(0.1, 0, 2.4, 0.03, 0, 0));
        Assert.Equal(new GlassPlane(0.1 - (0.03 * 1.2), -0.03, 0), GlassPlane.Of(0, 0.1, 2.4, -0.03, 0, 0));
        Assert.Null(GlassPlane.Of(0, 0, 2.4, 0.03, 0, 0));
    }

    /// <summary>Glasses on the higher side of a canted tank stand lower than its middle does.</summary>
    [Fact]
    public void Of_GlassesAsideOnCant_MoveToTheMiddle() => Assert.Equal(0.4 + (0.1 * 0.5), GlassPlane.Of(0.4, 0.4, 2.4, 0, 0.1, 0.5)!.Value.Middle, 1e-15);
}
