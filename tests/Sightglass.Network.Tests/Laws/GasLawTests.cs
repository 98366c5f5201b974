using CsCheck;
using Sightglass.Network.Laws.Gas;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

/// <summary>What each gas law is for, and how close the fitted curves come.</summary>
public sealed class GasLawTests
{
    private static readonly double[] s_component = GasIso6358.ParametersOf(2e-8, 0.3);

    /// <summary>Source: the orifice formula (as A2-01), with the library's powers.</summary>
    [Fact]
    public void Orifice_AnyGas_IsWithinATenBillionthOfTheFormula() =>
        Gen.Select(Gen.Double[1.1, 1.67], Gen.Double[0.0, 0.9999]).Holds((gamma, r) =>
        {
            double[] k = GasOrifice.ParametersOf(1, 1e-6, 300, gamma);
            double least = Math.Max(r, Math.Pow(2 / (gamma + 1), gamma / (gamma - 1)));
            double square = 2 * gamma / (gamma - 1) * (Math.Pow(least, 2 / gamma) - Math.Pow(least, (gamma + 1) / gamma));
            double expected = 1e-6 * 5e5 / Math.Sqrt(287.05 * 300) * Math.Sqrt(square);
            Assert.Equal(expected, LawProbe.Flow<GasPassage>([5e5, 5e5 * r], k, 1), 1e-7 * expected);
        });

    /// <summary>Source: the pipe formula (as A2-09). The tolerances are those that the law's documentation states.</summary>
    [Theory]
    [InlineData(0.101, 1e-3)]
    [InlineData(0.5, 1.1e-6)]
    [InlineData(20, 1.1e-6)]
    [InlineData(100, 3e-5)]
    [InlineData(10_000, 1e-3)]
    public void Pipe_OfALoss_IsAsCloseToTheFormulaAsStated(double loss, double tolerance)
    {
        double[] k = GasPipe.ParametersOf(0.1, 1, loss / 10, 84_000);
        double critical = 1 - (1 / k[1]);
        for (int i = 1; i < 400; i++)
        {
            double r = critical + ((1 - critical) * i / 400);
            double expected = Math.PI / 4 * 0.01 * 1e6 / Math.Sqrt(84_000) * Math.Sqrt((1 - (r * r)) / (loss - (2 * Math.Log(r))));
            Assert.Equal(expected, LawProbe.Flow<GasPassage>([1e6, r * 1e6], k, 1), tolerance * expected);
        }
    }

    /// <summary>Below the ratio at which it chokes a pipe's flow no longer grows.</summary>
    [Fact]
    public void Pipe_Choked_KeepsItsFlow()
    {
        double[] k = GasPipe.ParametersOf(0.1, 1, 0.5, 84_000);
        Assert.Equal(LawProbe.Flow<GasPassage>([1e6, 1e5], k, 1), LawProbe.Flow<GasPassage>([1e6, 0], k, 1), 1e-9);
    }

    [Theory]
    [InlineData(-1e5, 0, 0)]
    [InlineData(4999, 0, 0)]
    [InlineData(6000, 0, 0.5)]
    [InlineData(7001, 0, 1)]
    [InlineData(-1e5, 1, 1)]
    public void CheckValve_AtADifference_IsOpenByAShare(double difference, double passing, double share)
    {
        double[] k = GasCheckValve.ParametersOf(s_component, 5e3, 2e3);
        double whole = LawProbe.Flow<GasIso6358>([3e5 + difference, 3e5], s_component, 1);
        Assert.Equal(share * whole, LawProbe.Flow<GasCheckValve>([3e5 + difference, 3e5], k, 1, passing), 1e-9 * Math.Abs(whole));
    }

    /// <summary>η = 1 + c − c·pb/pa: with 5 % clearance against nine times the pressure 0.6; against 21 times nothing.</summary>
    [Theory]
    [InlineData(1, 1)]
    [InlineData(9, 0.6)]
    [InlineData(22, 0)]
    public void Pump_AgainstAPressureRatio_FillsByItsClearance(double ratio, double efficiency)
    {
        double[] k = GasPump.ParametersOf(1e-3, 0.05, 300);
        double whole = 1e-3 * 10 * 1e5 / (287.05 * 300);
        Assert.Equal(efficiency * whole, LawProbe.Flow<GasPump>([1e5, ratio * 1e5], k, 10), 1e-12);
    }

    /// <summary>From an end at twice the reference pressure, T = T_ref·2^((n−1)/n), the flow is that of the warmer gas; the other end's state is of no account.</summary>
    [Fact]
    public void PolytropicEnds_FromAWarmerStore_PassWhatTheTemperatureLets()
    {
        double[] k = PolytropicEnds<GasIso6358>.ParametersOf(s_component, (2e5, 1.4), (5e4, 1.3), 1e-9);
        double plain = LawProbe.Flow<GasIso6358>([4e5, 1e5], s_component, 1);
        double expected = plain / Math.Sqrt(Math.Pow(2, 0.4 / 1.4));
        Assert.Equal(expected, LawProbe.Flow<PolytropicEnds<GasIso6358>>([4e5, 1e5], k, 1), 1e-12 * expected);
    }

    /// <summary>p·V = m·R·T with T by the exponent. Source: polytropic change.</summary>
    [Fact]
    public void PolytropicStore_HalfEmptied_CoolsByItsExponent()
    {
        double[] k = PolytropicGasStore.ParametersOf(0.1, 8e5, 293.15, 1.3);
        double p = StoreProbe.Potential<PolytropicGasStore>(0.5 / k[1], k);
        Assert.Equal(8e5 * Math.Pow(0.5, 1.3), p, 1e-9 * p);
    }
}
