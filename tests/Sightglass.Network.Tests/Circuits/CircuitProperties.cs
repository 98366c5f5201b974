using CsCheck;
using Sightglass.Network.Circuits;
using Sightglass.Network.Compile;

namespace Sightglass.Network.Tests.Circuits;

/// <summary>What holds in every circuit. Sources: Kirchhoff, Tellegen, superposition and reciprocity (any text of circuit theory).</summary>
public sealed class CircuitProperties
{
    private static readonly Gen<double> s_ohms = Gen.Double[-3, 6].Select(x => Math.Pow(10, x));

    private static readonly Gen<double> s_volts = Gen.Double[-100, 100];

    private static readonly Gen<Net> s_nets =
        from n in Gen.Int[2, 14]
        from tree in Gen.Select(Gen.Int[0, 1000], s_ohms).Array[n - 1]
        from more in Gen.Select(Gen.Int[0, n - 1], Gen.Int[0, n - 1], s_ohms).Array[0, 20]
        from sources in Gen.Select(Gen.Int[0, n - 1], Gen.Int[0, n - 1], s_ohms, s_volts).Array[1, 4]
        from diodes in Gen.Select(Gen.Int[0, n - 1], Gen.Int[0, n - 1], s_ohms).Array[0, 4]
        select new Net(n, [.. tree.Select((t, i) => (t.Item1 % (i + 1), i + 1, t.Item2)), .. more], sources, diodes);

    [Fact]
    public void Currents_AtEveryFreeNode_AddUpToNothing() =>
        s_nets.Holds(net =>
        {
            Built b = net.Build();
            double[] sum = new double[net.Nodes];
            foreach ((int from, int to, double i) in b.Flows)
            {
                sum[from] -= i;
                sum[to] += i;
            }

            Assert.All(Enumerable.Range(1, net.Nodes - 1), n => Assert.Equal(0, sum[n], 1e-12 * b.Terms));
        }, iter: 500);

    [Fact]
    public void Power_OfTheSources_IsWhatTheRestTakes() =>
        s_nets.Holds(net =>
        {
            Built b = net.Build();
            double given = b.Sources.Select((s, k) => net.Sources[k].Volts * b.State.Current(s)).Sum();
            double taken = Enumerable.Range(0, b.All.Count).Sum(k => Taken(net, b, k));
            Assert.Equal(given, taken, 1e-9 * b.Power);
        }, iter: 500);

    [Fact]
    public void Sources_OneByOne_AddUp() =>
        s_nets.Where(n => n.Diodes.Length == 0).Holds(net =>
        {
            double[] sum = new double[net.Nodes];
            for (int k = 0; k < net.Sources.Length; k++)
            {
                Built one = (net with { Sources = [.. net.Sources.Select((s, i) => i == k ? s : (s.A, s.B, s.Ohms, 0))] }).Build();
                sum = [.. sum.Zip(one.State.Voltages.ToArray(), (x, y) => x + y)];
            }

            Assert.All(net.Build().State.Voltages.ToArray().Zip(sum), v => Assert.Equal(v.First, v.Second, 1e-12 * net.Volts));
        });

    /// <summary>A source moved to where its current was measured drives the same current where it stood.</summary>
    [Fact]
    public void Source_AndMeter_CanChangePlaces() =>
        Gen.Select(s_nets, Gen.Int[0, 1000], Gen.Int[0, 1000]).Holds((net, first, second) =>
        {
            Net bare = net with { Diodes = [] };
            int i = first % bare.Resistances.Length, j = second % bare.Resistances.Length;
            double there = Transfer(bare, i, j), back = Transfer(bare, j, i);
            double rounding = 1e-14 * ((1 / bare.Resistances[i].Ohms) + (1 / bare.Resistances[j].Ohms)); // a current is a difference of volts over ohms
            Assert.Equal(there, back, (1e-9 * Math.Max(Math.Abs(there), Math.Abs(back))) + rounding);
        });

    [Fact]
    public void Nodes_InAnotherOrder_HaveTheSameVoltages() =>
        Gen.Select(s_nets, Gen.Int[1, 1000]).Holds((net, turn) =>
        {
            int[] to = [.. Enumerable.Range(0, net.Nodes).Select(i => (i + turn) % net.Nodes)];
            CircuitState one = net.Build().State;
            CircuitState other = net.Build(to).State;
            Assert.All(Enumerable.Range(0, net.Nodes), n => Assert.Equal(one.Voltages[n], other.Voltages[to[n]], 1e-12 * net.Volts));
        });

    [Fact]
    public void Diodes_OfEveryCircuit_ComeToRestOnTheirCurve() =>
        s_nets.Holds(net =>
        {
            Built b = net.Build();
            Assert.DoesNotContain(b.State.Circuit.FindingsOf(b.State), f => f.Kind == CircuitFindingKind.Chatter);
            for (int d = 0; d < net.Diodes.Length; d++)
            {
                (int anode, int cathode, double ohms) = net.Diodes[d];
                double volts = b.State.Voltages[anode] - b.State.Voltages[cathode];
                double expected = (volts / 1e7) + Math.Max(0, (volts - 0.7) / ohms);
                Assert.Equal(expected, b.State.Current(b.Diodes[d]), 1e-9 * (net.Volts / ohms));
            }
        }, iter: 500);

    /// <summary>
    /// Any coils and contacts anywhere: it ends, and what is said to have settled has every coil where its voltage wants it, with Kirchhoff's law at every node. Source: the definitions of picking and
    /// dropping.
    /// </summary>
    [Fact]
    public void Coils_OfAnyCircuit_EndAndAreWhereTheyAreWanted() =>
        Gen.Select(
            Gen.Int[3, 9],
            Gen.Select(Gen.Int[0, 8], Gen.Int[0, 8], Gen.Double[5, 40], Gen.Bool, Gen.Bool).Array[1, 6],
            Gen.Select(Gen.Int[0, 8], Gen.Int[0, 8], Gen.Int[0, 5], Gen.Bool).Array[0, 12],
            Gen.Select(Gen.Int[0, 8], Gen.Int[0, 8], Gen.Double[0, 80]).Array[1, 3]).Holds(x =>
        {
            (int n, (int, int, double, bool, bool)[] coils, (int, int, int, bool)[] contacts, (int, int, double)[] sources) = x;
            CircuitBuilder b = new();
            Node[] nodes = [.. Enumerable.Range(0, n).Select(i => b.AddNode($"{i}"))];
            b.Hold(nodes[0]);
            Coil[] built = [.. coils.Select((c, i) => b.AddCoil($"coil {i}", nodes[c.Item1 % n], nodes[c.Item2 % n], 500, c.Item3, 0.4 * c.Item3, c.Item4))];
            foreach ((int a, int c, int coil, bool up) in contacts)
            {
                b.AddContact("contact", nodes[a % n], nodes[c % n], 0.01, built[coil % built.Length], up);
            }

            foreach ((int a, int c, double volts) in sources)
            {
                b.AddSource("source", nodes[a % n], nodes[c % n], 0.1, b.AddInput("volts", volts));
            }

            Circuit circuit = b.Build();
            CircuitState state = circuit.NewState();
            for (int i = 0; i < built.Length; i++)
            {
                state.Set(built[i], coils[i].Item5);
            }

            circuit.Solve(circuit.NewInputs(), state);
            Assert.All(state.Voltages.ToArray().Concat(state.Currents.ToArray()), x => Assert.True(double.IsFinite(x)));
            Assert.Equal(state.Outcome != CircuitOutcome.Settled, circuit.FindingsOf(state).Any(f => f.Kind is CircuitFindingKind.Race or CircuitFindingKind.Chatter));
            for (int i = 0; i < built.Length && state.Outcome != CircuitOutcome.Chatter; i++)
            {
                double volts = state.Voltages[coils[i].Item1 % n] - state.Voltages[coils[i].Item2 % n];
                volts = coils[i].Item4 ? volts : Math.Abs(volts);
                Assert.True(state.Up[i] ? volts > 0.4 * coils[i].Item3 : volts < coils[i].Item3, $"coil {i} {(state.Up[i] ? "up" : "down")} at {volts} V");
            }

            // Solved again from where it rests it stays there.
            if (state.Outcome == CircuitOutcome.Settled)
            {
                bool[] after = state.Up.ToArray();
                circuit.Solve(circuit.NewInputs(), state);
                Assert.Equal(after, state.Up.ToArray());
                Assert.Equal(CircuitOutcome.Settled, state.Outcome);
            }
        }, iter: 1000);

    /// <summary>The same inputs after others give the same bits, whatever the room was used for before.</summary>
    [Fact]
    public void Solving_AfterSomethingElse_GivesTheSameBits() =>
        s_nets.Holds(net =>
        {
            Built b = net.Build();
            CircuitState used = b.State;
            double[] before = used.Voltages.ToArray();
            double[] other = [.. b.State.Circuit.NewInputs().Select((x, i) => x * (i + 2))];
            b.State.Circuit.Solve(other, used);
            b.State.Circuit.Solve(b.State.Circuit.NewInputs(), used);
            Assert.Equal(before.Select(BitConverter.DoubleToInt64Bits), used.Voltages.ToArray().Select(BitConverter.DoubleToInt64Bits));
        });

    private static double Taken(Net net, Built b, int k)
    {
        (int from, int to, double i) = b.Flows[k];
        bool source = b.Sources.Contains(b.All[k]);
        double volts = b.State.Voltages[from] - b.State.Voltages[to];
        return source ? (volts * i) + (net.Sources[b.Sources.IndexOf(b.All[k])].Volts * i) : volts * i;
    }

    /// <summary>Current in resistance <paramref name="j"/> by 1 V in series with resistance <paramref name="i"/>.</summary>
    private static double Transfer(Net net, int i, int j)
    {
        (int a, int c, double ohms) = net.Resistances[i];
        Net moved = net with { Sources = [(a, c, ohms, 1)], Resistances = [.. net.Resistances.Select((r, k) => k == i ? (r.A, r.A, r.Ohms) : r)] };
        Built b = moved.Build();
        return i == j ? b.State.Current(b.Sources[0]) : b.State.Current(b.Resistances[j]);
    }

    /// <param name="Resistances">The first of them make a tree: every node is joined to node 0, which is held.</param>
    private sealed record Net(int Nodes, (int A, int B, double Ohms)[] Resistances, (int A, int B, double Ohms, double Volts)[] Sources, (int A, int B, double Ohms)[] Diodes)
    {
        public double Volts => Sources.Sum(s => Math.Abs(s.Volts));

        public Built Build(int[]? to = null)
        {
            to ??= [.. Enumerable.Range(0, Nodes)];
            CircuitBuilder b = new();
            Node[] nodes = [.. Enumerable.Range(0, Nodes).Select(i => b.AddNode($"{i}"))];
            b.Hold(nodes[to[0]]);
            Built built = new();
            foreach ((int a, int c, double ohms) in Resistances)
            {
                built.Resistances.Add(built.Add(b.AddResistance("", nodes[to[a]], nodes[to[c]], ohms), a, c));
            }

            foreach ((int a, int c, double ohms, double volts) in Sources)
            {
                built.Sources.Add(built.Add(b.AddSource("", nodes[to[a]], nodes[to[c]], ohms, b.AddInput("", volts)), a, c));
            }

            foreach ((int a, int c, double ohms) in Diodes)
            {
                built.Diodes.Add(built.Add(b.AddDiode("", nodes[to[a]], nodes[to[c]], 0.7, ohms), a, c));
            }

            built.State = DirectCurrentTests.Solved(b.Build());
            built.Terms = Sources.Sum(s => Math.Abs(s.Volts) / s.Ohms) + (Volts / Resistances.Min(r => r.Ohms)) + (Diodes.Length == 0 ? 0 : Volts / Diodes.Min(d => d.Ohms));
            built.Power = built.Terms * Volts;
            return built;
        }
    }

    private sealed class Built
    {
        private readonly List<(int A, int B)> _ends = [];

        public List<Branch> All { get; } = [];

        public List<Branch> Resistances { get; } = [];

        public List<Branch> Sources { get; } = [];

        public List<Branch> Diodes { get; } = [];

        public CircuitState State { get; set; } = null!;

        /// <summary>A and W that may appear in sums of this circuit: what rounding is judged by.</summary>
        public double Terms { get; set; }

        public double Power { get; set; }

        public IReadOnlyList<(int From, int To, double Amperes)> Flows => [.. All.Select((b, k) => (_ends[k].A, _ends[k].B, State.Current(b)))];

        public Branch Add(Branch branch, int a, int b)
        {
            All.Add(branch);
            _ends.Add((a, b));
            return branch;
        }
    }
}
