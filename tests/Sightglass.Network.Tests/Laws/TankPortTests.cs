using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Network.Laws.Liquid.Ends;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

public sealed class TankPortTests
{
    private const double Density = 840;

    private const double Viscosity = 3e-6;

    private const double LitrePerMinute = 1e-3 / 60 * Density;

    /// <summary>
    /// A hole 0.5 m below the level of 2 m²; 0.5 L/min are burnt, or 9 L/min moved away. Source: a list of trade scenarios (common practice), numbers from the assumptions.
    /// </summary>
    [Theory]
    [InlineData(0.006, 0.5, 20 * 3600, 790)]
    [InlineData(0.012, 0.5, 20 * 3600, 934)]
    [InlineData(0.006, 9, 90 * 60, 192)]
    [InlineData(0.012, 9, 58 * 60, 475)]
    public void Hole_BelowTheLevel_SpillsWhatThePractitionersSay(double diameter, double litresPerMinute, double seconds, double litres)
    {
        SmallNetwork net = new() { RelativeTolerance = 1e-8 };
        int tank = net.Add<PrismaticTank>(PrismaticTank.ParametersOf(2, 2.4, 1.2, Density), 0.8 * 2 * Density);
        int ground = net.Add<FixedStore>([Physical.Atmosphere], 0);
        int user = net.Add<FixedStore>([Physical.Atmosphere], 0);
        net.Join<LiquidPath<TankPort, LiquidOrifice, AirEnd>>(Hole(0.3, diameter / 2, diameter), [1], tank, ground);
        net.Join<LiquidDemand>(LiquidDemand.ParametersOf(Physical.Atmosphere, 10), [litresPerMinute * LitrePerMinute], tank, user);
        net.RunTo(seconds);
        Assert.Equal(litres, net.Amount(ground) / Density * 1000, 0.005 * litres);
    }

    /// <summary>Below its lowest edge nothing runs out; above its highest all that the orifice passes.</summary>
    [Fact]
    public void Hole_UncoveredOrCovered_PassesNothingOrAll()
    {
        double[] hole = Hole(0.3, 0.01, 0.02);
        Assert.Equal(0, Flow(hole, 0.2899));
        double orifice = LawProbe.Flow<LiquidOrifice>(
            [Physical.Atmosphere + (0.05 * Density * Physical.Gravity), Physical.Atmosphere],
            LiquidOrifice.ParametersOf(0.62, Math.PI * 1e-4, Density, Viscosity), 1);
        Assert.Equal(orifice, Flow(hole, 0.35), 1e-12);
        Assert.InRange(Flow(hole, 0.3), 0.001, orifice / 2);
    }

    /// <summary>A floor that rises by 3 % leaves a port 1 m uphill 30 mm less deep than one in the middle. Source: geometry.</summary>
    [Fact]
    public void Port_OnATiltedFloor_StandsWhereTheSurfaceIs()
    {
        double[] middle = TankPort.ParametersOf(0.1, 0.01, Density, 0.03);
        double[] uphill = TankPort.ParametersOf(0.1, 0.01, Density, 0.03, 1);
        Assert.Equal(0.030, (middle[0] - uphill[0]) / PrismaticTank.Weight(Density, 0.03), 1e-12);
    }

    /// <summary>A drain in the floor cannot draw more than there is: its mouth stands on the floor.</summary>
    [Fact]
    public void Drain_AtTheFloor_NeverEmptiesMoreThanTheTank()
    {
        SmallNetwork net = new() { RelativeTolerance = 1e-8 };
        int tank = net.Add<PrismaticTank>(PrismaticTank.ParametersOf(0.1, 0.3, 1, Density), 0.2 * 0.1 * Density);
        int ground = net.Add<FixedStore>([Physical.Atmosphere], 0);
        net.Join<LiquidPath<TankPort, LiquidOrifice, AirEnd>>(Hole(0, 0.01, 0.02), [1], tank, ground);
        net.RunTo(1000);
        Assert.InRange(net.Amount(tank), 0, 0.002 * 0.1 * Density);
    }

    /// <summary>What comes in above full runs out at the vent's top, and the level stands a little above it.</summary>
    [Fact]
    public void Vent_OfATankFilledOver_PassesTheRest()
    {
        SmallNetwork net = new() { RelativeTolerance = 1e-8 };
        int tank = net.Add<PrismaticTank>(PrismaticTank.ParametersOf(0.5, 1, 0.8, Density), 0.79 * 0.5 * Density);
        int ground = net.Add<FixedStore>([Physical.Atmosphere], 0);
        int source = net.Add<FixedStore>([Physical.Atmosphere], 0);
        net.Join<LiquidPath<TankPort, LiquidOrifice, AirEnd>>(Hole(1.0, 0.02, 0.04), [1], tank, ground);
        net.Join<LiquidDemand>(LiquidDemand.ParametersOf(0, 10), [9 * LitrePerMinute], source, tank);
        net.RunTo(60);
        double before = net.Amount(ground);
        net.RunTo(120);
        Assert.Equal(9, (net.Amount(ground) - before) / Density * 1000, 0.01);
        Assert.InRange((net.Potential(tank) - Physical.Atmosphere) / (Density * Physical.Gravity), 0.98, 1.02);
    }

    private static double[] Hole(double height, double radius, double diameter) =>
        LiquidPath<TankPort, LiquidOrifice, AirEnd>.ParametersOf(
            LiquidOrifice.ParametersOf(0.62, Math.PI / 4 * diameter * diameter, Density, Viscosity), TankPort.ParametersOf(height, radius, Density), [0], 1e-5);

    private static double Flow(double[] hole, double level) =>
        LawProbe.Flow<LiquidPath<TankPort, LiquidOrifice, AirEnd>>(
            [Physical.Atmosphere + (level * Density * Physical.Gravity), Physical.Atmosphere], hole, 1);
}
