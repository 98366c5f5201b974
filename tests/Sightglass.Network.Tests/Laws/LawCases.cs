using CsCheck;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

/// <summary>Every law of the project with draws of its arguments. A test sees to it that none is missing.</summary>
public static partial class LawCases
{
    private static readonly Gen<double> s_opening = Gen.Double[0, 1];

    private static readonly Gen<double> s_area = Draw.Decades(1e-6, 1e-2);

    private static readonly Gen<double> s_density = Gen.Double[700, 1100];

    private static readonly Gen<double> s_viscosity = Draw.Decades(1e-6, 1e-5);

    private static readonly Gen<double> s_offset = Draw.Difference(2e4);

    public static IEnumerable<LawCase> All => Liquids;

    private static IEnumerable<LawCase> Liquids =>
    [
        LawCase.Of<LiquidOrifice>("orifice", Draw.Inputs(Draw.Pressures(), Orifices, Draw.Row(s_opening)), 1e-4, 1e-4),
    ];

    private static Gen<double[]> Orifices =>
        Gen.Select(s_area, s_density, s_viscosity, s_offset, (a, rho, nu, offset) => LiquidOrifice.ParametersOf(0.62, a, rho, nu, offset));
}
