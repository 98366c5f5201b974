using Sightglass.Plant.Calculators.Weight;

namespace Sightglass.Plant.Tests.Calculators;

/// <summary>Wheel loads against statics, and against an elimination of its own with nine coordinates (three of each of body and trucks), worked out apart from this program.</summary>
public sealed class WheelLoadsTests
{
    private const double Gravity = 9.80665;

    private static readonly WheelLoads s_loco = new()
    {
        Body = [(72e3, 0.1, 0.05), (3 * 840, 2, 0), (2 * 840, 0, 0), (840, -2, 0)],
        Truck = 8e3,
        Wheelset = 4e3,
        TruckDistance = 9,
        AxleDistance = 2.7,
        SpringBase = 2,
        WheelBase = 1.5,
        BodySpring = 1.5e6,
        AxleSpring = 1.2e6,
        Clearance = 0.03,
    };

    /// <summary>Equalised trucks, two pivots with a pull at a height: ±F·h/L, axle loads of a truck equal. Source: statics, derived.</summary>
    [Fact]
    public void A4_14_PullAtAHeight_ShiftsLoadToTheRearTruck()
    {
        WheelForces f = (s_loco with { Body = [(1.18e6 / Gravity, 0, 0)], Truck = 0, Wheelset = 0, Pull = 180e3 * 0.85 }).Solve()!;
        Assert.Equal(573_000, f.Wheels.Take(4).Sum(), 0.01);
        Assert.Equal(607_000, f.Wheels.Skip(4).Sum(), 0.01);
        Assert.All(f.Wheels.Take(4), w => Assert.Equal(573_000 / 4.0, w, 0.01));
    }

    /// <summary>With all springs alike each wheel has its share of the weight and of its moments. Source: statics, R = W/N + W·e·x/Σx² for each body; the side's share by the lever from springs to wheels.</summary>
    [Fact]
    public void A4_14_AllSpringsAlike_GiveTheClosedForm()
    {
        double moment = (72e3 * 0.1) + (3 * 840 * 2.0) - (840 * 2.0), sides = 72e3 * 0.05;
        double total = 72e3 + (6 * 840) + 16e3 + 16e3;
        WheelForces f = s_loco.Solve()!;
        for (int i = 0; i < 8; i++)
        {
            double expected = (total / 8) + ((i < 4 ? 1 : -1) * moment / 9 / 4) + ((i % 2 == 0 ? 1 : -1) * sides / 1.5 / 4);
            Assert.Equal(expected, f.Wheels[i] / Gravity, 0.01);
        }
    }

    /// <summary>kg at each wheel: one of two coils gone and the frame clear of its stop; a spring gone and the frame on its stop after 30 mm. From the elimination apart; the stop 10⁹ N/m there too.</summary>
    [Theory]
    [InlineData(0.5, 0.06, 10734.9547, 17111.7119, 17089.6543, 10757.0123, 14547.6955, 12125.6379, 0)]
    [InlineData(0, 0.03, 12437.4444, 15409.2223, 15936.3549, 11910.3118, 14273.1004, 12400.2330, 10808.917)]
    public void Broken_ForemostOnTheRight_LoadsTheOtherDiagonal(double left, double clearance, double r1, double l1, double r2, double l2, double rear, double rearLeft, double stop)
    {
        WheelForces f = (s_loco with { Broken = 0, Left = left, Clearance = clearance }).Solve()!;
        Assert.Equal([r1, l1, r2, l2, rear, rearLeft, rear, rearLeft], f.Wheels.Select(w => w / Gravity), (a, b) => Math.Abs(a - b) < 0.1); // the wheels give a little on their rails here, not there
        Assert.Equal(stop, f.Stop / Gravity, 0.1);
        Assert.Equal(109_040, f.Wheels.Sum() / Gravity, 0.001);
    }

    /// <summary>Whichever spring breaks, the same happens seen from there.</summary>
    [Fact]
    public void Broken_AnyPlace_IsTheMirrorImage()
    {
        WheelLoads even = s_loco with { Body = [(80e3, 0, 0)], Left = 0 };
        double[] first = [.. (even with { Broken = 0 }).Solve()!.Wheels];
        double[] last = [.. (even with { Broken = 7 }).Solve()!.Wheels];
        Assert.Equal(first, last.Reverse(), (a, b) => Math.Abs(a - b) < 1e-3);
    }

    /// <summary>Without a stop the wheel whose spring is gone is levered off its rail by the other side, and nothing holds its wheelset.</summary>
    [Fact]
    public void Broken_WithoutAStop_DoesNotStand() => Assert.Null((s_loco with { Broken = 0, Left = 0, Clearance = 10 }).Solve());

    /// <summary>A spring that is nearly gone holds the wheelset, but its wheel carries nothing.</summary>
    [Fact]
    public void Broken_NearlyGoneWithoutAStop_LiftsItsWheel()
    {
        WheelForces f = (s_loco with { Broken = 0, Left = 0.02, Clearance = 10 }).Solve()!;
        Assert.Equal(0, f.Wheels[0], 1e-6);
        Assert.Equal(109_040, f.Wheels.Sum() / Gravity, 0.001);
    }
}
