using CsCheck;
using Sightglass.Network.Phasors;

namespace Sightglass.Network.Tests.Phasors;

/// <summary>What holds of every load flow. Source: conservation of energy and symmetry.</summary>
public sealed class LoadFlowProperties
{
    private static readonly Gen<Phasor> s_impedance = Gen.Select(Gen.Double[0.001, 0.02], Gen.Double[0.001, 0.02], (r, x) => new Phasor(r, x));

    private static readonly Gen<Car> s_car = Gen.Select(
        s_impedance, Gen.Double[0, 0.4], Gen.Double[0, 12_000].Array[3], Gen.Double[-3000, 6000].Array[3], Gen.Enum<LoadKind>(), (z, m, w, v, k) => new Car(z, m * z, w, v, k));

    private static readonly Gen<Car[]> s_train = s_car.Array[1, 9];

    [Fact]
    public void Power_FedIn_IsWhatIsDrawnAndLost() =>
        Gen.Select(s_train, Gen.Bool).Holds((cars, looped) =>
        {
            FlowState s = Train(cars, looped).State;
            Assert.Equal(FlowOutcome.Settled, s.Outcome);
            double rounding = 1e-13 * FlowRig.Volts480 * FlowRig.Volts480 / 0.001; // a current is a difference of volts over ohms
            Assert.Equal(0, (s.Fed - s.Drawn - s.Lost).Magnitude, (1e-9 * s.Fed.Magnitude) + rounding);
            Assert.True(s.Lost.Re >= 0);
        });

    /// <summary>Loads moved on by a phase have the voltages of the phase before, turned by a third.</summary>
    [Fact]
    public void Phases_MovedOn_HaveTheVoltagesMovedOn() =>
        s_train.Holds(cars =>
        {
            Built one = Train(cars, looped: true);
            Built moved = Train([.. cars.Select(c => c with { Watts = [c.Watts[2], c.Watts[0], c.Watts[1]], Vars = [c.Vars[2], c.Vars[0], c.Vars[1]] })], looped: true);
            for (int i = 0; i < cars.Length; i++)
            {
                for (int w = 0; w < 3; w++)
                {
                    Phasor expected = one.State.Voltage(one.Places[i][w]) * Phasor.OfPhase(1);
                    Assert.Equal(0, (expected - moved.State.Voltage(moved.Places[i][(w + 1) % 3])).Magnitude, 1e-8);
                }
            }
        });

    /// <summary>Two equal trainlines joined at the rear: nothing flows in the joint, so opening it changes nothing.</summary>
    [Fact]
    public void Loop_OpenedWhereNothingFlows_ChangesNothing() =>
        s_train.Holds(cars =>
        {
            FlowRig rig = new();
            Terminal[] source = rig.Source("supply", FlowRig.Volts480);
            Terminal[][] ends = [.. "lr".Select(side => Side(rig, $"{side}", source, cars)[^1])];
            Line joint = rig.Join("joint", ends[0], ends[1], new Phasor(0.002, 0.001), switched: true);
            FlowState closed = rig.Solve();
            FlowState open = rig.Solve(("joint a", 0), ("joint b", 0), ("joint c", 0));
            Assert.InRange(closed.Current(joint, 0).Magnitude, 0, 1e-7);
            Assert.Equal(0, (closed.Voltage(ends[0][1]) - open.Voltage(ends[0][1])).Magnitude, 1e-8);
        });

    [Fact]
    public void Line_SplitInTwo_ChangesNothing() =>
        Gen.Select(s_car, s_impedance, Gen.Double[0.05, 0.95]).Holds((car, z, share) =>
        {
            FlowRig whole = new();
            Terminal[] far = whole.Place("far");
            whole.Join("line", whole.Source("supply", FlowRig.Volts480), far, z, 0.3 * z);
            Draw(whole, "car", far, car);
            FlowRig split = new();
            Terminal[] middle = split.Place("middle"), end = split.Place("end");
            split.Join("first", split.Source("supply", FlowRig.Volts480), middle, share * z, share * 0.3 * z);
            split.Join("second", middle, end, (1 - share) * z, (1 - share) * 0.3 * z);
            Draw(split, "car", end, car);
            FlowState one = whole.Solve(), two = split.Solve();
            Assert.All(Enumerable.Range(0, 3), w => Assert.Equal(0, (one.Voltage(far[w]) - two.Voltage(end[w])).Magnitude, 1e-8));
        });

    /// <summary>A line from a place to itself the other way round, its loads in another order: the same voltages.</summary>
    [Fact]
    public void Lines_ToldBackwards_ChangeNothing() =>
        s_train.Holds(cars =>
        {
            Built one = Train(cars, looped: true), other = Train(cars, looped: true, backwards: true);
            for (int i = 0; i < cars.Length; i++)
            {
                Assert.Equal(0, (one.State.Voltage(one.Places[i][0]) - other.State.Voltage(other.Places[i][0])).Magnitude, 1e-8);
            }
        });

    /// <summary>A share of what can be drawn behind an impedance settles on the upper root of the quadratic, also close to the nose; more collapses. Source: P-V curve.</summary>
    [Fact]
    public void ConstantPower_OfAnyAngle_SettlesExactlyUpToTheNose() =>
        Gen.Select(s_impedance, Gen.Double[-1.2, 1.2], Gen.Double[0.05, 0.9995]).Holds((z, angle, share) =>
        {
            double e = FlowRig.Volts480;
            double most = e * e / (2 * (z.Magnitude + (z.Re * Math.Cos(angle)) + (z.Im * Math.Sin(angle))));
            Phasor s = FlowRig.Polar(share * most, angle * 180 / Math.PI);
            double b = (2 * ((z.Re * s.Re) + (z.Im * s.Im))) - (e * e);
            double upper = Math.Sqrt((-b + Math.Sqrt((b * b) - (4 * z.SquaredMagnitude * s.SquaredMagnitude))) / 2);
            Assert.Equal(upper, At(s).Voltage, 1e-6 * upper);
            Assert.Equal(FlowOutcome.Collapsed, At((1.001 / share) * s).State.Outcome);

            (double Voltage, FlowState State) At(Phasor power)
            {
                FlowRig rig = new();
                Terminal[] far = rig.Place("far");
                rig.Join("line", rig.Source("supply", e), far, z);
                rig.Loads("load", far, LoadKind.Power, e, power.Re, power.Im);
                FlowState state = rig.Solve();
                return (state.Voltage(far[1]).Magnitude, state);
            }
        });

    /// <summary>
    /// However much is asked for, loads with a floor come to rest: each has its power, or less than its floor's voltage and the power of the impedance it has there. Source: the definition of the floor.
    /// </summary>
    [Fact]
    public void Loads_WithAFloor_AlwaysComeToRestOnTheirCurve() =>
        Gen.Select(s_train, Gen.Double[0.5, 40]).Holds((cars, much) =>
        {
            const double Floor = 0.7;
            FlowRig rig = new();
            Terminal[] at = rig.Source("supply", FlowRig.Volts480);
            List<(Load Load, double Watts)> loads = [];
            for (int i = 0; i < cars.Length; i++)
            {
                Terminal[] next = rig.Place($"{i}");
                rig.Join($"span {i}", at, next, cars[i].Impedance, cars[i].Mutual);
                double watts = much * cars[i].Watts[0];
                loads.AddRange(rig.Loads($"car {i}", next, LoadKind.Power, FlowRig.Volts480, watts, 0.4 * watts, Floor).Select(l => (l, watts)));
                at = next;
            }

            FlowState s = rig.Solve();
            Assert.Equal(FlowOutcome.Settled, s.Outcome);
            foreach ((Load load, double watts) in loads)
            {
                double share = s.Voltage(load).Magnitude / FlowRig.Volts480;
                double least = Math.Min(share / Floor, 1);
                Assert.Equal(watts * least * least, s.Power(load).Re, 1e-6 * (watts + 1));
            }
        });

    /// <summary>
    /// Any net with any wires open and loads anywhere, shorts among them: it ends without a number that is none, what settles keeps the balance of power, and every load is on its curve or said to be dead.
    /// </summary>
    [Fact]
    public void Nets_OfAnyShape_EndAndKeepTheBalance() =>
        Gen.Select(
            Gen.Int[2, 6],
            Gen.Select(Gen.Int[0, 5], Gen.Int[0, 5], s_impedance, Gen.Int[0, 63]).Array[1, 9],
            Gen.Select(Gen.Int[0, 17], Gen.Int[-6, 17], Gen.Enum<LoadKind>(), Gen.Double[0, 5].Select(x => 10 * Math.Pow(10, x)), Gen.Double[-0.5, 1]).Array[0, 9],
            Gen.Double[0, 1.2]).Holds(x =>
        {
            (int n, (int, int, Phasor, int)[] lines, (int, int, LoadKind, double, double)[] loads, double second) = x;
            FlowRig rig = new();
            Terminal[][] places = [rig.Source("one", FlowRig.Volts480), .. Enumerable.Range(1, n - 1).Select(i => rig.Place($"{i}"))];
            if (second > 0.8)
            {
                for (int w = 0; w < 3; w++)
                {
                    rig.Builder.Hold(places[^1][w], rig.Input("second", second * FlowRig.Volts480), Phasor.OfPhase(w));
                }
            }

            Terminal[] all = [.. places.SelectMany(p => p)];
            List<(string, double)> open = [];
            for (int i = 0; i < lines.Length; i++)
            {
                (int a, int b, Phasor z, int closed) = lines[i];
                if (a % n == b % n) continue;
                rig.Join($"line {i}", places[a % n], places[b % n], z, 0.3 * z, switched: true);
                open.AddRange(Enumerable.Range(0, 3).Where(w => closed < 40 && (closed >> w & 1) == 1).Select(w => ($"line {i} {"abc"[w]}", 0.0)));
            }

            List<Load> built = [];
            for (int i = 0; i < loads.Length; i++)
            {
                (int from, int to, LoadKind kind, double watts, double share) = loads[i];
                if (from % all.Length == to % all.Length) continue;
                built.Add(rig.Builder.AddLoad($"load {i}", all[from % all.Length], to < 0 ? null : all[to % all.Length], kind, FlowRig.Volts480, rig.Input($"W {i}", watts), rig.Input($"var {i}", share * watts), 0.7));
            }

            FlowState s = rig.Solve([.. open]);
            Assert.All(s.Voltages.ToArray(), v => Assert.True(v.IsFinite));
            Assert.True(s.Fed.IsFinite && s.Drawn.IsFinite && s.Lost.IsFinite);
            Assert.Equal(s.Outcome != FlowOutcome.Settled, s.Flow.FindingsOf(s).Any(f => f.Kind is FlowFindingKind.Collapse or FlowFindingKind.NotSettled));
            if (s.Outcome == FlowOutcome.Settled)
            {
                Assert.Equal(0, (s.Fed - s.Drawn - s.Lost).Magnitude, (1e-8 * (s.Fed.Magnitude + s.Drawn.Magnitude)) + 1e-4);
            }
        }, iter: 600);

    [Fact]
    public void Solving_AfterSomethingElse_GivesTheSameBits() =>
        s_train.Holds(cars =>
        {
            FlowState s = Train(cars, looped: true).State;
            Phasor[] before = s.Voltages.ToArray();
            s.Flow.Solve([.. s.Flow.NewInputs().Select(x => x * 0.5)], s);
            s.Flow.Solve(s.Flow.NewInputs(), s);
            Assert.Equal(before, s.Voltages.ToArray());
        });

    private static Built Train(Car[] cars, bool looped, bool backwards = false)
    {
        FlowRig rig = new();
        Terminal[] source = rig.Source("supply", FlowRig.Volts480), inside = rig.Place("head");
        rig.Join("machine", source, inside, new Phasor(0.004, 0.012));
        Terminal[][] left = Side(rig, "left", inside, cars, backwards);
        if (looped)
        {
            Terminal[][] right = Side(rig, "right", inside, [.. cars.Select(c => c with { Watts = [0, 0, 0], Vars = [0, 0, 0] })], backwards);
            rig.Join("loop", left[^1], right[^1], new Phasor(0.001, 0.001));
        }

        return new(rig.Solve(), left);
    }

    private static Terminal[][] Side(FlowRig rig, string name, Terminal[] from, Car[] cars, bool backwards = false)
    {
        List<Terminal[]> places = [];
        for (int i = 0; i < cars.Length; i++)
        {
            Terminal[] next = rig.Place($"{name} {i}");
            rig.Join($"{name} span {i}", backwards ? next : from, backwards ? from : next, cars[i].Impedance, cars[i].Mutual);
            Draw(rig, $"{name} car {i}", next, cars[i]);
            places.Add(from = next);
        }

        return [.. places];
    }

    private static void Draw(FlowRig rig, string name, Terminal[] at, Car car)
    {
        for (int w = 0; w < 3; w++)
        {
            rig.Builder.AddLoad($"{name} {w}", at[w], null, car.Kind, FlowRig.Volts480, rig.Input($"{name} W {w}", car.Watts[w]), rig.Input($"{name} var {w}", car.Vars[w]));
        }
    }

    private sealed record Car(Phasor Impedance, Phasor Mutual, double[] Watts, double[] Vars, LoadKind Kind);

    private sealed record Built(FlowState State, Terminal[][] Places);
}
