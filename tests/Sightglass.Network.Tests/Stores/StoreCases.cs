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
        StoreCase.Of<LyingRoundTank>("lying, round", Lying, 1e-3),
        StoreCase.Of<DipTableTank>("dip table", DipTables, 1e-3),
        StoreCase.Of<LiquidAirLine>("line with air", Lines, 1e-6, 1e-9),
        StoreCase.Of<PolytropicGasStore>("gas, polytropic", Gases, 1e-6),
        StoreCase.Of<PistonGasStore>("gas behind a piston", Pistons, 1e-9),
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

    private static Gen<StoreInputs> Gases =>
        from volume in Draw.Decades(1e-2, 1)
        from pressure in Draw.Decades(1e4, 1e6)
        from exponent in Gen.Double[1, 1.67]
        let k = PolytropicGasStore.ParametersOf(volume, pressure, 293.15, exponent)
        from share in Gen.OneOf(Gen.Double[0, 2], Draw.Decades(1e-6, 1e-2), Draw.Decades(1e-6, 1e-3).Select(x => -x), Gen.Const(0.0))
        select new StoreInputs([share / k[1]], k);

    private static Gen<StoreInputs> Pistons =>
        from clearance in Draw.Decades(1e-5, 1e-2)
        from swept in Draw.Decades(1e-5, 3e-2)
        from moves in Gen.Double[1.05e5, 1.5e5]
        from further in Draw.Decades(1e3, 1e5)
        let k = PistonGasStore.ParametersOf(clearance, swept, moves, moves + further, 84_150)
        from share in Gen.OneOf(Gen.Double[0, 8], Draw.Decades(1e-6, 1e-2), Draw.Decades(1e-6, 1e-3).Select(x => -x), Gen.Const(0.0))
        select new StoreInputs([share * k[4]], k);

    private static Gen<StoreInputs> Lying =>
        from radius in Gen.Double[0.2, 1]
        from length in Gen.Double[0.5, 4]
        from density in Gen.Double[700, 1100]
        from fill in Share
        select new StoreInputs([fill * LyingRoundTank.Volume(radius, length) * density], LyingRoundTank.ParametersOf(radius, length, density));

    private static Gen<StoreInputs> DipTables =>
        from steps in Gen.Select(Draw.Decades(0.01, 0.1), Draw.Decades(0.01, 0.1)).Array[1, DipTableTank.Rows - 1]
        from density in Gen.Double[700, 1100]
        from fill in Share
        let table = steps.Aggregate(new List<(double Volume, double Height)> { (0, 0) }, (rows, s) => [.. rows, (rows[^1].Volume + s.Item1, rows[^1].Height + s.Item2)])
        select new StoreInputs([fill * table[^1].Volume * density], DipTableTank.ParametersOf(table, density));

    /// <summary>Mostly liquid, mostly air, drawn empty, and a little less of either than nothing.</summary>
    private static Gen<StoreInputs> Lines =>
        from volume in Draw.Decades(1e-4, 1e-2)
        from elasticity in Draw.Decades(1e-9, 1e-7)
        let k = LiquidAirLine.ParametersOf(volume, 840, elasticity)
        from liquid in Gen.OneOf(Gen.Double[0, 1], Gen.Double[0.99, 1.001], Draw.Decades(1e-9, 1e-2), Draw.Decades(1e-9, 1e-2).Select(x => -x), Gen.Const(0.0))
        from air in Gen.OneOf(Draw.Decades(1e-6, 1), Gen.Const(0.0), Draw.Decades(1e-9, 1e-3).Select(x => -x))
        select new StoreInputs([liquid * volume * 840, air * volume * 1.2], k);

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
