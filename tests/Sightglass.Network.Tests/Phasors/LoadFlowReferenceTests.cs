using Sightglass.Network.Phasors;

namespace Sightglass.Network.Tests.Phasors;

/// <summary>Load flows against closed forms and a published feeder. Expected values were worked out independently when the list was made.</summary>
public sealed class LoadFlowReferenceTests
{
    /// <summary>V_R = √(V_S² − b²) − a. Source: IEEE Std 141, ch. 3 (from memory). The load draws 200 A at pf 0.85 whatever its voltage.</summary>
    [Fact]
    public void A3_01_Feeder_AtAKnownCurrent_HasTheVoltageAndLossOfTheFormula()
    {
        FlowRig rig = new();
        Terminal[] far = rig.Place("far");
        Line line = rig.Join("feeder", rig.Source("supply", FlowRig.Volts480), far, 0.4 * new Phasor(0.054, 0.052));
        double va = 200 * FlowRig.Volts480;
        Load[] load = rig.Loads("load", far, LoadKind.Current, FlowRig.Volts480, va * 0.85, va * Math.Sqrt(1 - (0.85 * 0.85)));
        FlowState s = rig.Solve();
        Assert.Equal(469.83930, s.Voltage(far[0]).Magnitude * Math.Sqrt(3), 469.8 * 1e-6);
        Assert.Equal(200, s.Current(line, 1).Magnitude, 1e-9);
        Assert.Equal(2592, s.Lost.Re, 2592 * 1e-6);
        Assert.Equal(200 * 0.85 * s.Voltage(load[2]).Magnitude, s.Power(load[2]).Re, 1e-6);
    }

    /// <summary>
    /// Eight equal taps of one current and one angle: ΔV = I·Z·(n+1)/(2n) along the voltage, loss 3I²R(n+1)(2n+1)/(6n²). Source: Kersting, Distribution System Modeling and Analysis, ch. 3 (from
    /// memory). The formula leaves out how far the voltage turns along the feeder: 0.1 % of the drop here.
    /// </summary>
    [Fact]
    public void A3_02_EqualTaps_AlongAFeeder_DropAndLoseWhatTheFormulaSays()
    {
        FlowRig rig = new();
        Terminal[] at = rig.Source("supply", FlowRig.Volts480);
        for (int i = 0; i < 8; i++)
        {
            Terminal[] next = rig.Place($"tap {i}");
            rig.Join($"span {i}", at, next, new Phasor(0.012 / 8, 0.018 / 8));
            double va = 300.0 / 8 * FlowRig.Volts480;
            rig.Loads($"car {i}", next, LoadKind.Current, FlowRig.Volts480, va * 0.85, va * Math.Sqrt(1 - (0.85 * 0.85)));
            at = next;
        }

        FlowState s = rig.Solve();
        Assert.Equal(3.3213524, FlowRig.Volts480 - s.Voltage(at[0]).Magnitude, 3.32 * 3e-3);
        Assert.Equal(1290.9375, s.Lost.Re, 1291 * 1e-4);
    }

    /// <summary>V⁴ + V²(2(RP + XQ) − Vs²) + (R² + X²)(P² + Q²) = 0, upper root. Source: any text of power flow (P-V curve).</summary>
    [Fact]
    public void A3_03_ConstantPower_BehindAnImpedance_TakesTheUpperRoot()
    {
        FlowState s = Behind(40_000, 30_000, out Line line, out Terminal[] far);
        Assert.Equal(272.54168, s.Voltage(far[0]).Magnitude, 272.5 * 1e-6);
        Assert.Equal(183.45818, s.Current(line, 0).Magnitude, 183.5 * 1e-6);
        Assert.Equal(673.13809 * 3, s.Lost.Re, 2019 * 1e-6);
    }

    /// <summary>S_max = Vs²/(2(|Z| + R·cosφ + X·sinφ)) = 768,000 VA a phase.</summary>
    [Fact]
    public void A3_03_ConstantPower_BeyondTheNose_CollapsesAndNamesTheLoad()
    {
        const double Most = 768_000;
        FlowState below = Behind(0.8 * Most * 0.9999, 0.6 * Most * 0.9999, out _, out Terminal[] far);
        Assert.Equal(FlowOutcome.Settled, below.Outcome);

        // At the nose V² = S·|Z|; a ten-thousandth below it √0.0001 above, by the same quadratic.
        double nose = Math.Sqrt(Most * 0.025);
        Assert.InRange(below.Voltage(far[0]).Magnitude / nose, 1.004, 1.02);
        FlowState beyond = Behind(0.8 * Most * 1.0001, 0.6 * Most * 1.0001, out _, out _);
        Assert.Equal(FlowOutcome.Collapsed, beyond.Outcome);
        FlowFinding found = Assert.Single(beyond.Flow.FindingsOf(beyond));
        Assert.Equal(FlowFindingKind.Collapse, found.Kind);
        Assert.StartsWith("load", found.Name, StringComparison.Ordinal);
        Assert.All(beyond.Voltages.ToArray(), v => Assert.True(v.IsFinite));
        Assert.Equal(default, beyond.Fed);
    }

    /// <summary>Four wires, loads of constant impedance, a neutral with an impedance. Source: Millman, V_n = ΣV·Y/(ΣY + 1/z_n).</summary>
    [Fact]
    public void A3_04_UnbalancedStar_OnANeutralWithAnImpedance_HasMillmansVoltage()
    {
        FlowRig rig = new();
        Terminal[] source = [.. rig.Source("supply", FlowRig.Volts480), rig.Builder.AddTerminal("supply n")];
        rig.Builder.Ground(source[3]);
        Terminal[] far = rig.Place("far", 4);
        Phasor z = new(0.03, 0.02), neutral = new(0.05, 0.02);
        Phasor[] matrix = new Phasor[16];
        (matrix[0], matrix[5], matrix[10], matrix[15]) = (z, z, z, neutral);
        Line line = rig.Join("line", source, far, matrix);
        Phasor[] impedances = [new(2, 0), new(3, 1), new(4, 2)];
        Load[] loads = new Load[3];
        for (int w = 0; w < 3; w++)
        {
            Phasor power = FlowRig.Volts480 * FlowRig.Volts480 * Phasor.Inverse(impedances[w]).Conjugate;
            loads[w] = rig.Builder.AddLoad($"{w}", far[w], far[3], LoadKind.Impedance, FlowRig.Volts480, rig.Input($"W{w}", power.Re), rig.Input($"var{w}", power.Im));
        }

        FlowState s = rig.Solve();
        FlowRig.Near(3.4713127, 23.566214, s.Voltage(far[3]), 1e-6, 1e-3);
        FlowRig.Near(134.94411, -0.8547, s.Current(line, 0), 1e-6, 1e-3);
        FlowRig.Near(87.557654, -139.0269, s.Current(line, 1), 1e-6, 1e-3);
        FlowRig.Near(61.566939, 94.0902, s.Current(line, 2), 1e-6, 1e-3);
        FlowRig.Near(64.460658, 1.7648, -s.Current(line, 3), 1e-6, 1e-3);
        Assert.Equal([269.88823, 276.88161, 275.33572], loads.Select(l => s.Voltage(l).Magnitude), (a, b) => Math.Abs(a - b) < 3e-4);
    }

    /// <summary>
    /// The four-node feeder of the IEEE, balanced load behind a step-down transformer of grounded stars, closer than its printing: values worked out independently. Data: line 2,000 ft and
    /// 2,500 ft, 6,000 kVA 12.47/4.16 kV with 1 + j6 %, 1,800 kW a phase at pf 0.9.
    /// </summary>
    [Fact]
    public void A3_05_FourNodeFeeder_Balanced_HasTheVoltagesAndCurrents()
    {
        (FlowState s, Line line, Terminal[] v2, Terminal[] v3, Terminal[] v4) = FourNodes();
        const double Within = 1e-5, Degrees = 1e-3;
        FlowRig.Near(7106.5293, -0.33915, s.Voltage(v2[0]), Within, Degrees);
        FlowRig.Near(7139.7198, -120.34393, s.Voltage(v2[1]), Within, Degrees);
        FlowRig.Near(7120.7519, 119.62868, s.Voltage(v2[2]), Within, Degrees);
        FlowRig.Near(2247.4015, -3.69443, s.Voltage(v3[0]), Within, Degrees);
        FlowRig.Near(2268.5124, -123.47569, s.Voltage(v3[1]), Within, Degrees);
        FlowRig.Near(2255.8488, 116.39455, s.Voltage(v3[2]), Within, Degrees);
        FlowRig.Near(1917.6851, -9.07381, s.Voltage(v4[0]), Within, Degrees);
        FlowRig.Near(2061.3159, -128.31548, s.Voltage(v4[1]), Within, Degrees);
        FlowRig.Near(1980.7101, 110.85578, s.Voltage(v4[2]), Within, Degrees);
        FlowRig.Near(347.92015, -34.91575, s.Current(line, 0), Within, Degrees);
        FlowRig.Near(323.67736, -154.15741, s.Current(line, 1), Within, Degrees);
        FlowRig.Near(336.84954, 85.01385, s.Current(line, 2), Within, Degrees);
        Assert.Equal(5_969_245.2, s.Fed.Re, 5.97e6 * Within);
        Assert.Equal(4_132_664.0, s.Fed.Im, 4.13e6 * Within);
    }

    /// <summary>The same as published: 7107, 7140, 7121; 2247, 2269, 2256; 1918∠−9.1, 2061∠−128.3, 1981∠110.9 V. Source: read in the validation model of an open library of building models.</summary>
    [Fact]
    public void A3_05_FourNodeFeeder_Balanced_HasThePublishedVoltages()
    {
        (FlowState s, _, Terminal[] v2, Terminal[] v3, Terminal[] v4) = FourNodes();
        double[] published = [7107, 7140, 7121, 2247, 2269, 2256, 1918, 2061, 1981];
        Assert.Equal(published, [.. v2.Concat(v3).Concat(v4).Select(t => s.Voltage(t).Magnitude)], (a, b) => Math.Abs(a - b) <= 0.5);
        Assert.Equal([-9.1, -128.3, 110.9], v4.Select(t => FlowRig.Degrees(s.Voltage(t))), (a, b) => Math.Abs(a - b) <= 0.1);
    }

    /// <summary>Its first line alone, 300 A ∠ −30°, −150°, 90°: V2 = E − Z·I.</summary>
    [Fact]
    public void A3_05_FourNodeFeeder_LineAlone_DropsByItsMatrix()
    {
        Phasor[] z = LineMatrix(2000);
        Phasor[] amperes = [FlowRig.Polar(300, -30), FlowRig.Polar(300, -150), FlowRig.Polar(300, 90)];
        FlowRig rig = new();
        Terminal[] far = rig.Place("far");
        rig.Join("line", rig.Source("bus", 12_470 / Math.Sqrt(3)), far, z);

        // A load of constant current has its angle to its own voltage: told so that it is the one wanted at the voltage worked out independently.
        double[] magnitudes = [7123.9583, 7142.7079, 7135.1718], degrees = [-0.316080, -120.350508, 119.598886];
        for (int w = 0; w < 3; w++)
        {
            Phasor power = FlowRig.Polar(7200, degrees[w]) * amperes[w].Conjugate;
            rig.Builder.AddLoad($"{w}", far[w], null, LoadKind.Current, 7200, rig.Input($"W{w}", power.Re), rig.Input($"var{w}", power.Im));
        }

        FlowState s = rig.Solve();
        for (int w = 0; w < 3; w++)
        {
            FlowRig.Near(magnitudes[w], degrees[w], s.Voltage(far[w]), 1e-7, 1e-5);
        }
    }

    /// <summary>Ω for feet of the feeder's line; data set of the IEEE, read in three places that agree.</summary>
    private static Phasor[] LineMatrix(double feet)
    {
        Phasor aa = new(0.4576, 1.0780), ab = new(0.1559, 0.5017), ac = new(0.1535, 0.3849), bb = new(0.4666, 1.0482), bc = new(0.1580, 0.4236), cc = new(0.4615, 1.0651);
        return [.. new[] { aa, ab, ac, ab, bb, bc, ac, bc, cc }.Select(z => feet / 5280 * z)];
    }

    private static (FlowState State, Line First, Terminal[] V2, Terminal[] V3, Terminal[] V4) FourNodes()
    {
        FlowRig rig = new();
        Terminal[] bus = rig.Source("bus", 12_470 / Math.Sqrt(3)), v2 = rig.Place("2"), v3 = rig.Place("3"), v4 = rig.Place("4");
        Line line = rig.Join("1-2", bus, v2, LineMatrix(2000));
        rig.Join("2-3", v2, v3, 4160.0 * 4160 / 6e6 * new Phasor(0.01, 0.06), ratio: 12.47 / 4.16);
        rig.Join("3-4", v3, v4, LineMatrix(2500));
        rig.Loads("load", v4, LoadKind.Power, 4160 / Math.Sqrt(3), 1.8e6, 1.8e6 * Math.Tan(Math.Acos(0.9)));
        FlowState s = rig.Solve();
        Assert.Equal(FlowOutcome.Settled, s.Outcome);
        return (s, line, v2, v3, v4);
    }

    private static FlowState Behind(double watts, double vars, out Line line, out Terminal[] far)
    {
        FlowRig rig = new();
        far = rig.Place("far");
        line = rig.Join("line", rig.Source("supply", FlowRig.Volts480), far, new Phasor(0.02, 0.015));
        rig.Loads("load", far, LoadKind.Power, FlowRig.Volts480, watts, vars);
        return rig.Solve();
    }
}
