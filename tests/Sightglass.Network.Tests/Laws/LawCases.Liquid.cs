using CsCheck;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Network.Laws.Liquid.Ends;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

public static partial class LawCases
{
    private static readonly Gen<double> s_opening = Gen.Double[0, 1];

    private static readonly Gen<double> s_area = Draw.Decades(1e-6, 1e-2);

    private static readonly Gen<double> s_density = Gen.Double[700, 1100];

    private static readonly Gen<double> s_viscosity = Draw.Decades(1e-6, 1e-5);

    private static readonly Gen<double> s_offset = Draw.Difference(2e4);

    private static readonly Gen<double> s_surface = Gen.Double[101_000, 102_000];

    private static IEnumerable<LawCase> Liquids =>
    [
        LawCase.Of<LiquidOrifice>("orifice", Draw.Inputs(Draw.Pressures(), Orifices, Draw.Row(s_opening)), 1e-4, 1e-4),
        LawCase.Of<LiquidCheckValve>("check valve", Draw.Inputs(Draw.Pressures(), CheckValves, Draw.Row(s_opening, s_opening)), 1e-4, 1e-4),
        LawCase.Of<FloatValve>("float valve", Draw.Inputs(Floats, FloatValves, Draw.Row(s_opening)), 1e-4, 1e-4, 1),
        LawCase.Of<LiquidFilter>("filter", Draw.Inputs(Draw.Pressures(), Filters, Draw.Row(Gen.Double[0, 1000])), 1, 1),
        LawCase.Of<LiquidDemand>("demand", Draw.Inputs(Draw.Pressures(), Demands, Draw.Row(Gen.Double[0, 1])), 1, 1),
        LawCase.Of<DisplacementPump>("displacement pump", Draw.Inputs(Draw.Pressures(), DisplacementPumps, Draw.Row(Gen.Double[0, 50])), 1, 1),
        LawCase.Of<CurvePump>("curve pump", Draw.Inputs(Draw.Pressures(), CurvePumps, Draw.Row(Gen.Double[0, 1.2])), 1e-4, 1e-4),
        LawCase.Of<LiquidPipe>("pipe", Draw.Inputs(Draw.Pressures(), Pipes, Draw.Row()), 1e-2, 1e-2),
    ];

    private static IEnumerable<LawCase> LiquidsThroughEnds =>
    [
        LawCase.Of<LiquidPath<TankPort, LiquidOrifice, AirEnd>>(
            "hole in a tank",
            Draw.Inputs(Draw.Row(s_surface, s_surface), Path(Orifices, Ports, Offsets), Draw.Row(s_opening)), 1e-2, 1e-3) with { Monotone = false },
        LawCase.Of<LiquidPath<FullEnd, FloatValve, TankPort>>(
            "float valve into a tank",
            Draw.Inputs(Draw.Row(s_surface, s_surface, s_surface), Path(FloatValves, Offsets, Ports), Draw.Row(s_opening)), 1e-3, 1e-2, 1e-2) with { Monotone = false },
        LawCase.Of<MixedPath<TankPort, LiquidOrifice, LineEnd>>(
            "tank to line with air",
            Draw.Inputs(Draw.Row(s_surface, s_surface, s_opening), Mixed(Orifices, Ports, Lines), Draw.Row(s_opening)), 1e-2, 1e-3, 1e-6) with { Monotone = false },
        LawCase.Of<MixedPath<LineEnd, DisplacementPump, LineEnd>>(
            "pump between lines with air",
            Draw.Inputs(Between(Draw.Pressures()), Mixed(DisplacementPumps, Lines, Lines), Draw.Row(Gen.Double[0, 50])), 1e-2, 1e-6, 1e-2, 1e-6)
            with { Monotone = false, Second = 2 },
        LawCase.Of<MixedPath<LineEnd, FloatValve, TankPort>>(
            "float valve from a line with air",
            Draw.Inputs(Draw.Row(s_surface, s_opening, s_surface, s_surface), Mixed(FloatValves, Lines, Ports), Draw.Row(s_opening)), 1e-3, 1e-6, 1e-2, 1e-2)
            with { Monotone = false, Second = 2 },
        LawCase.Of<LiquidPath<FullEnd, LiquidCheckValve, FullEnd>>(
            "check valve between full lines", Draw.Inputs(Draw.Pressures(), Path(CheckValves, Offsets, Offsets), Draw.Row(s_opening, s_opening)), 1e-4, 1e-4),
    ];

    private static Gen<double[]> Orifices =>
        Gen.Select(s_area, s_density, s_viscosity, s_offset, (a, rho, nu, offset) => LiquidOrifice.ParametersOf(0.62, a, rho, nu, offset));

    private static Gen<double[]> CheckValves =>
        Gen.Select(Orifices, Draw.Decades(10, 1e5), Draw.Decades(10, 1e5), LiquidCheckValve.ParametersOf);

    private static Gen<double[]> FloatValves =>
        Gen.Select(Orifices, Gen.Double[101_300, 101_700], Draw.Decades(10, 500), FloatValve.ParametersOf);

    private static Gen<double[]> Floats => Gen.Select(Draw.Pressures(), Gen.Double[101_000, 102_500], (ends, pilot) => (double[])[.. ends, pilot]);

    private static Gen<double[]> Filters =>
        Gen.Select(Draw.Decades(1e-3, 1), Draw.Decades(1e2, 1e5), Gen.Double[1e-2, 1], s_offset, LiquidFilter.ParametersOf);

    private static Gen<double[]> Demands => Gen.Select(Gen.Double[0, 1e5], Draw.Decades(1e2, 1e5), LiquidDemand.ParametersOf);

    private static Gen<double[]> DisplacementPumps =>
        Gen.Select(
            Draw.Decades(1e-6, 1e-4), Draw.Decades(1e-13, 1e-10), s_density, Gen.Double[1e5, 1e6], Draw.Decades(1e-5, 1e-3), s_offset,
            (d, g, rho, p, r, offset) => DisplacementPump.ParametersOf(d, g, rho, p, r, offset: offset));

    private static Gen<double[]> CurvePumps =>
        Gen.Select(Gen.Select(Draw.Decades(1e-5, 1e-3), Draw.Decades(0.5, 5)).Array[1, CurvePump.Rows - 1], s_density, s_offset, (steps, rho, offset) =>
        {
            List<(double Flow, double Head)> curve = [(0, 5 + steps.Sum(s => s.Item2))];
            foreach ((double flow, double head) in steps) curve.Add((curve[^1].Flow + flow, curve[^1].Head - head));
            return CurvePump.ParametersOf(curve, rho, offset);
        });

    private static Gen<double[]> Pipes =>
        from diameter in Draw.Decades(0.004, 0.1)
        from length in Draw.Decades(0.1, 100)
        from roughness in Gen.Double[0, 0.0499]
        from fittings in Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 30])
        from density in s_density
        from viscosity in s_viscosity
        from offset in s_offset
        select LiquidPipe.ParametersOf(diameter, length, roughness * diameter, fittings, density, viscosity, offset);

    private static Gen<double[]> Offsets => Draw.Row(s_offset);

    private static Gen<double[]> Ports =>
        Gen.Select(Gen.Double[0, 0.1], Draw.Decades(1e-3, 0.05), s_density, (height, half, rho) => TankPort.ParametersOf(height, half, rho));

    private static Gen<double[]> Lines => Gen.Select(s_offset, Gen.Double[1, 20], (offset, residual) => new[] { offset, residual });

    private static Gen<double> BlendFlow => Draw.Decades(1e-3, 1e-1);

    private static Gen<double[]> Path(Gen<double[]> law, Gen<double[]> from, Gen<double[]> to) =>
        Gen.Select(law, from, to, BlendFlow, LiquidPath<FullEnd, LiquidOrifice, FullEnd>.ParametersOf);

    private static Gen<double[]> Mixed(Gen<double[]> law, Gen<double[]> from, Gen<double[]> to) =>
        Gen.Select(law, from, to, BlendFlow, (l, f, t, blend) => MixedPath<FullEnd, LiquidOrifice, FullEnd>.ParametersOf(l, f, t, 840, 293.15, blend));

    /// <summary>A void share behind each of two pressures.</summary>
    private static Gen<double[]> Between(Gen<double[]> pressures) =>
        Gen.Select(pressures, s_opening, s_opening, (p, a, b) => new[] { p[0], a, p[1], b });
}
