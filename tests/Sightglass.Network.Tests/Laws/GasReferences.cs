using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Gas;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

/// <summary>Checks of gas laws against closed forms. The closed forms were integrated independently when the list was made.</summary>
public static class GasReferences
{
    private const double Room = 293.15;

    /// <summary>Source: White, ch. 9 (from memory); 0.528 read in a tutorial.</summary>
    public static ReferenceCheck Orifice { get; } = new(
        "A2_01",
        "ψ = √γ(2/(γ+1))^((γ+1)/(2(γ−1))); choked ṁ = CdA·p1·ψ/√(RT1); subsonic by r^(2/γ) − r^((γ+1)/γ)",
        new Dictionary<string, double>
        {
            ["effective area"] = 1e-6,
            ["upstream pressure"] = 8e5,
            ["temperature"] = Room,
            ["heat ratio"] = 1.4,
            ["gas constant"] = 287.05,
            ["downstream pressure"] = 6e5,
        },
        x =>
        {
            double[] k = GasOrifice.ParametersOf(1, x["effective area"], x["temperature"], x["heat ratio"], x["gas constant"]);
            double choked = LawProbe.Flow<GasPassage>([x["upstream pressure"], 1e5], k, 1);
            return
            [
                new("critical ratio", GasOrifice.CriticalRatio(x["heat ratio"]), 0.52828179, 1e-7),
                new("ψ", GasOrifice.ChokedFactor(x["heat ratio"]), 0.68473146, 1e-7),
                new("choked", choked, 1.8883676e-3, 1e-6),
                new("choked, reference air", choked / Physical.ReferenceAirDensity, 1.5935592e-3, 1e-6),
                new("subsonic", LawProbe.Flow<GasPassage>([x["upstream pressure"], x["downstream pressure"]], k, 1), 1.6689089e-3, 1e-6),
                new("backwards", LawProbe.Flow<GasPassage>([x["downstream pressure"], x["upstream pressure"]], k, 1), -1.6689089e-3, 1e-6),
            ];
        });

    /// <summary>Source: standard derivation (Crowl and Louvar; Perry's; from memory).</summary>
    public static ReferenceCheck IsothermalBlowDown { get; } = new(
        "A2_02",
        "p = p0·e^(−t/τ), τ = V/(Cd·A·ψ·√(RT))",
        new Dictionary<string, double> { ["volume"] = 0.1, ["diameter"] = 0.003, ["discharge"] = 0.8, ["temperature"] = Room },
        x =>
        {
            SmallNetwork net = new();
            int vessel = net.Add<LinearStore>(LinearStore.IsothermalGas(x["volume"], x["temperature"]), 8e5 * x["volume"] / (287.05 * x["temperature"]));
            int outside = net.Add<FixedStore>([Physical.Atmosphere], 0);
            net.Join<GasPassage>(GasOrifice.ParametersOf(x["discharge"], Math.PI / 4 * x["diameter"] * x["diameter"], x["temperature"]), [1], vessel, outside);
            double toE = net.RunUntil(() => net.Potential(vessel) - (8e5 / Math.E), 1000);
            return [new("to 8 bar/e", toE, 89.029435, 1e-4), new("to 2 bar", net.RunUntil(() => net.Potential(vessel) - 2e5, 1000), 123.42100, 1e-4)];
        });

    /// <summary>The vessel's wall exchanges no heat: n = γ, and the flow is that of its falling temperature. Source: as A2-02.</summary>
    public static ReferenceCheck AdiabaticBlowDown { get; } = new(
        "A2_03",
        "t = 2V/((γ−1)Cd·A·ψ·√(RT0))·((p0/p)^((γ−1)/2γ) − 1); T = T0(p/p0)^((γ−1)/γ); m/m0 = (p/p0)^(1/γ)",
        new Dictionary<string, double>
        {
            ["volume"] = 0.1,
            ["diameter"] = 0.003,
            ["discharge"] = 0.8,
            ["temperature"] = Room,
            ["exponent of the store"] = 1.4,
            ["exponent of the flow"] = 1.4,
        },
        x =>
        {
            SmallNetwork net = new();
            double[] gas = PolytropicGasStore.ParametersOf(x["volume"], 8e5, x["temperature"], x["exponent of the store"]);
            double start = 1 / gas[1];
            int vessel = net.Add<PolytropicGasStore>(gas, start);
            int outside = net.Add<FixedStore>([Physical.Atmosphere], 0);
            double[] opening = GasOrifice.ParametersOf(x["discharge"], Math.PI / 4 * x["diameter"] * x["diameter"], x["temperature"]);
            net.Join<PolytropicEnds<GasPassage>>(
                PolytropicEnds<GasPassage>.ParametersOf(opening, (8e5, x["exponent of the flow"]), (Physical.Atmosphere, 1), 1e-6), [1], vessel, outside);
            double time = net.RunUntil(() => net.Potential(vessel) - 2e5, 1000);
            double share = net.Amount(vessel) / start;
            return
            [
                new("to 2 bar", time, 97.493310, 1e-4),
                new("temperature", 2e5 * x["volume"] / (net.Amount(vessel) * 287.05), 197.27532, 1e-4),
                new("share left", share, 0.37149857, 1e-4),
            ];
        });

    /// <summary>Source: ISO 6358-1 (formula read in documentation of two general modelling tools; ρ0, T0 and S ≈ 5C from memory).</summary>
    public static ReferenceCheck Component { get; } = new(
        "A2_04",
        "choked ṁ = C·p1·ρ0·√(T0/T1), else × √(1 − ((p2/p1−b)/(1−b))²); orifice C = CdA·ψ/(ρ0√(R·T0))",
        new Dictionary<string, double>
        {
            ["conductance"] = 2.0e-8,
            ["critical ratio"] = 0.35,
            ["upstream pressure"] = 7e5,
            ["temperature"] = 298.15,
            ["diameter"] = 0.005,
            ["discharge"] = 0.65,
        },
        x =>
        {
            double[] k = GasIso6358.ParametersOf(x["conductance"], x["critical ratio"], x["temperature"]);
            double subsonic = LawProbe.Flow<GasIso6358>([x["upstream pressure"], 5.5e5], k, 1);
            double choked = LawProbe.Flow<GasIso6358>([x["upstream pressure"], 2e5], k, 1);
            return
            [
                new("subsonic", subsonic, 0.012207169, 1e-6),
                new("subsonic, dm³/min of reference air", subsonic / 1.185 * 60e3, 618.08451, 1e-6),
                new("choked", choked, 0.016450304, 1e-6),
                new("choked, dm³/min of reference air", choked / 1.185 * 60e3, 832.92679, 1e-6),
                new("C of an orifice", GasIso6358.ConductanceOf(x["discharge"], Math.PI / 4 * x["diameter"] * x["diameter"]) * 1e8, 2.5422687, 1e-6),
                new("C of 1 mm²", GasIso6358.ConductanceOf(1, 1e-6) * 1e8, 0.19919490, 1e-6),
            ];
        });

    /// <summary>
    /// Equal pressure is reached in finite time by the ideal law only; here 'full' is a ten-millionth below the supply. Source: derived by integration.
    /// </summary>
    public static ReferenceCheck Charging { get; } = new(
        "A2_05",
        "t = τ(b−r0), then τ(1−b)·asin((r−b)/(1−b)); full at τ((b−r0)+(1−b)π/2); τ = V/(R·T·C·ρ0)",
        new Dictionary<string, double> { ["volume"] = 0.010, ["conductance"] = 5e-8, ["critical ratio"] = 0.3, ["supply"] = 9e5 },
        x =>
        {
            SmallNetwork net = new();
            int supply = net.Add<FixedStore>([x["supply"]], 0);
            int vessel = net.Add<LinearStore>(LinearStore.IsothermalGas(x["volume"], Room), 1e5 * x["volume"] / (287.05 * Room));
            net.Join<GasIso6358>(GasIso6358.ParametersOf(x["conductance"], x["critical ratio"]), [1], supply, vessel);
            double To(double pressure) => net.RunUntil(() => pressure - net.Potential(vessel), 10);
            return
            [
                new("to 2.7 bar", To(2.7e5), 0.37885289, 1e-4),
                new("to 5 bar", To(5e5), 0.90354715, 1e-4),
                new("to 8 bar", To(8e5), 1.7823146, 1e-4),
                new("to 8.9 bar", To(8.9e5), 2.3337404, 1e-4),
                new("to 9 bar", To(x["supply"] * (1 - 1e-7)), 2.5842262, 1e-3),
            ];
        });

    /// <summary>A machine without clearance delivers the same free air at any pressure. Source: Compressed Air and Gas Handbook (from memory).</summary>
    public static ReferenceCheck PumpUp { get; } = new(
        "A2_06",
        "t = V·Δp/(p_a·Q_FAD)",
        new Dictionary<string, double> { ["volume"] = 0.85, ["free air a revolution"] = 2.2 / 600, ["speed"] = 10 },
        x =>
        {
            const double cubicFoot = 0.3048 * 0.3048 * 0.3048, psi = 6894.757293;
            double Time(double volume, double freeAir, double from, double to)
            {
                SmallNetwork net = new();
                int outside = net.Add<FixedStore>([Physical.Atmosphere], 0);
                int vessel = net.Add<LinearStore>(LinearStore.IsothermalGas(volume, Room), (Physical.Atmosphere + from) * volume / (287.05 * Room));
                net.Join<GasPump>(GasPump.ParametersOf(freeAir, 0, Room), [x["speed"]], outside, vessel);
                return net.RunUntil(() => Physical.Atmosphere + to - net.Potential(vessel), 1000);
            }

            return
            [
                new("(a) 0 to 140 psi", Time(30 * cubicFoot, 80 * cubicFoot / 600, 0, 140 * psi), 214.34478, 1e-5),
                new("(b) 130 to 140 psi", Time(30 * cubicFoot, 80 * cubicFoot / 600, 130 * psi, 140 * psi), 15.310342, 1e-5),
                new("(c) 0 to 9.65 bar", Time(x["volume"], x["free air a revolution"], 0, 9.65e5), 220.77922, 1e-5),
            ];
        });

    /// <summary>Source: Crane TP-410 through a public library's documentation (read, both values).</summary>
    public static ReferenceCheck Pipe { get; } = new(
        "A2_09",
        "ṁ² = (πD²/4)²·ρ1·(p1²−p2²)/p1/(f·L/D + 2ln(p1/p2))",
        new Dictionary<string, double>
        {
            ["density"] = 11.3,
            ["friction"] = 0.00185,
            ["upstream pressure"] = 1e6,
            ["downstream pressure"] = 0.9e6,
            ["diameter"] = 0.5,
        },
        x =>
        {
            double Flow(double length)
            {
                double[] k = GasPipe.ParametersOf(x["diameter"], length, x["friction"], x["upstream pressure"] / x["density"]);
                return LawProbe.Flow<GasPassage>([x["upstream pressure"], x["downstream pressure"]], k, 1);
            }

            return [new("flow", Flow(1000), 145.48476, 1e-6), new("length for 150 kg/s", Root.Of(l => Flow(l) - 150, 500, 2000), 937.32580, 1e-6)];
        });

    /// <summary>
    /// What a vessel loses by a rate of pressure is its capacity times it. Source: gas law; the limits '5 psi per minute or 60 CFM' are in 49 CFR 232.205 (read).
    /// </summary>
    public static ReferenceCheck LeakageByRate { get; } = new(
        "A2_07",
        "q = V·(dp/dt)/p_a at standard temperature",
        new Dictionary<string, double> { ["diameter"] = 1.25 * 0.0254, ["length"] = 304.8, ["rate"] = 5 * 6894.757293 / 60 },
        x =>
        {
            const double cubicFoot = 0.3048 * 0.3048 * 0.3048, psi = 6894.757293;
            double volume = Math.PI / 4 * x["diameter"] * x["diameter"] * x["length"];
            double capacity = StoreProbe.Evaluate<LinearStore>([0], LinearStore.IsothermalGas(volume, Room)).Capacities[0];
            double density = Physical.Atmosphere / (287.05 * Room);
            return
            [
                new("volume, ft³", volume / cubicFoot, 8.5221155, 1e-6),
                new("ft³/min of free air", capacity * x["rate"] / density / cubicFoot * 60, 2.8994778, 1e-6),
                new("psi/min at 60 ft³/min", 60 * cubicFoot / 60 * density / capacity / psi * 60, 103.46691, 1e-6),
            ];
        });

    /// <summary>
    /// A small volume, swept from nothing, fills from a larger one. Source: Boyle's law; '2½ : 1' near full service read in a period question book, k from memory.
    /// </summary>
    public static ReferenceCheck Equalising { get; } = new(
        "A2_08",
        "p_c = k·r − p_a; p_e = (p0+p_a)·k/(1+k) − p_a",
        new Dictionary<string, double> { ["volume ratio"] = 3.25, ["first charge"] = 70, ["second charge"] = 90, ["third charge"] = 110 },
        x =>
        {
            const double psi = 6894.757293, outside = Physical.Atmosphere / psi;
            (double Small, double Large) Filled(double ratio, double charge, double reduction, double seconds)
            {
                SmallNetwork net = new();
                int large = net.Add<LinearStore>(LinearStore.IsothermalGas(0.01 * ratio, Room), (charge + outside) * psi * 0.01 * ratio / (287.05 * Room));
                int small = net.Add<LinearStore>(LinearStore.IsothermalGas(0.01, Room), 0);
                net.Join<GasIso6358>(GasIso6358.ParametersOf(5e-8, 0.3), [1], large, small);
                if (reduction > 0) net.RunUntil(() => (net.Potential(large) / psi) - outside - (charge - reduction), seconds); else net.RunTo(seconds);
                return ((net.Potential(small) / psi) - outside, (net.Potential(large) / psi) - outside);
            }

            double k = x["volume ratio"];
            return
            [
                new("equal from 70 psi", Filled(k, x["first charge"], 0, 20).Small, 50.071541, 1e-6),
                new("equal from 90 psi", Filled(k, x["second charge"], 0, 20).Small, 65.365659, 1e-6),
                new("equal from 110 psi", Filled(k, x["third charge"], 0, 20).Large, 80.659777, 1e-6),
                new("reduced by 10 psi", Filled(k, x["first charge"], 10, 20).Small, 17.804051, 1e-6),
                new("reduced by 15 psi", Filled(k, x["first charge"], 15, 20).Small, 34.054051, 1e-6),
                new("ratio 3, equal from 90 psi", Filled(3 * k / 3.25, x["second charge"], 0, 20).Small, 63.826013, 1e-6),
                new("ratio 3, equal from 110 psi", Filled(3 * k / 3.25, x["third charge"], 0, 20).Small, 78.826013, 1e-6),
            ];
        });
}
