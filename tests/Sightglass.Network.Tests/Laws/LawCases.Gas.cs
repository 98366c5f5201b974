using CsCheck;
using Sightglass.Network.Laws.Gas;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

public static partial class LawCases
{
    private static readonly Gen<double> s_conductance = Draw.Decades(1e-9, 1e-7);

    private static readonly Gen<double> s_rounding = Draw.Decades(1e-3, 3e-2);

    private static IEnumerable<LawCase> Gases =>
    [
        LawCase.Of<GasIso6358>("gas component", Draw.Inputs(GasPressures, Components, Draw.Row(s_opening)), 1e-4, 1e-4),
        LawCase.Of<GasPassage>("gas orifice", Draw.Inputs(GasPressures, GasOrifices, Draw.Row(s_opening)), 1e-4, 1e-4),
        LawCase.Of<GasPassage>("gas pipe", Draw.Inputs(GasPressures, GasPipes, Draw.Row(s_opening)), 1e-4, 1e-4),
        LawCase.Of<GasCheckValve>("gas check valve", Draw.Inputs(GasPressures, GasCheckValves, Draw.Row(s_opening, s_opening)), 1e-4, 1e-4),
        LawCase.Of<GasServo>("gas servo", Draw.Inputs(SteeredPressures, GasServos, Draw.Row(Draw.Difference(1e5), s_opening, s_opening)), 1e-4, 1e-4, 1e-2, 1e-2, 1e-2),
        LawCase.Of<GasPump>("gas pump", Draw.Inputs(GasPressures, GasPumps, Draw.Row(Gen.Double[0, 30])), 1, 1),
        LawCase.Of<Condensation>("condensation", Draw.Inputs(WetPressures, WetPumps, Draw.Row(Gen.Double[0, 30], Gen.Double[1e-4, 0.05], Draw.Decades(1e3, 1e6), Gen.Double[10, 1e4], s_opening)), 1e-3, 1e-3, 10) with { Monotone = false },
        LawCase.Of<PolytropicEnds<GasIso6358>>("between polytropic ends", Draw.Inputs(GasPressures, Polytropic(Components), Draw.Row(s_opening)), 1e-4, 1e-4)
            with { Monotone = false },
    ];

    private static Gen<double[]> GasPressures =>
        Gen.Select(Draw.Decades(10, 2e6), Draw.Difference(1e6), (p, d) => new[] { p, Math.Max(10, p + d) });

    private static Gen<double[]> Components =>
        Gen.Select(s_conductance, Gen.Double[0, 0.9], Gen.Double[250, 320], s_rounding, GasIso6358.ParametersOf);

    private static Gen<double[]> GasOrifices =>
        Gen.Select(
            Draw.Decades(1e-7, 1e-3), Gen.Double[250, 320], Gen.Double[1.1, 1.67], s_rounding,
            (area, t, gamma, rounding) => GasOrifice.ParametersOf(0.65, area, t, gamma, rounding: rounding));

    private static Gen<double[]> GasPipes =>
        Gen.Select(
            Draw.Decades(5e-3, 0.5), Draw.Decades(0.1, 1e4), s_rounding, (d, loss, rounding) => GasPipe.ParametersOf(d, d, loss, 84_000, 0.001, rounding));

    private static Gen<double[]> GasCheckValves => Gen.Select(Components, Draw.Decades(10, 1e5), Draw.Decades(10, 1e5), GasCheckValve.ParametersOf);

    private static Gen<double[]> SteeredPressures =>
        Gen.Select(GasPressures, Draw.Decades(1e4, 1e6), Draw.Difference(1e5), Draw.Difference(1e5), (ends, sensed, first, second) =>
            new[] { ends[0], ends[1], sensed, Math.Max(10, sensed + first), Math.Max(10, sensed + second) });

    private static Gen<double[]> GasServos =>
        Gen.Select(Components, Draw.Decades(1e2, 1e5), Gen.Bool, Gen.Double[-3e3, 3e3], Gen.Double[-3, 3], Gen.Double[-3, 3], (component, width, opensBelow, begins, first, second) =>
            GasServo.ParametersOf(component, opensBelow ? width : -width, begins, first, second, 1e5, 5e5));

    private static Gen<double[]> GasPumps =>
        Gen.Select(Draw.Decades(1e-5, 1e-2), Gen.Double[0, 0.2], Gen.Double[250, 320], (d, c, t) => GasPump.ParametersOf(d, c, t));

    private static Gen<double[]> WetPressures => Gen.Select(Gen.Double[0, 2], Draw.Decades(10, 2e6), (water, p) => new[] { water, water, p });

    private static Gen<double[]> WetPumps => Gen.Select(GasPumps, Draw.Decades(0.1, 60), (pump, drain) => Condensation.ParametersOf(pump, 101_325, drain));

    private static Gen<double[]> Polytropic(Gen<double[]> law) =>
        Gen.Select(law, Gen.Double[1e5, 1e6], Gen.Double[1, 1.67], Gen.Double[1e5, 1e6], Gen.Double[1, 1.67], BlendFlow, (l, pa, na, pb, nb, blend) =>
            PolytropicEnds<GasIso6358>.ParametersOf(l, (pa, na), (pb, nb), blend));
}
