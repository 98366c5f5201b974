using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Gas;

/// <summary>
/// A sharp-edged opening for a gas: choked ṁ = Cd·A·p₁·ψ/√(RT₁), else Cd·A·p₁/√(RT₁)·√(2γ/(γ−1)·(r^(2/γ) − r^((γ+1)/γ))), r = p₂/p₁. Source: White, Fluid
/// Mechanics, ch. 9 (from memory; 0.528 read in a tutorial). The sheet is for <see cref="GasPassage"/>, whose curve meets the formula to 1e-11 for γ = 1.1…1.67.
/// </summary>
public static class GasOrifice
{
    /// <summary>The sheet of an opening.</summary>
    /// <param name="discharge">Cd, 0…1.</param>
    /// <param name="area">m².</param>
    /// <param name="temperature">Upstream, K.</param>
    /// <param name="heatRatio">γ, above 1.</param>
    /// <param name="gasConstant">J/(kg·K).</param>
    /// <param name="rounding">Share of the choked flow below which the law is linear.</param>
    public static double[] ParametersOf(
        double discharge,
        double area,
        double temperature,
        double heatRatio = Physical.AirHeatRatio,
        double gasConstant = Physical.AirGasConstant,
        double rounding = GasIso6358.Rounding)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(heatRatio, 1);
        double choked = discharge * area * ChokedFactor(heatRatio) / Math.Sqrt(gasConstant * temperature);
        return GasPassage.ParametersOf(
            choked, CriticalRatio(heatRatio), r => Pow(r, 2 / heatRatio) - Pow(r, (heatRatio + 1) / heatRatio), rounding);
    }

    /// <summary>r* = (2/(γ+1))^(γ/(γ−1)).</summary>
    public static double CriticalRatio(double heatRatio) => Pow(2 / (heatRatio + 1), heatRatio / (heatRatio - 1));

    /// <summary>ψ = √γ·(2/(γ+1))^((γ+1)/(2(γ−1))).</summary>
    public static double ChokedFactor(double heatRatio) =>
        Math.Sqrt(heatRatio) * Pow(2 / (heatRatio + 1), (heatRatio + 1) / (2 * (heatRatio - 1)));

    private static double Pow(double x, double power) => Portable.Pow(new Scalar(x), new Scalar(power)).V;
}
