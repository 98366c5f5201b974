using Sightglass.Network.Phasors;

namespace Sightglass.Network.Tests.Phasors;

/// <summary>Open, missing, shorted and dead parts; what is told of them.</summary>
public sealed class LoadFlowTests
{
    /// <summary>One wire of a line with mutual impedances open: its current is 0, the others have the impedances that are left, worked out here by hand.</summary>
    [Fact]
    public void Line_WithAWireOpen_CarriesByWhatIsLeft()
    {
        FlowRig rig = new();
        Terminal[] far = rig.Place("far");
        Phasor self = new(0.05, 0.08), mutual = new(0.01, 0.03);
        Line line = rig.Join("line", rig.Source("supply", FlowRig.Volts480), far, self, mutual, switched: true);
        Load[] loads = rig.Loads("load", far, LoadKind.Impedance, FlowRig.Volts480, 20_000, 0);
        FlowState s = rig.Solve(("line b", 0));
        Assert.Equal(default, s.Current(line, 1));
        Assert.Equal(default, s.Voltage(far[1]));
        Phasor z = new(FlowRig.Volts480 * FlowRig.Volts480 / 20_000, 0);
        Phasor ia = s.Current(line, 0), ic = s.Current(line, 2);
        Phasor drop = FlowRig.Volts480 * Phasor.OfPhase(0) - (self * ia) - (mutual * ic);
        Assert.Equal(0, (drop - (z * ia)).Magnitude, 1e-9);
        Assert.Contains(new(FlowFindingKind.Dead, "load b"), s.Flow.FindingsOf(s));
        Assert.Equal(default, s.Power(loads[1]));
    }

    /// <summary>Two trainlines joined at the rear, one jumper missing near the front: the cars behind it are fed from the rear, and all current goes the other side.</summary>
    [Fact]
    public void Loop_WithAJumperMissing_IsFedFromTheRear()
    {
        FlowRig rig = new();
        Terminal[] head = rig.Source("supply", FlowRig.Volts480);
        Terminal[] left = rig.Place("left 1"), leftRear = rig.Place("left 2"), right = rig.Place("right 1"), rightRear = rig.Place("right 2");
        Phasor z = new(0.005, 0.004);
        Line first = rig.Join("left jumper", head, left, z, switched: true);
        rig.Join("left span", left, leftRear, z);
        Line other = rig.Join("right jumper", head, right, z);
        rig.Join("right span", right, rightRear, z);
        rig.Join("loop", leftRear, rightRear, z);
        rig.Loads("car", left, LoadKind.Power, FlowRig.Volts480, 15_000, 5000);
        FlowState whole = rig.Solve();
        FlowState missing = rig.Solve(("left jumper a", 0), ("left jumper b", 0), ("left jumper c", 0));
        Assert.InRange(whole.Current(first, 0).Magnitude / whole.Current(other, 0).Magnitude, 3.9, 4.1); // four spans the other way round
        Assert.Equal(missing.Fed.Re / 3 / FlowRig.Volts480, missing.Current(other, 0).Re, 1e-9);
        Assert.True(missing.Voltage(left[0]).Magnitude < whole.Voltage(left[0]).Magnitude);
        Assert.Empty(missing.Flow.FindingsOf(missing));
    }

    /// <summary>A short between a phase and the frame far out: the current is that of the impedances to it; loads that keep their power only above a floor say that they have too little.</summary>
    [Fact]
    public void Short_InACar_DrawsByTheImpedanceToItAndStarvesTheRest()
    {
        FlowRig rig = new();
        Terminal[] head = rig.Source("supply", FlowRig.Volts480), inside = rig.Place("head"), car = rig.Place("car");
        Phasor source = new(0.004, 0.02), span = new(0.02, 0.02);
        rig.Join("machine", head, inside, source);
        Line line = rig.Join("span", inside, car, span);
        rig.Loads("car", car, LoadKind.Power, FlowRig.Volts480, 15_000, 5000, floor: 0.7);
        rig.Builder.AddLoad("short", car[0], null, LoadKind.Impedance, 100, rig.Input("short", 0)); // 10⁷ W at 100 V is 1 mΩ
        FlowState whole = rig.Solve();
        Assert.Empty(whole.Flow.FindingsOf(whole));
        FlowState shorted = rig.Solve(("short", 1e7));
        double expected = FlowRig.Volts480 / (source + span + new Phasor(0.001, 0)).Magnitude;
        Assert.Equal(expected, shorted.Current(line, 0).Magnitude, 2e-3 * expected);
        Assert.Equal([new(FlowFindingKind.BelowFloor, "car a")], shorted.Flow.FindingsOf(shorted));
        Assert.Equal(whole.Voltage(car[1]).Magnitude, shorted.Voltage(car[1]).Magnitude, 1e-9);
    }

    /// <summary>Two machines on one train share by their impedances: n times the admittance takes n times the current.</summary>
    [Fact]
    public void Machines_SideBySide_ShareByTheirAdmittances()
    {
        FlowRig rig = new();
        Terminal[] bus = rig.Place("bus");
        Line big = rig.Join("big", rig.Source("one", 280), bus, new Phasor(0.01, 0.02));
        Line small = rig.Join("small", rig.Source("other", 280), bus, 3 * new Phasor(0.01, 0.02));
        rig.Loads("load", bus, LoadKind.Power, 277, 60_000, 20_000);
        FlowState s = rig.Solve();
        Assert.Equal(0, (s.Current(big, 0) - (3 * s.Current(small, 0))).Magnitude, 1e-8);
        FlowState one = rig.Solve(("other", 0));
        Assert.True(one.Current(small, 0).Re < -100, "a source without voltage is a short behind its impedance");
    }

    /// <summary>A loose neutral and unequal loads: the star point moves to where ΣV·Y = (ΣY)·V_n. Source: Millman.</summary>
    [Fact]
    public void Star_OnALooseNeutral_MovesToItsBalance()
    {
        FlowRig rig = new();
        Terminal[] source = rig.Source("supply", FlowRig.Volts480), far = rig.Place("far", 4);
        rig.Join("line", source, far[..3], new Phasor(1e-6, 0));
        double[] watts = [30_000, 10_000, 10_000];
        for (int w = 0; w < 3; w++)
        {
            rig.Builder.AddLoad($"{w}", far[w], far[3], LoadKind.Impedance, FlowRig.Volts480, rig.Input($"{w}", watts[w]));
        }

        FlowState s = rig.Solve();
        Phasor expected = default;
        for (int w = 0; w < 3; w++)
        {
            expected += watts[w] / watts.Sum() * FlowRig.Volts480 * Phasor.OfPhase(w);
        }

        Assert.Equal(0, (expected - s.Voltage(far[3])).Magnitude, 1e-2);
        Assert.Equal(0.4 * FlowRig.Volts480, s.Voltage(far[3]).Magnitude, 0.01);
    }

    /// <summary>A neutral with an impedance to the frame holds loads that keep their power: none is loose, and its current is the sum of theirs. Source: Kirchhoff.</summary>
    [Fact]
    public void Star_OfConstantPowerOnAGroundedNeutral_KeepsItsPower()
    {
        FlowRig rig = new();
        Terminal[] source = [.. rig.Source("supply", FlowRig.Volts480), rig.Builder.AddTerminal("supply n")], far = rig.Place("far", 4);
        rig.Builder.Ground(source[3]);
        Line line = rig.Join("line", source, far, new Phasor(0.03, 0.02), new Phasor(0.01, 0.01));
        double[] watts = [30_000, 5000, 11_000];
        Load[] loads = [.. watts.Select((p, w) => rig.Builder.AddLoad($"{w}", far[w], far[3], LoadKind.Power, FlowRig.Volts480, rig.Input($"{w}", p)))];
        FlowState s = rig.Solve();
        Assert.Empty(s.Flow.FindingsOf(s));
        Assert.All(loads, (l, i) => Assert.Equal(watts[i], s.Power(l).Re, 1e-6));
        Phasor sum = s.Current(loads[0]) + s.Current(loads[1]) + s.Current(loads[2]);
        Assert.True(sum.Magnitude > 50);
        Assert.Equal(0, (sum + s.Current(line, 3)).Magnitude, 1e-8);
    }

    /// <summary>
    /// The same with loads that keep their power: the one whose voltage falls would take more and pull the star point to itself, a balance that does not hold. They count as impedances and it is told;
    /// no current goes to a neutral that nothing else holds.
    /// </summary>
    [Fact]
    public void Star_OfConstantPowerOnALooseNeutral_CountsAsImpedancesAndSaysSo()
    {
        FlowRig rig = new();
        Terminal[] source = rig.Source("supply", FlowRig.Volts480), far = rig.Place("far", 4);
        rig.Join("line", source, far[..3], new Phasor(0.01, 0.01));
        double[] watts = [12_000, 10_000, 11_000];
        Load[] loads = [.. watts.Select((p, w) => rig.Builder.AddLoad($"{w}", far[w], far[3], LoadKind.Power, FlowRig.Volts480, rig.Input($"{w}", p)))];
        FlowState s = rig.Solve();
        Assert.Equal(["0", "1", "2"], s.Flow.FindingsOf(s).Where(f => f.Kind == FlowFindingKind.Loose).Select(f => f.Name));
        Assert.Equal(0, (s.Current(loads[0]) + s.Current(loads[1]) + s.Current(loads[2])).Magnitude, 1e-6);
        Assert.All(loads, (l, i) => Assert.Equal(watts[i] * s.Voltage(l).SquaredMagnitude / (FlowRig.Volts480 * FlowRig.Volts480), s.Power(l).Re, 1e-6));
    }

    /// <summary>A neutral that hangs on loads of which none draws is joined to nothing: 0 V, and nothing is wrong.</summary>
    [Fact]
    public void Star_WhoseLoadsAreOff_IsDead()
    {
        FlowRig rig = new();
        Terminal[] source = rig.Source("supply", FlowRig.Volts480), far = rig.Place("far", 4), beyond = rig.Place("beyond", 4);
        rig.Join("line", source, far[..3], new Phasor(0.01, 0.01));
        rig.Join("neutral", [far[3]], [beyond[3]], new Phasor(0.01, 0.01));
        rig.Loads("load", far, LoadKind.Power, FlowRig.Volts480, 0, 0);
        FlowState s = rig.Solve();
        Assert.Equal(default, s.Voltage(far[3]));
        Assert.Equal(FlowRig.Volts480, s.Voltage(far[1]).Magnitude, 1e-9);
        Assert.Empty(s.Flow.FindingsOf(s));
    }

    /// <summary>A load of constant power across a wire has no voltage to draw at: with a floor it counts as an impedance at once, and the rest of the net is as if it were not there.</summary>
    [Fact]
    public void Load_AcrossAWire_HasTooLittleAndDisturbsNothing()
    {
        FlowRig rig = new();
        Terminal[] source = rig.Source("supply", FlowRig.Volts480), far = rig.Place("far");
        rig.Join("line", source, far, new Phasor(0.01, 0.01));
        rig.Loads("load", far, LoadKind.Power, FlowRig.Volts480, 10_000, 3000, floor: 0.7);
        rig.Builder.AddLoad("across", source[0], far[0], LoadKind.Power, FlowRig.Volts480, rig.Input("across", 50), floor: 0.7);
        FlowState s = rig.Solve();
        Assert.Equal([new(FlowFindingKind.BelowFloor, "across")], s.Flow.FindingsOf(s));
        Assert.Equal(s.Voltage(far[1]).Magnitude, s.Voltage(far[0]).Magnitude, 1e-3);
    }

    [Fact]
    public void Net_WithoutASource_IsDeadAndSaysSo()
    {
        FlowRig rig = new();
        Terminal[] at = rig.Place("car"), next = rig.Place("next");
        rig.Join("span", at, next, new Phasor(0.01, 0.01));
        rig.Loads("car", next, LoadKind.Power, FlowRig.Volts480, 1000, 0);
        FlowState s = rig.Solve();
        Assert.Equal(FlowOutcome.Settled, s.Outcome);
        Assert.All(s.Voltages.ToArray(), v => Assert.Equal(default, v));
        Assert.Contains(new(FlowFindingKind.NoSource, ""), s.Flow.FindingsOf(s));
    }

    [Fact]
    public void Inputs_ThatAreNoNumbers_CountAsNothingAndAreTold()
    {
        FlowRig rig = new();
        Terminal[] far = rig.Place("far");
        rig.Join("line", rig.Source("supply", FlowRig.Volts480), far, new Phasor(0.01, 0.01));
        rig.Loads("load", far, LoadKind.Power, FlowRig.Volts480, double.NaN, 0);
        FlowState s = rig.Solve();
        Assert.Equal(3, s.Flow.FindingsOf(s).Count(f => f.Kind == FlowFindingKind.NotFinite));
        Assert.Equal(FlowRig.Volts480, s.Voltage(far[0]).Magnitude, 1e-9);
    }

    /// <summary>Hotter wires and a higher frequency: R·(1 + α·ΔT), X·f/f₀.</summary>
    [Fact]
    public void Line_HotterAndFaster_HasMoreOfBoth()
    {
        FlowRig rig = new();
        Terminal[] far = rig.Place("far");
        LoadFlowBuilder b = rig.Builder;
        Phasor z = new(0.05, 0.04);
        Line line = b.AddLine("line", [.. rig.Source("supply", 100).Take(1)], far.AsSpan(0, 1), [z], heat: rig.Input("heat", 1.2));
        b.ScaleReactances(rig.Input("frequency", 1.1));
        b.AddLoad("load", far[0], null, LoadKind.Impedance, 100, rig.Input("W", 1e4)); // 1 Ω
        FlowState s = rig.Solve();
        Phasor expected = new Phasor(100, 0) / (Phasor.One + new Phasor(0.06, 0.044));
        Assert.Equal(0, (expected - s.Current(line, 0)).Magnitude, 1e-9);
    }

    [Fact]
    public void Solve_AfterTheFirst_AllocatesNothing()
    {
        FlowRig rig = new();
        Terminal[] at = rig.Source("supply", FlowRig.Volts480);
        for (int i = 0; i < 6; i++)
        {
            Terminal[] next = rig.Place($"{i}");
            rig.Join($"span {i}", at, next, new Phasor(0.003, 0.003), new Phasor(0.001, 0.001), switched: true);
            rig.Loads($"car {i}", next, LoadKind.Power, FlowRig.Volts480, 8000, 3000, floor: 0.7);
            at = next;
        }

        LoadFlow flow = rig.Builder.Build();
        FlowState s = flow.NewState();
        double[] inputs = flow.NewInputs();
        flow.Solve(inputs, s);
        flow.Solve(inputs, s);
        long before = GC.GetAllocatedBytesForCurrentThread();
        flow.Solve(inputs, s);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }
}
