using CsCheck;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Stores;

/// <summary>Every store of the project with draws of its arguments. A test sees to it that none is missing.</summary>
public static class StoreCases
{
    public static IEnumerable<StoreCase> All =>
    [
        StoreCase.Of<LinearStore>("linear", Filled(LiquidLines, 0, 10), 1e-4),
        StoreCase.Of<FixedStore>("fixed", Filled(Gen.Double[0, 1e6].Select(p => new[] { p }), -1e3, 1e3), 1) with { Derived = false },
        StoreCase.Of<FollowerStore>("follower", Filled(Gen.Const(Array.Empty<double>()), -1e6, 1e6), 1),
        StoreCase.Of<PrismaticTank>("prismatic, level", PartlyFilled(Gen.Const(0.0)), 1e-3),
        StoreCase.Of<PrismaticTank>("prismatic, tilted", PartlyFilled(Gen.Double[-0.1, 0.1]), 1e-3),
    ];

    private static Gen<double[]> LiquidLines =>
        Gen.Select(Draw.Decades(1e-4, 1e-2), Draw.Decades(1e-9, 1e-6), Gen.Double[0, 1e6], (v, e, p) => LinearStore.LiquidLine(v, 840, e, p));

    private static Gen<StoreInputs> Filled(Gen<double[]> parameters, double least, double most) =>
        Gen.Select(Gen.Double[least, most], parameters, (m, k) => new StoreInputs([m], k));

    private static Gen<StoreInputs> PartlyFilled(Gen<double> tilts) =>
        from area in Gen.Double[0.2, 4]
        from length in Gen.Double[0.5, 4]
        from depth in Gen.Double[0.5, 1.5]
        from density in Gen.Double[700, 1100]
        from tilt in tilts
        from fill in Share
        select new StoreInputs(
            [fill * area * depth * density], PrismaticTank.ParametersOf(area, length, depth, density, tilt));

    /// <summary>Of a tank's volume: often all but empty, all but full or brimming, sometimes a little below nothing.</summary>
    private static Gen<double> Share =>
        Gen.OneOf(
            Gen.Double[0, 1],
            Draw.Decades(1e-9, 0.1),
            Draw.Decades(1e-9, 0.1).Select(x => 1 - x),
            Draw.Decades(1e-9, 1e-4).Select(x => 1 + x),
            Draw.Decades(1e-9, 1e-4).Select(x => -x),
            Gen.Const(0.0),
            Gen.Const(1.0));
}
