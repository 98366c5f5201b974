using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Gas;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

/// <summary>
/// Checks of valves and consumers that open by what they feel, a quarter of the way into their band, where a step t²(3 − 2t) stands at 5/32. Common practice, no source; worked out by hand from the form that each law states.
/// </summary>
public static class ValveReferences
{
    private const double Quarter = 5.0 / 32;

    /// <summary>0.6 · 1e-4 m² · √(2 · 840 kg/m³ · 4e4 Pa) = 0.491853 kg/s open; what begins to open is 5/32 of it, what begins to close 27/32.</summary>
    public static ReferenceCheck LiquidValves { get; } = new(
        "liquid valves",
        "ṁ = Cd·A·√(2ρΔp)·S((x − begin)/band)",
        new Dictionary<string, double> { ["discharge"] = 0.6, ["area"] = 1e-4, ["density"] = 840, ["crack"] = 3e4, ["width"] = 4e4, ["begins to close"] = 1.2e5, ["band"] = 2000 },
        x =>
        {
            double[] orifice = LiquidOrifice.ParametersOf(x["discharge"], x["area"], x["density"], 3e-6);
            double open = 0.6 * 1e-4 * Math.Sqrt(2 * 840 * 4e4);
            return
            [
                new("check valve", LawProbe.Flow<LiquidCheckValve>([5.4e5, 5e5], LiquidCheckValve.ParametersOf(orifice, x["crack"], x["width"]), 1, 0), open * Quarter, 1e-4),
                new("float valve", LawProbe.Flow<FloatValve>([5.4e5, 5e5, 1.205e5], FloatValve.ParametersOf(orifice, x["begins to close"], x["band"]), 1), open * (1 - Quarter), 1e-4),
            ];
        });

    /// <summary>Of 0.02 kg/s 5/32 at a quarter above the least pressure; the want of it goes to 1 − 27/32 · 27/32 in τ.</summary>
    public static ReferenceCheck Consumers { get; } = new(
        "consumers",
        "q = q₀·S((p − least)/width); ż = (1 − (1 − S_p)(1 − S_a) − z)/τ",
        new Dictionary<string, double> { ["least"] = 1.1e5, ["width"] = 2e4, ["limit"] = 1e5, ["want's width"] = 4e4, ["air"] = 0.2, ["time"] = 3 },
        x =>
        [
            new("demand", LawProbe.Flow<LiquidDemand>([1.15e5, 1e5], LiquidDemand.ParametersOf(x["least"], x["width"]), 0.02), 0.02 * Quarter, 1e-6),
            new("want", LawProbe.Flow<SupplyWant>([1.1e5, 0.15, 0], SupplyWant.ParametersOf(x["limit"], x["want's width"], x["air"], x["time"])), (1 - ((1 - Quarter) * (1 - Quarter))) / 3, 1e-6),
        ]);

    /// <summary>Choked, 2e-8 m³/(s·Pa) · 1.185 kg/m³ · 7e5 Pa = 0.01659 kg/s at the reference temperature: a relief valve a quarter above its set pressure, and a relay valve a quarter of its width below its target of 0.5 · 6e5 + 0.25 · 4e5 + 1e5 = 5e5 Pa.</summary>
    public static ReferenceCheck GasValves { get; } = new(
        "gas valves",
        "ṁ = C·ρ₀·p₁·S((x − begin)/width); x = set + a·first + b·second − sensed",
        new Dictionary<string, double> { ["conductance"] = 2e-8, ["crack"] = 4e5, ["width"] = 8e5, ["servo's width"] = 4e4, ["first"] = 0.5, ["second"] = 0.25 },
        x =>
        {
            double[] component = GasIso6358.ParametersOf(x["conductance"], 0.3);
            double[] servo = GasServo.ParametersOf(component, x["servo's width"], 0, x["first"], x["second"], 1e5, 9e5);
            double open = 2e-8 * 1.185 * 7e5;
            return
            [
                new("relief valve", LawProbe.Flow<GasCheckValve>([7e5, 1e5], GasCheckValve.ParametersOf(component, x["crack"], x["width"]), 1, 0), open * Quarter, 1e-4),
                new("relay valve", LawProbe.Flow<GasServo>([7e5, 1e5, 4.9e5, 6e5, 4e5], servo, 1e5, 1, 0), open * Quarter, 1e-4),
            ];
        });
}
