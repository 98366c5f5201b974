using CsCheck;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

public static partial class LawCases
{
    private static IEnumerable<LawCase> Followers =>
    [
        LawCase.Of<SupplyWant>(
            "want of supply",
            Draw.Inputs(
                Draw.Row(Gen.Double[0, 4e5], s_opening, s_opening),
                Gen.Select(Gen.Double[5e4, 2e5], Draw.Decades(100, 1e5), Draw.Decades(0.01, 0.5), Draw.Decades(0.1, 60), SupplyWant.ParametersOf),
                Draw.Row()),
            1,
            1e-6,
            1e-6) with { Monotone = false },
        LawCase.Of<Lag>(
            "lag",
            Draw.Inputs(Draw.Row(s_opening, s_opening), Draw.Decades(1, 1e4).Select(Lag.Follower), Draw.Row(s_opening)),
            1,
            1e-6,
            1e-6) with { Monotone = false },
        LawCase.Of<Lag>(
            "counter",
            Draw.Inputs(Draw.Row(s_opening, s_opening), Draw.Decades(1, 1e4).Select(Lag.Counter), Draw.Row(s_opening)),
            1,
            1e-6,
            1e-6) with { Monotone = false },
    ];
}
