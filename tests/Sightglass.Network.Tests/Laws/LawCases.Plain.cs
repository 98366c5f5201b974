using CsCheck;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Motion;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

public static partial class LawCases
{
    private static IEnumerable<LawCase> Plain =>
    [
        LawCase.Of<LinearPath>(
            "linear path",
            Draw.Inputs(Draw.Row(Gen.Double[200, 900], Gen.Double[200, 900]), Draw.Decades(1e-3, 1e3).Select(LinearPath.ParametersOf), Draw.Row(s_opening)),
            1e-3,
            1e-3),
        LawCase.Of<SetFlow>("set flow", Draw.Inputs(Draw.Row(s_opening, s_opening), Gen.Const(Array.Empty<double>()), Draw.Row(Gen.Double[-10, 10])), 1e-3, 1e-3),
        LawCase.Of<SlopedFlow>(
            "sloped flow",
            Draw.Inputs(Draw.Row(Gen.Double[1, 2], Gen.Double[1, 2]), Gen.Const(Array.Empty<double>()), Draw.Row(Gen.Double[-10, 10], Gen.Double[0, 5], Gen.Double[1, 2])),
            1e-3,
            1e-3),
        LawCase.Of<SpeedResistance>(
            "speed resistance",
            Draw.Inputs(
                Draw.Row(Gen.Double[-60, 60], Gen.Double[-1, 1]),
                Gen.Select(Draw.Decades(10, 1e5), Draw.Decades(1, 1e4), Draw.Decades(0.1, 100), Draw.Decades(0.005, 0.5), SpeedResistance.ParametersOf),
                Draw.Row(s_opening)),
            1e-4,
            1e-4),
    ];
}
