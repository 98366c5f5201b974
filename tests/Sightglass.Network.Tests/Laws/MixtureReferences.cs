using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Network.Laws.Liquid.Ends;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

/// <summary>Checks of paths that carry liquid with the air in it.</summary>
public static class MixtureReferences
{
    /// <summary>
    /// An uncovered mouth draws as much volume of air as the opening passes of oil, 0.62 · 1e-5 m² · √(2 · 1e4 Pa/840 kg/m³) = 3.02529 · 1e-5 m³/s. Air at 15 °C and 101,325 Pa weighs 1.2250 kg/m³ (US Standard Atmosphere 1976, sea
    /// level). From a line of which three tenths are void, at 1.5 bar with 1 kPa that is no air, come seven tenths of the volume as oil and 0.3 of it as air of (1.5e5 − 1e3/0.3) Pa at the same temperature: Dalton's and Boyle's laws from that
    /// density, by hand.
    /// </summary>
    public static ReferenceCheck AirWithTheLiquid { get; } = new(
        "liquid with air",
        "Q = Cd·A·√(2Δp/ρ); ṁ_l = (1 − a)·ρ·Q; ṁ_a = ρ_air·Q·(a·p − r)/p₀",
        new Dictionary<string, double> { ["discharge"] = 0.62, ["area"] = 1e-5, ["density"] = 840, ["temperature"] = 288.15, ["void"] = 0.3, ["residual"] = 1e3 },
        x =>
        {
            double[] opening = LiquidOrifice.ParametersOf(x["discharge"], x["area"], x["density"], 3e-6);
            double[] line = [0, x["residual"]];
            const double flow = 3.0252902e-5, air = 1.2250;
            double[] drawn = LawProbe.Evaluate<MixedPath<AirEnd, LiquidOrifice, LineEnd>>(
                [101_325, 91_325, 0], MixedPath<AirEnd, LiquidOrifice, LineEnd>.ParametersOf(opening, [0], line, x["density"], x["temperature"]), [1]).Flows;
            double[] mixed = LawProbe.Evaluate<MixedPath<LineEnd, LiquidOrifice, AirEnd>>(
                [1.5e5, x["void"], 1.4e5], MixedPath<LineEnd, LiquidOrifice, AirEnd>.ParametersOf(opening, line, [0], x["density"], x["temperature"]), [1]).Flows;
            return
            [
                new("air alone", drawn[1], air * flow, 1e-4),
                new("oil of a mixture", mixed[0], 0.7 * 840 * flow, 1e-4),
                new("air of a mixture", mixed[1], air * flow * ((0.3 * 1.5e5) - 1e3) / 101_325, 1e-4),
            ];
        });

    /// <summary>
    /// Of a flow of half the blend flow, what is drawn in stands three quarters of the way from the far end to the near one, where a step t²(3 − 2t) is at 27/32. Common practice, no source; by hand from the form that the law states.
    /// </summary>
    public static ReferenceCheck BothEnds { get; } = new(
        "blend of both ends",
        "ṁ = ṁ₀·S(1/2 + ṁ₀/2ṁ_b)",
        new Dictionary<string, double> { ["blend flow"] = 0.02 },
        x =>
        {
            double[] demand = LiquidDemand.ParametersOf(1.1e5, 1e4);
            double[] both = MixedPath<LineEnd, LiquidDemand, AirEnd>.ParametersOf(demand, [0, 10], [0], 840, 293.15, x["blend flow"]);
            double[] one = LiquidPath<FullEnd, LiquidDemand, AirEnd>.ParametersOf(demand, [0], [0], x["blend flow"]);
            return
            [
                new("liquid and air", LawProbe.Flow<MixedPath<LineEnd, LiquidDemand, AirEnd>>([2e5, 0, 1e5], both, 0.01), 0.01 * 27 / 32, 1e-6),
                new("liquid", LawProbe.Flow<LiquidPath<FullEnd, LiquidDemand, AirEnd>>([2e5, 1e5], one, 0.01), 0.01 * 27 / 32, 1e-6),
            ];
        });
}
