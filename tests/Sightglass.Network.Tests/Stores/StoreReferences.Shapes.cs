using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Stores;

/// <summary>Stores against closed forms worked out apart from the project, in double precision.</summary>
public static partial class StoreReferences
{
    /// <summary>A cone on its apex, given by a dip table of every tenth of a metre: between two rows the level is the cone's. Source: volume of a cone (geometry).</summary>
    public static ReferenceCheck DippedCone { get; } = new(
        "dip table of a cone",
        "V = π(R/H)²h³/3; p − p_s = ρ·g·h",
        new Dictionary<string, double> { ["radius"] = 0.5, ["height"] = 1.2, ["density"] = Density, ["volume"] = 0.146236229 },
        x =>
        {
            (double, double)[] table = [.. Enumerable.Range(0, 13).Select(i => i * x["height"] / 12).Select(h => (Math.PI * Math.Pow(x["radius"] / x["height"], 2) * Math.Pow(h, 3) / 3, h))];
            double pressure = StoreProbe.Potential<DipTableTank>(x["volume"] * x["density"], DipTableTank.ParametersOf(table, x["density"])) - Physical.Atmosphere;
            return
            [
                new("level between two rows", pressure / (x["density"] * Physical.Gravity), 0.93, 1e-3),
                new("pressure at the apex", pressure, 7660.955, 1e-3),
            ];
        });

    /// <summary>A cylinder with its piston in, half-way and out. Source: Boyle's law at both corners; the spring's straight line between them (common practice, no source).</summary>
    public static ReferenceCheck Piston { get; } = new(
        "air behind a piston",
        "p·V₀ = m·R·T before it moves, p·(V₀ + V) = m·R·T once it is out, half the way between both corners",
        new Dictionary<string, double> { ["clearance"] = 1e-3, ["swept"] = 9e-3, ["moves"] = 1.3e5, ["out"] = 1.6e5, ["gas constant"] = 287.05, ["temperature"] = 293.15 },
        x =>
        {
            double[] k = PistonGasStore.ParametersOf(x["clearance"], x["swept"], x["moves"], x["out"], x["gas constant"] * x["temperature"]);
            return
            [
                new("in, 1.42604686 g", StoreProbe.Potential<PistonGasStore>(1.42604686e-3, k), 1.2e5, 1e-6),
                new("half-way, 10.2794211 g", StoreProbe.Potential<PistonGasStore>(10.2794211e-3, k), 1.45e5, 1e-6),
                new("out, 47.5348953 g", StoreProbe.Potential<PistonGasStore>(47.5348953e-3, k), 4e5, 1e-6),
            ];
        });

    /// <summary>A line full of air, one full of liquid that takes up a cubic centimetre more, and one half drawn out. Source: ideal gas law, Hooke's law of the walls; the quadratic solved apart.</summary>
    public static ReferenceCheck LineOfBoth { get; } = new(
        "line of liquid and air",
        "liquid/ρ = (1 − a)·V, air·R·T = (a·p − r)·V, V = V₀(1 + e(p − p_a))",
        new Dictionary<string, double> { ["volume"] = 1e-3, ["density"] = Density, ["elasticity"] = 1e-8, ["temperature"] = 293.15, ["residual pressure"] = 10 },
        x =>
        {
            double[] k = LiquidAirLine.ParametersOf(x["volume"], x["density"], x["elasticity"], x["temperature"], x["residual pressure"]);
            double Pressure(double liquid, double air) => StoreProbe.Evaluate<LiquidAirLine>([liquid, air], k).Potentials[0];
            double[] full = LiquidAirLine.AmountsAt(k, 5e5, 0);
            double half = LiquidAirLine.AmountsAt(k, Physical.Atmosphere, 0)[0] / 2;
            return
            [
                new("2 g of air alone", Pressure(0, 2e-3), 168194.95, 1e-6),
                new("rise by 0.84 g of liquid from 5 bar", Pressure(full[0] + 0.84e-3, full[1]) - 5e5, 99667.926, 1e-5),
                new("half drawn out", Pressure(half, 0), 20.0183225, 1e-5),
            ];
        });
}
