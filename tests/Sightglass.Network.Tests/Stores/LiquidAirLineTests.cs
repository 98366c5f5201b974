using CsCheck;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Stores;

public sealed class LiquidAirLineTests
{
    private const double Density = 840;

    private static readonly double[] s_line = LiquidAirLine.ParametersOf(1e-3, Density, 1e-8);

    [Fact]
    public void AmountsAt_AnyState_GiveItBack() =>
        Gen.Select(Draw.Decades(1e3, 1e6), Gen.Double[0.01, 1]).Holds((pressure, air) =>
        {
            double[] p = StoreProbe.Evaluate<LiquidAirLine>(LiquidAirLine.AmountsAt(s_line, pressure, air), s_line).Potentials;
            Assert.Equal(pressure, p[0], 1e-9 * pressure);
            Assert.Equal(air, p[1], 1e-9);
        });

    /// <summary>Boyle's law: without liquid and walls that hardly give, p·V = m·R·T.</summary>
    [Fact]
    public void Pressure_OfAirAlone_IsBoyles()
    {
        double[] stiff = LiquidAirLine.ParametersOf(1e-3, Density, 1e-12, residualPressure: 1e-3);
        double pressure = StoreProbe.Evaluate<LiquidAirLine>([0, 2e-3], stiff).Potentials[0];
        Assert.Equal(2e-3 * 287.05 * 293.15 / 1e-3, pressure, 1e-6 * pressure);
    }

    /// <summary>One more cubic centimetre pressed into a full litre that gives by 1e-8/Pa: p rises by 1e-6/(1e-3·1e-8) = 1 bar, less what the residual void takes up.</summary>
    [Fact]
    public void Pressure_OfALineWithoutAir_RisesByItsElasticity()
    {
        double[] full = LiquidAirLine.AmountsAt(s_line, 5e5, 0);
        double before = StoreProbe.Evaluate<LiquidAirLine>(full, s_line).Potentials[0];
        double after = StoreProbe.Evaluate<LiquidAirLine>([full[0] + (1e-6 * Density), full[1]], s_line).Potentials[0];
        Assert.Equal(1e5, after - before, 500.0);
    }

    /// <summary>A void appears by itself where liquid is drawn out of a line without air, and the pressure stays above zero.</summary>
    [Fact]
    public void Pressure_OfALineDrawnOut_FallsTowardsTheResidual()
    {
        double[] full = LiquidAirLine.AmountsAt(s_line, Physical.Atmosphere, 0);
        double[] half = StoreProbe.Evaluate<LiquidAirLine>([full[0] / 2, 0], s_line).Potentials;
        double[] none = StoreProbe.Evaluate<LiquidAirLine>([0, 0], s_line).Potentials;
        Assert.Equal(2 * LiquidAirLine.ResidualPressure, half[0], 0.1);
        Assert.Equal(0.5, half[1], 1e-3);
        Assert.Equal(LiquidAirLine.ResidualPressure, none[0], 1e-9);
        Assert.Equal(1, none[1]);
    }

    [Fact]
    public void ParametersOf_WallsThatGiveMoreThanThereIs_AreRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LiquidAirLine.ParametersOf(1e-3, Density, 1e-5));
}
