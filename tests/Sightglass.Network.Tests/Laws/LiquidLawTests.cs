using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

/// <summary>What each liquid law is for. Common practice, no source.</summary>
public sealed class LiquidLawTests
{
    private const double Density = 840;

    private static readonly double[] s_orifice = LiquidOrifice.ParametersOf(0.62, 1e-4, Density, 3e-6);

    private static readonly double[] s_check = LiquidCheckValve.ParametersOf(s_orifice, 5e3, 2e3);

    private static readonly double[] s_float = FloatValve.ParametersOf(s_orifice, 108_000, 200);

    private static readonly double[] s_pump = DisplacementPump.ParametersOf(20e-6, 2e-11, Density, 4e5, 4e-4);

    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(-1e5, 0, 0)]
    [InlineData(4999, 0, 0)]
    [InlineData(7001, 0, 1)]
    [InlineData(1e5, 0, 1)]
    [InlineData(-1e5, 0.01, 0.01)]
    [InlineData(-1e5, 1, 1)]
    public void CheckValve_AtADifference_IsOpenByAShare(double difference, double passing, double share)
    {
        double whole = LawProbe.Flow<LiquidOrifice>([2e5 + difference, 2e5], s_orifice, 1);
        Assert.Equal(share * whole, LawProbe.Flow<LiquidCheckValve>([2e5 + difference, 2e5], s_check, 1, passing), 1e-12);
    }

    [Fact]
    public void CheckValve_HalfLifted_PassesHalf()
    {
        double whole = LawProbe.Flow<LiquidOrifice>([2.06e5, 2e5], s_orifice, 1);
        Assert.Equal(whole / 2, LawProbe.Flow<LiquidCheckValve>([2.06e5, 2e5], s_check, 1, 0), 1e-12);
    }

    [Theory]
    [InlineData(107_999, 1)]
    [InlineData(108_100, 0.5)]
    [InlineData(108_201, 0)]
    public void FloatValve_WithThePilotAt_IsOpenByAShare(double pilot, double share)
    {
        double whole = LawProbe.Flow<LiquidOrifice>([2e5, 1.08e5], s_orifice, 1);
        Assert.Equal(share * whole, LawProbe.Flow<FloatValve>([2e5, 1.08e5, pilot], s_float, 1), 1e-12);
    }

    [Theory]
    [InlineData(0.05, 2e4, 0.7)]
    [InlineData(0.2, 1e3, 1)]
    public void Filter_AtItsRatedDrop_PassesItsRatedFlow(double flow, double drop, double linear)
    {
        double[] k = LiquidFilter.ParametersOf(flow, drop, linear);
        Assert.Equal(flow, LawProbe.Flow<LiquidFilter>([drop, 0], k, 0), 1e-12);
        Assert.Equal(flow, LawProbe.Flow<LiquidFilter>([3 * drop, 0], k, 2), 1e-12);
        Assert.Equal(-flow, LawProbe.Flow<LiquidFilter>([0, drop], k, 0), 1e-12);
    }

    /// <summary>At double the flow the linear part of the loss doubles and the other is fourfold.</summary>
    [Fact]
    public void Filter_AtDoubleFlow_LosesByItsParts()
    {
        double[] k = LiquidFilter.ParametersOf(0.1, 1e4, 0.7);
        Assert.Equal(0.2, LawProbe.Flow<LiquidFilter>([(0.7 * 2e4) + (0.3 * 4e4), 0], k, 0), 1e-12);
    }

    [Theory]
    [InlineData(49_000, 0)]
    [InlineData(55_000, 0.5)]
    [InlineData(61_000, 1)]
    public void Demand_AtALinePressure_IsMetByAShare(double pressure, double share) =>
        Assert.Equal(0.02 * share, LawProbe.Flow<LiquidDemand>([pressure, 1e6], LiquidDemand.ParametersOf(5e4, 1e4), 0.02), 1e-12);

    [Theory]
    [InlineData(20, 0, 20 * 20e-6)]
    [InlineData(20, 1e5, (20 * 20e-6) - 2e-6)]
    [InlineData(0, 1e5, -2e-6)]
    [InlineData(20, 4.4e5, (20 * 20e-6) - 8.8e-6 - 4e-4)]
    public void DisplacementPump_AgainstAPressure_GivesItsVolumeLessSlipAndRelief(double speed, double against, double volume) =>
        Assert.Equal(volume * Density, LawProbe.Flow<DisplacementPump>([1e5, 1e5 + against], s_pump, speed), 1e-12);

    [Fact]
    public void DisplacementPump_AtTheVapourPressure_DrawsNothing() =>
        Assert.Equal(0, LawProbe.Flow<DisplacementPump>([1000, 1000], s_pump, 20), 1e-12);

    [Fact]
    public void CurvePump_AtEachPointOfItsCurve_GivesItsFlow()
    {
        (double Flow, double Head)[] curve = [(0, 30), (1e-3, 29), (2e-3, 26), (3e-3, 20), (4e-3, 9)];
        double[] k = CurvePump.ParametersOf(curve, Density);
        Assert.All(curve, c => Assert.Equal(c.Flow * Density, LawProbe.Flow<CurvePump>([0, c.Head * Density * Physical.Gravity], k, 1), 1e-9));
    }

    /// <summary>Affinity: at half speed a quarter of the head and half the flow.</summary>
    [Fact]
    public void CurvePump_ParabolaAtHalfSpeed_FollowsAffinity()
    {
        double[] k = CurvePump.Parabola(30, 1e6, Density);
        double full = LawProbe.Flow<CurvePump>([0, 20 * Density * Physical.Gravity], k, 1);
        double half = LawProbe.Flow<CurvePump>([0, 5 * Density * Physical.Gravity], k, 0.5);
        Assert.Equal(full / 2, half, 1e-5 * full);
    }

    [Fact]
    public void CurvePump_AtRestAndEqualPressures_GivesNothing() =>
        Assert.Equal(0, LawProbe.Flow<CurvePump>([1e5, 1e5], CurvePump.Parabola(30, 1e6, Density), 0));

    [Theory]
    [InlineData(1e-3, 30.0)]
    [InlineData(0.0, 0.0)]
    public void CurvePump_CurveThatDoesNotBeginAtNoFlow_IsRefused(double flow, double head) =>
        Assert.Throws<ArgumentException>(() => CurvePump.ParametersOf([(flow, head), (2e-3, -1)], Density));
}
