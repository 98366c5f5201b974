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

    /// <summary>
    /// The formulas for the friction factor. Source: Colebrook 1939 through a public library's documentation (the second point), the others and the explicit
    /// formulas from White, ch. 6 (from memory).
    /// </summary>
    public static ReferenceCheck Friction { get; } = new(
        "A1_03",
        "Colebrook, Swamee-Jain, Haaland, 64/Re",
        new Dictionary<string, double> { ["Reynolds number"] = 1e5, ["roughness"] = 1e-3 },
        x =>
        {
            double re = x["Reynolds number"] / 1e5, rough = x["roughness"] / 1e-3;
            return
            [
                new("Colebrook 1e4 smooth", FrictionFactor.Colebrook(1e4 * re, 0), 0.030882950, 1e-7),
                new("Colebrook 1e5, 1e-4", FrictionFactor.Colebrook(1e5 * re, 1e-4 * rough), 0.018513866077471, 1e-7),
                new("Colebrook 1e5, 1e-3", FrictionFactor.Colebrook(1e5 * re, 1e-3 * rough), 0.022174536, 1e-7),
                new("Colebrook 1e6, 1e-4", FrictionFactor.Colebrook(1e6 * re, 1e-4 * rough), 0.013441438, 1e-7),
                new("Colebrook 1e7, 1e-2", FrictionFactor.Colebrook(1e7 * re, 1e-2 * rough), 0.037909826, 1e-7),
                new("Swamee-Jain 1e4 smooth", FrictionFactor.SwameeJain(1e4 * re, 0), 0.030972097, 1e-7),
                new("Swamee-Jain 1e5, 1e-4", FrictionFactor.SwameeJain(1e5 * re, 1e-4 * rough), 0.018452445, 1e-7),
                new("Swamee-Jain 1e5, 1e-3", FrictionFactor.SwameeJain(1e5 * re, 1e-3 * rough), 0.022342412, 1e-7),
                new("Swamee-Jain 1e6, 1e-4", FrictionFactor.SwameeJain(1e6 * re, 1e-4 * rough), 0.013507703, 1e-7),
                new("Swamee-Jain 1e7, 1e-2", FrictionFactor.SwameeJain(1e7 * re, 1e-2 * rough), 0.037917354, 1e-7),
                new("Haaland 1e4 smooth", FrictionFactor.Haaland(1e4 * re, 0), 0.030886204, 1e-7),
                new("Haaland 1e5, 1e-4", FrictionFactor.Haaland(1e5 * re, 1e-4 * rough), 0.018265053, 1e-7),
                new("Haaland 1e5, 1e-3", FrictionFactor.Haaland(1e5 * re, 1e-3 * rough), 0.021966214, 1e-7),
                new("Haaland 1e6, 1e-4", FrictionFactor.Haaland(1e6 * re, 1e-4 * rough), 0.013326160, 1e-7),
                new("Haaland 1e7, 1e-2", FrictionFactor.Haaland(1e7 * re, 1e-2 * rough), 0.037985294, 1e-7),
                new("laminar 1000", FrictionFactor.Laminar(1e3 * re), 0.064, 1e-7),
            ];
        });

    /// <summary>Source: White, ch. 6; Crane TP-410, ch. 1 (from memory). The law is asked for the flow at the pressure difference of the list.</summary>
    public static ReferenceCheck PipeWithFittings { get; } = new(
        "A1_04",
        "V = 4Q/πD², Re = VD/ν, Δp = (fL/D+ΣK)ρV²/2",
        new Dictionary<string, double>
        {
            ["density"] = 840,
            ["viscosity"] = 3.0e-6,
            ["diameter"] = 0.026645,
            ["length"] = 12,
            ["roughness"] = 0.045e-3,
            ["fittings"] = 4.5,
        },
        x =>
        {
            double[] pipe = LiquidPipe.ParametersOf(x["diameter"], x["length"], x["roughness"], x["fittings"], x["density"], x["viscosity"]);
            return [new("flow at 6854.4551 Pa", LawProbe.Flow<LiquidPipe>([6854.4551, 0], pipe) / 840, 0.5e-3, 1e-6)];
        });

    /// <summary>
    /// Source: IEC 60534-2-1 and a public library's documentation for (a) and (c), Crane TP-410 from memory for (b). Valves are laws here, so each line is a flow.
    /// </summary>
    public static ReferenceCheck ValveCoefficients { get; } = new(
        "A1_05",
        "Q[gpm] = Cv√(Δp[psi]/SG); Q[m³/h] = Kv√(Δp[bar]/SG); Cv = 1.1560992·Kv; K = 1.598876e9·D⁴/Kv²",
        new Dictionary<string, double> { ["Kv"] = 2, ["Cv of b"] = 10, ["Cv of c"] = 2.712, ["density"] = 840 },
        x =>
        {
            const double waterViscosity = 1e-6, gallonPerMinute = 3.785411784e-3 / 60, psi = 6894.757293;
            double Volume(double kv, double density, double drop) =>
                LawProbe.Flow<LiquidOrifice>([drop, 0], LiquidOrifice.OfFlowCoefficient(kv, density, waterViscosity), 1) / density;
            double speed = Volume(LiquidOrifice.KvOfCv(x["Cv of c"]), 1000, 1e5) / Circle(0.015);
            return
            [
                new("(a) gallons a minute at 1 psi", Volume(x["Kv"], 1000, psi) / gallonPerMinute, 2.3121985, 1e-6),
                new("(b) litres a minute at 3 psi", Volume(LiquidOrifice.KvOfCv(x["Cv of b"]), x["density"], 3 * psi) * 60e3, 71.537559, 1e-6),
                new("(c) loss coefficient in 15 mm", 1e5 / (500 * speed * speed), 14.709254, 1e-6),
            ];
        });

    /// <summary>Source: Karassik, Pump Handbook, system curves (from memory); derivation. Where pump and system meet is found here by halving.</summary>
    public static ReferenceCheck PumpMeetsSystem { get; } = new(
        "A1_06",
        "(a) Q* = √((H0−Hs)/(a+k)); (b) Q = D·n/(1+Rs·G)",
        new Dictionary<string, double>
        {
            ["shut-off head"] = 30,
            ["pump loss"] = 0.8e6,
            ["static head"] = 5,
            ["system loss"] = 1.7e6,
            ["displacement"] = 20e-6,
            ["speed"] = 20,
            ["slip"] = 2.0e-11,
            ["resistance"] = 1.5e9,
        },
        x =>
        {
            double weight = Oil * Physical.Gravity;
            double[] pump = CurvePump.Parabola(x["shut-off head"], x["pump loss"], Oil);
            double[] system = LiquidOrifice.ParametersOf(0.62, Math.Sqrt(1 / (2 * Physical.Gravity * x["system loss"])) / 0.62, Oil, OilViscosity);
            double meeting = Root.Of(
                p => LawProbe.Flow<CurvePump>([0, p], pump, 1) - LawProbe.Flow<LiquidOrifice>([p - (weight * x["static head"]), 0], system, 1), 0, weight * 30);
            double flow = LawProbe.Flow<CurvePump>([0, meeting], pump, 1) / Oil;
            double[] gear = DisplacementPump.ParametersOf(x["displacement"], x["slip"], Oil, 1e7, x["displacement"] * x["speed"]);
            double[] line = LiquidFilter.LaminarLine(x["resistance"], Oil);
            double against = Root.Of(
                p => LawProbe.Flow<DisplacementPump>([1e5, 1e5 + p], gear, x["speed"]) - LawProbe.Flow<LiquidFilter>([p, 0], line, 0), 0, 1e7);
            double gearFlow = LawProbe.Flow<LiquidFilter>([against, 0], line, 0) / Oil;
            return
            [
                new("(a) flow", flow, 3.1622777e-3, 1e-6),
                new("(a) head", meeting / weight, 22, 1e-6),
                new("(a) hydraulic power", flow * meeting, 573.08975, 1e-6),
                new("(b) flow", gearFlow, 0.38834951e-3, 1e-6),
                new("(b) pressure difference", against, 5.8252427e5, 1e-6),
                new("(b) volumetric efficiency", gearFlow / 0.4e-3, 0.97087379, 1e-6),
            ];
        });

    /// <summary>Source: Crane TP-410, parallel paths (from memory).</summary>
    public static ReferenceCheck ParallelBranches { get; } = new(
        "A1_07",
        "Q_i = Q·K_i^-½/Σ K^-½; K_eq = (ΣK^-½)^-2",
        new Dictionary<string, double> { ["first"] = 1.5e9, ["second"] = 4.0e9, ["third"] = 9.0e9, ["flow"] = 2e-3 },
        x =>
        {
            double[][] branches = [.. new[] { "first", "second", "third" }
                .Select(b => LiquidOrifice.ParametersOf(0.62, Math.Sqrt(Oil / (2 * x[b])) / 0.62, Oil, OilViscosity))];
            double Flow(int branch, double drop) => LawProbe.Flow<LiquidOrifice>([drop, 0], branches[branch], 1) / Oil;
            double common = Root.Of(p => Flow(0, p) + Flow(1, p) + Flow(2, p) - x["flow"], 0, 1e5);
            return
            [
                new("pressure difference", common, 1.4695408e3, 1e-6),
                new("common coefficient", common / (x["flow"] * x["flow"]), 0.36738520e9, 1e-6),
                new("first branch", Flow(0, common), 0.98979486e-3, 1e-6),
                new("second branch", Flow(1, common), 0.60612309e-3, 1e-6),
                new("third branch", Flow(2, common), 0.40408206e-3, 1e-6),
            ];
        });

    /// <summary>
    /// A line that draws 2 m up through a loss of 1.5 m: what is over the vapour pressure at its end. Source: Hydraulic Institute; Karassik (from memory).
    /// </summary>
    public static ReferenceCheck SuctionLimit { get; } = new(
        "A1_08",
        "NPSHa = (p_a−p_v)/(ρg) + z_s − h_f; max lift = (p_a−p_v)/ρg − h_f − NPSHr",
        new Dictionary<string, double> { ["surface pressure"] = 101_325, ["lift"] = 2.0, ["loss"] = 1.5, ["density"] = 840 },
        x =>
        {
            const double vapour = 1000, flow = 0.5, needed = 3.0;
            double weight = x["density"] * Physical.Gravity;
            double area = flow / (0.62 * Math.Sqrt(2 * x["density"] * weight * x["loss"]));
            double AtPump(double lift)
            {
                double[] line = LiquidOrifice.ParametersOf(0.62, area, x["density"], OilViscosity, -weight * lift);
                double pressure = Root.Of(p => flow - LawProbe.Flow<LiquidOrifice>([x["surface pressure"], p], line, 1), -1e5, 1e5);
                return (pressure - vapour) / weight;
            }

            return
            [
                new("head over the vapour pressure", AtPump(x["lift"]), 8.6789320, 1e-6),
                new("lift that leaves what is needed", Root.Of(lift => needed - AtPump(lift), 0, 12), 7.6789320, 1e-6),
            ];
        });
}
