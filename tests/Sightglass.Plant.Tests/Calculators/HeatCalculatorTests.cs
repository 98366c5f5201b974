using CsCheck;
using Sightglass.Plant.Calculators.Heat;

namespace Sightglass.Plant.Tests.Calculators;

/// <summary>Expected values computed independently from the formulas named beside each.</summary>
public sealed class HeatCalculatorTests
{
    /// <summary>Incropera ch. 5 (from memory): 500 kJ/K, 250 W/K, 10 °C around, 12 kW.</summary>
    [Fact]
    public void A5_01_LumpedMass_CoolingAndWarming_TemperaturesAndTimes()
    {
        double tau = LumpedMass.TimeConstant(500e3, 250);
        Assert.Equal(2000, tau);
        Assert.Equal(44.558421, LumpedMass.TemperatureAfter(1800, 95, 10, tau), 1e-6);
        Assert.Equal(2082.9078, LumpedMass.SecondsTo(40, 95, 10, tau), 1e-4);
        double final = LumpedMass.FinalTemperature(10, 12e3, 250);
        Assert.Equal(58, final);
        Assert.Equal(27.393849, LumpedMass.TemperatureAfter(900, 10, final, tau), 1e-6);
        Assert.Equal(73.043077, LumpedMass.TemperatureAfter(1800, 95, final, tau), 1e-6);
        Assert.Equal(double.PositiveInfinity, LumpedMass.SecondsTo(60, 10, final, tau));
        Assert.Equal(0, LumpedMass.SecondsTo(96, 95, final, tau));
    }

    /// <summary>Incropera, example 5.1 (from memory: prints 0.706 mm and 5.2 s).</summary>
    [Fact]
    public void A5_02_Bead_OfAThermocouple_HasTheExamplesDiameterAndTime()
    {
        Assert.Equal(1, LumpedMass.BeadTimeConstant(8500, 0.70588235e-3, 400, 400), 1e-8);
        double tau = LumpedMass.BeadTimeConstant(8500, 0.706e-3, 400, 400);
        Assert.Equal(5.1656468, LumpedMass.SecondsTo(199, 25, 200, tau), 1e-6);
    }

    /// <summary>Values at N 5, c 0.7 and at c 0 and 1 read in the documentation and tests of a library of heat transfer.</summary>
    [Theory]
    [InlineData(ExchangerKind.Parallel, 5, 0.7, 0.58811561)]
    [InlineData(ExchangerKind.Counter, 5, 0.7, 0.92067037)]
    [InlineData(ExchangerKind.OneShell, 5, 0.7, 0.68349770)]
    [InlineData(ExchangerKind.Cross, 5, 0.7, 0.84448218)]
    [InlineData(ExchangerKind.Counter, 1.5, 0, 0.77686984)]
    [InlineData(ExchangerKind.Parallel, 1.5, 0, 0.77686984)]
    [InlineData(ExchangerKind.Cross, 1.5, 0, 0.77686984)]
    [InlineData(ExchangerKind.Counter, 5, 1, 0.83333333)]
    public void A5_03_Exchanger_OfAKind_HasTheKnownEffectiveness(ExchangerKind kind, double units, double ratio, double expected) =>
        Assert.Equal(expected, HeatExchanger.Effectiveness(kind, units, ratio), 1e-7 * expected);

    /// <summary>A radiator in crossflow, derived: water 21,600 W/K at 88 °C, air 22,132 W/K at 32 °C, UA 18,000 W/K.</summary>
    [Fact]
    public void A5_03_Radiator_InCrossflow_DutyAndOutlets()
    {
        (double watts, double water, double air) = HeatExchanger.Duty(ExchangerKind.Cross, 18_000, 21_600, 22_132, 88, 32);
        Assert.Equal(531.29275e3, watts, 0.1);
        Assert.Equal(63.403113, water, 1e-5);
        Assert.Equal(56.005637, air, 1e-5);
        Assert.Equal(0.43923012, HeatExchanger.Effectiveness(ExchangerKind.Cross, 0.83333333, 21_600.0 / 22_132), 1e-7);
        Assert.Equal(0.84448045, HeatExchanger.CrossApproximately(5, 0.7), 1e-7);
    }

    /// <summary>No kind passes more than counterflow nor less than parallel flow, and what passes never exceeds the whole. Source: Kays and London (from memory).</summary>
    [Fact]
    public void Exchangers_OfAnySize_LieBetweenParallelAndCounterflow() =>
        Gen.Select(Gen.Double[1e-3, 30], Gen.Double[1e-12, 1]).Holds((units, ratio) =>
        {
            double parallel = HeatExchanger.Effectiveness(ExchangerKind.Parallel, units, ratio), counter = HeatExchanger.Effectiveness(ExchangerKind.Counter, units, ratio);
            foreach (ExchangerKind kind in new[] { ExchangerKind.Cross, ExchangerKind.OneShell })
            {
                Assert.InRange(HeatExchanger.Effectiveness(kind, units, ratio), parallel - 1e-9, counter + 1e-9);
            }

            Assert.InRange(counter, 0, 1);
            Assert.Equal(0, HeatExchanger.Effectiveness(ExchangerKind.Cross, 0, ratio));
        }, iter: 300);

    /// <summary>Near equal rates the counterflow formula divides nothing by nothing: both branches meet.</summary>
    [Fact]
    public void Counterflow_NearEqualRates_IsSmooth() =>
        Gen.Select(Gen.Double[0.1, 10], Gen.Double[-12, -2]).Holds((units, power) =>
        {
            double off = Math.Pow(10, power);
            double at = HeatExchanger.Effectiveness(ExchangerKind.Counter, units, 1 - off);
            double one = units / (1 + units);
            Assert.InRange(at - one, -1e-12, off);
        });

    /// <summary>Derived: 700 A, 0.43 Ω, α 3e-4, 90 kg of 460 J/(kg·K), 260 W/K.</summary>
    [Fact]
    public void A5_04_Grid_UnderACurrent_RisesByTheClosedForm()
    {
        GridResistor grid = new(0.43, 3e-4, 90 * 460, 260);
        Assert.Equal(305.36232, grid.AdiabaticRise(700, 60), 1e-5);
        Assert.Equal(1070.6845, grid.FinalRise(700), 1e-3);
        Assert.Equal(810.38462, (grid with { PerKelvin = 0 }).FinalRise(700), 1e-4);
        Assert.Equal(210.37654, grid.TimeConstant(700), 1e-4);
        Assert.Equal(465.43083, grid.RiseAfter(700, 120), 1e-4);
        Assert.Equal(double.PositiveInfinity, grid.FinalRise(2000));
        Assert.True(grid.RiseAfter(2000, 120) > (grid with { PerKelvin = 0 }).RiseAfter(2000, 120));
    }

    /// <summary>Trade case 18: 465 K above ambient, load off: with its fan 71 K after 5 min; blown by its own current only, about 386 K. The second is taken as a tenth of the fan's conductance, an assumption.</summary>
    [Theory]
    [InlineData(260, 71)]
    [InlineData(26, 386)]
    public void Grid_WithItsLoadOff_StaysHotByItsAir(double conductance, double expected) =>
        Assert.Equal(expected, new GridResistor(0.43, 3e-4, 90 * 460, conductance).RiseAfter(0, 300, 465.43083), 0.6);
}
