using Sightglass.Network.Circuits;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Gas;
using Sightglass.Network.Laws.Motion;
using Sightglass.Network.Phasors;
using Sightglass.Network.Springs;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Circuits;
using Sightglass.Network.Tests.Phasors;
using Sightglass.Network.Tests.Probes;
using Sightglass.Network.Tests.Springs;

namespace Sightglass.Network.Tests.Laws;

/// <summary>Checks of what is neither liquid nor gas alone: motion, heat, lags, water out of air, circuits, feeders, springs. Values were worked out independently when the list was made.</summary>
public static class MachineReferences
{
    /// <summary>To 25 m/s in 239.13966 s over 3,066.4173 m. Source: derived, t = m/√(FC)·artanh(v√(C/F)).</summary>
    public static ReferenceCheck ForceAgainstDrag { get; } = new(
        "A4_08",
        "t = m/√(FC)·artanh(v√(C/F)); s = m/(2C)·ln(F/(F − C·v²))",
        new Dictionary<string, double> { ["mass"] = 472.5e3, ["force"] = 52e3, ["drag"] = 12 },
        x =>
        {
            SmallNetwork net = new();
            int train = net.Add<LinearStore>(LinearStore.ParametersOf(0, 0, x["mass"]), 0);
            int way = net.Add<LinearStore>(LinearStore.ParametersOf(0, 0, 1), 0);
            int ground = net.Add<FixedStore>([0], 0);
            net.Join<SetFlow>([], [x["force"]], ground, train);
            net.Join<SpeedResistance>(SpeedResistance.ParametersOf(0, 0, x["drag"]), [1], train, ground);
            net.Join<LinearPath>([1], [1], ground, way, (train, 0), (ground, 0));
            double time = net.RunUntil(() => 25 - net.Potential(train), 400);
            return [new("time", time, 239.13966, 1e-4), new("way", net.Amount(way), 3066.4173, 1e-4)];
        });

    /// <summary>A + B·v + C·v² at 20 m/s: 8,000 + 6,000 + 4,800 N. Source: the form of 1926 (Davis, from memory); by hand.</summary>
    public static ReferenceCheck Resistance { get; } = new(
        "A4_01",
        "R = A + B·v + C·v²",
        new Dictionary<string, double> { ["constant"] = 8000, ["per speed"] = 300, ["per square"] = 12 },
        x => [new("at 20 m/s", LawProbe.Flow<SpeedResistance>([20, 0], SpeedResistance.ParametersOf(x["constant"], x["per speed"], x["per square"]), 1), 18_800, 1e-6)]);

    /// <summary>From 95 °C to 73.043077 °C in 1,800 s with 12 kW. Source: Incropera ch. 5 (from memory).</summary>
    public static ReferenceCheck WarmBody { get; } = new(
        "A5_01",
        "T = T∞ + P/G + (T₀ − T∞ − P/G)·exp(−G·t/C)",
        new Dictionary<string, double> { ["heat capacity"] = 500e3, ["conductance"] = 250, ["power"] = 12e3 },
        x =>
        {
            SmallNetwork net = new();
            int body = net.Add<LinearStore>(LinearStore.ParametersOf(0, 0, x["heat capacity"]), x["heat capacity"] * (95 + 273.15));
            int air = net.Add<FixedStore>([283.15], 0);
            net.Join<LinearPath>(LinearPath.ParametersOf(x["conductance"]), [1], body, air);
            net.Join<SetFlow>([], [x["power"]], air, body);
            net.RunTo(1800);
            return [new("after 1,800 s", net.Potential(body), 73.043077 + 273.15, 1e-5)];
        });

    /// <summary>Half of the aim and nothing of it gone: (1 − 0.3)/900 a second; a counter takes 1/τ. Source: first-order lag; by hand.</summary>
    public static ReferenceCheck FollowerAndCounter { get; } = new(
        "lag",
        "ż = (aim − z)/τ; ż = aim/τ",
        new Dictionary<string, double> { ["follows in"] = 900, ["counts in"] = 40 },
        x =>
        [
            new("follower", LawProbe.Flow<Lag>([0, 0.3], Lag.Follower(x["follows in"]), 1), 0.7 / 900, 1e-9),
            new("counter", LawProbe.Flow<Lag>([0, 0.3], Lag.Counter(x["counts in"]), 1), 1.0 / 40, 1e-9),
        ]);

    /// <summary>
    /// What a machine draws less what its dead volume keeps brings vapour, and what saturates the air at the pressure of the store stays in it; a drain takes 1/τ of the liquid. Source: mass balance with Dalton's law,
    /// derived; by hand at 10 rev/s and 9 bar: 10 · 1e-7 · 0.01 · (1.02 · 1e5 − 0.02 · 9e5) · (9e5 − 2,300 − 1.6e5)/(9e5 − 2,300).
    /// </summary>
    public static ReferenceCheck WaterOutOfAir { get; } = new(
        "condensation",
        "ṁ_w = ṁ·x·(p − e − c₀)/(p − e) − w/τ",
        new Dictionary<string, double> { ["swept"] = 1e-7, ["clearance"] = 0.02, ["intake"] = 1e5, ["drain time"] = 5, ["begins at"] = 1.6e5, ["saturates at"] = 2300 },
        x =>
        {
            double[] law = Condensation.ParametersOf([x["swept"], 1 + x["clearance"], x["clearance"]], x["intake"], x["drain time"]);
            double brought = 10 * 1e-7 * 0.01 * ((1.02 * 1e5) - (0.02 * 9e5)), share = (9e5 - 2300 - 1.6e5) / (9e5 - 2300);
            return
            [
                new("shut", LawProbe.Flow<Condensation>([0, 2, 9e5], law, 10, 0.01, x["begins at"], x["saturates at"], 0), brought * share, 2e-6),
                new("open", LawProbe.Flow<Condensation>([0, 2, 9e5], law, 10, 0.01, x["begins at"], x["saturates at"], 1) - (brought * share), -2.0 / 5, 1e-5),
            ];
        });

    /// <summary>Source: network theory (any text), γ = 2·asinh(½√(r/R)).</summary>
    public static ReferenceCheck Ladder { get; } = new(
        "A3_10",
        "V_end/V_in = cosh(γ/2)/cosh((2n+1)γ/2)",
        new Dictionary<string, double> { ["along"] = 0.05, ["across"] = 40, ["voltage"] = 74 },
        x =>
        {
            CircuitBuilder b = new();
            Node ground = DirectCurrentTests.Ground(b), at = b.AddNode("head");
            b.AddSource("supply", ground, at, 1e-9, b.AddInput("volts", x["voltage"]));
            for (int i = 0; i < 10; i++)
            {
                Node next = b.AddNode($"{i}");
                b.AddResistance($"along {i}", at, next, x["along"]);
                b.AddResistance($"across {i}", next, ground, x["across"]);
                at = next;
            }

            return [new("end", DirectCurrentTests.Solved(b.Build()).Voltage(at), 69.189477, 1e-6)];
        });

    /// <summary>200 A at a power factor of 0.85 through 400 ft. Source: IEEE Std 141, ch. 3 (from memory).</summary>
    public static ReferenceCheck Feeder { get; } = new(
        "A3_01",
        "V_R = √(V_S² − b²) − a; 3·I²·R",
        new Dictionary<string, double> { ["resistance"] = 0.4 * 0.054, ["reactance"] = 0.4 * 0.052, ["current"] = 200 },
        x =>
        {
            FlowRig rig = new();
            Terminal[] far = rig.Place("far");
            rig.Join("feeder", rig.Source("supply", FlowRig.Volts480), far, new Phasor(x["resistance"], x["reactance"]));
            double va = x["current"] * FlowRig.Volts480;
            rig.Loads("load", far, LoadKind.Current, FlowRig.Volts480, va * 0.85, va * Math.Sqrt(1 - (0.85 * 0.85)));
            FlowState s = rig.Solve();
            return [new("far voltage", s.Voltage(far[0]).Magnitude * Math.Sqrt(3), 469.83930, 1e-6), new("lost", s.Lost.Re, 2592, 1e-6)];
        });

    /// <summary>Four springs in a row under a load off the middle. Source: statics, R_i = k_i·(z₀ + φ·x_i), ΣR = W, ΣR·x = W·e.</summary>
    public static ReferenceCheck FourSprings { get; } = new(
        "A4_14",
        "R_i = k_i·(z₀ + φ·x_i)",
        new Dictionary<string, double> { ["weight"] = 400e3, ["off the middle"] = 0.2, ["first stiffness"] = 1.3e6, ["third stiffness"] = 1.56e6, ["last place"] = 3.2 },
        x =>
        {
            SuspensionBuilder b = new();
            Body body = b.AddBody("body", 0, 0, Freedoms.Heave | Freedoms.Pitch);
            b.AddWeight(body, x["off the middle"], 0, b.AddInput("weight", x["weight"]));
            (double Place, double Stiffness)[] all = [(-3, x["first stiffness"]), (-1, 1.56e6), (1.5, x["third stiffness"]), (x["last place"], 1.3e6)];
            Spring[] springs = [.. all.Select((s, i) => b.AddSpring($"{i}", body, null, s.Place, 0, s.Stiffness))];
            SuspensionState state = SuspensionTests.Solved(b);
            double[] expected = [89_902.744, 108_642.37, 109_591.21, 91_863.683];
            return [.. springs.Select((s, i) => new Expectation($"spring {i}", state.Force(s), expected[i], 1e-6))];
        });
}
