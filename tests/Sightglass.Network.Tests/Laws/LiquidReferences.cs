using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

/// <summary>Checks of liquid laws against closed forms. The closed forms were integrated independently when the list was made.</summary>
public static partial class LiquidReferences
{
    private const double Oil = 840;

    private const double OilViscosity = 3e-6;

    /// <summary>Levels are compared as heights over the floor: h = (p − p_s)/(ρ·g).</summary>
    private static double Level(double pressure) => (pressure - Physical.Atmosphere) / (Oil * Physical.Gravity);

    private static double Circle(double diameter) => Math.PI / 4 * diameter * diameter;

    /// <summary>
    /// The last of the liquid leaves through the rounded corner of the law, so 'empty' is compared at the level that the closed form has a thousandth
    /// of the time before its end (1.2 µm). Source: Torricelli, quasi-steady energy equation (White, Fluid Mechanics, from memory).
    /// </summary>
    public static ReferenceCheck Torricelli { get; } = new(
        "A1_01",
        "t = A_T/(Cd·A_o)·√(2/g)·(√h1−√h2); Q = Cd·A_o·√(2gh)",
        new Dictionary<string, double> { ["tank area"] = 1.5, ["diameter"] = 0.025, ["discharge"] = 0.62 },
        x =>
        {
            double[] opening = LiquidOrifice.ParametersOf(x["discharge"], Circle(x["diameter"]), Oil, OilViscosity);
            SmallNetwork net = new();
            int tank = net.Add<PrismaticTank>(PrismaticTank.ParametersOf(x["tank area"], 1, 2, Oil), 1.2 * x["tank area"] * Oil);
            int outside = net.Add<FixedStore>([Physical.Atmosphere], 0);
            net.Join<LiquidOrifice>(opening, [1], tank, outside);
            double flow = LawProbe.Flow<LiquidOrifice>([net.Potential(tank), Physical.Atmosphere], opening, 1) / Oil;
            double quarter = net.RunUntil(() => Level(net.Potential(tank)) - 0.3, 3000);
            double nearlyEmpty = net.RunUntil(() => net.Amount(tank) - (1.2e-6 * x["tank area"] * Oil), 3000);
            return
            [
                new("flow at 1.2 m", flow, 1.4764799e-3, 1e-6),
                new("1.2 m to 0.3 m", quarter, 1219.1158, 1e-4),
                new("1.2 m to a thousandth before empty", nearlyEmpty, 2438.2316 * 0.999, 1e-4),
            ];
        });

    /// <summary>Source: unsteady orifice flow (Streeter; Daugherty; from memory). Equal levels are compared a hundredth of the time before them.</summary>
    public static ReferenceCheck Equalising { get; } = new(
        "A1_02",
        "t = 2·A1·A2/[(A1+A2)·Cd·A_o·√(2g)]·(√H1−√H2)",
        new Dictionary<string, double> { ["first area"] = 1.0, ["second area"] = 0.5, ["diameter"] = 0.020, ["discharge"] = 0.62 },
        x =>
        {
            SmallNetwork net = new();
            int a = net.Add<PrismaticTank>(PrismaticTank.ParametersOf(x["first area"], 1, 2, Oil), 1.0 * x["first area"] * Oil);
            int b = net.Add<PrismaticTank>(PrismaticTank.ParametersOf(x["second area"], 1, 2, Oil), 0.2 * x["second area"] * Oil);
            net.Join<LiquidOrifice>(LiquidOrifice.ParametersOf(x["discharge"], Circle(x["diameter"]), Oil, OilViscosity), [1], a, b);
            double Difference() => Level(net.Potential(a)) - Level(net.Potential(b));
            double half = net.RunUntil(() => Difference() - 0.2, 1000);
            double nearly = net.RunUntil(() => Difference() - (0.8 * 1e-4), 1000);
            net.RunTo(1000);
            return
            [
                new("difference 0.8 m to 0.2 m", half, 345.62635, 1e-4),
                new("difference 0.8 m to a hundredth before equal", nearly, 691.25269 * 0.99, 1e-4),
                new("level of the first", Level(net.Potential(a)), 0.73333333, 1e-6),
                new("level of the second", Level(net.Potential(b)), 0.73333333, 1e-6),
            ];
        });
}
