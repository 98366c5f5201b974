using System.Globalization;
using Sightglass.Network.Circuits;
using Sightglass.Network.Compile;
using Sightglass.Network.Phasors;
using Sightglass.Network.Springs;

namespace Sightglass.Bench;

/// <summary>
/// What has no memory, solved as often as an event asks for it: the control line of a train, its two lines of alternating current, a vehicle on its springs. Between two solutions an input changes, so
/// that matrices are eliminated anew.
/// </summary>
internal static class ResolversBench
{
    private const int Vehicles = 18;
    private const int Wires = 27;
    private const int Negative = 4;
    private const int Positive = 13;
    private const double Volts = 277.128;

    public static void Run(Report report, int rounds)
    {
        report.Section($"Solutions a second of one core, a train of {Vehicles} vehicles, median of {rounds}");
        report.Header("what", "unknowns", "µs each", "a second");
        (Action<int> circuit, int nodes) = Circuit();
        Row(report, "control line, 27 wires, 25 coils a vehicle, a command given and taken back", nodes, circuit, 200, rounds);
        (Action<int> radial, int phases) = Flow(looped: false);
        Row(report, "load flow, one side, unbalanced loads of constant power", phases, radial, 200, rounds);
        (Action<int> looped, phases) = Flow(looped: true);
        Row(report, "load flow, both sides joined at the rear", phases, looped, 200, rounds);
        (Action<int> stands, int coordinates) = Springs();
        Row(report, "a vehicle of nine bodies on springs", coordinates, stands, 500, rounds);
    }

    private static void Row(Report report, string what, int unknowns, Action<int> solve, int times, int rounds)
    {
        solve(0);
        double[] seconds = new double[rounds];
        for (int r = 0; r < rounds; r++)
        {
            double start = ProcessorTime.Now;
            for (int i = 0; i < times; i++)
            {
                solve(i);
            }

            seconds[r] = (ProcessorTime.Now - start) / times;
        }

        Array.Sort(seconds);
        double median = seconds[rounds / 2];
        report.Row(what, unknowns.ToString(CultureInfo.InvariantCulture), (median * 1e6).ToString("0.0", CultureInfo.InvariantCulture), (1 / median).ToString("0", CultureInfo.InvariantCulture));
    }

    private static (Action<int> Solve, int Nodes) Circuit()
    {
        CircuitBuilder b = new();
        Node[,] nodes = new Node[Vehicles, Wires + 1];
        for (int v = 0; v < Vehicles; v++)
        {
            for (int w = 1; w <= Wires; w++)
            {
                nodes[v, w] = b.AddNode($"wire {w} of {v}");
                if (v > 0)
                {
                    Node front = b.AddNode($"front {w} of {v}");
                    b.AddResistance($"jumper {w} of {v}", nodes[v - 1, w], front, 0.005, b.AddInput($"pin {w} of {v}", 1));
                    b.AddResistance($"run {w} of {v}", front, nodes[v, w], 0.02);
                }
            }

            for (int w = 1; w <= Wires; w++)
            {
                if (w is not (Negative or Positive))
                {
                    b.AddCoil($"coil {w} of {v}", nodes[v, w], nodes[v, Negative], 800, 45, 15);
                }
            }
        }

        b.Hold(nodes[0, Negative]);
        b.AddSource("source", nodes[0, Negative], nodes[0, Positive], 0.03, b.AddInput("volts", 74));
        List<Input> commands = [];
        foreach (int w in Enumerable.Range(1, Wires).Where(w => w is not (Negative or Positive)))
        {
            commands.Add(b.AddInput($"command {w}", 0));
            b.AddResistance($"switch {w}", nodes[0, Positive], nodes[0, w], 0.01, commands[^1]);
        }

        Circuit circuit = b.Build();
        CircuitState state = circuit.NewState();
        double[] inputs = circuit.NewInputs();
        return (i =>
        {
            Input command = commands[i / 2 % commands.Count];
            inputs[command.Index] = 1 - inputs[command.Index];
            circuit.Solve(inputs, state);
        }, circuit.Nodes - 1);
    }

    private static (Action<int> Solve, int Phases) Flow(bool looped)
    {
        LoadFlowBuilder b = new();
        Terminal[] emf = Place(b, "emf"), bus = Place(b, "bus");
        Input volts = b.AddInput("volts", Volts);
        for (int w = 0; w < 3; w++)
        {
            b.Hold(emf[w], volts, Phasor.OfPhase(w));
        }

        Join(b, emf, bus, new(0.004, 0.02), default);
        List<Input> loads = [];
        Terminal[] left = bus, right = bus;
        for (int v = 0; v < Vehicles; v++)
        {
            left = Extend(b, left, $"left {v}");
            right = looped ? Extend(b, right, $"right {v}") : right;
            Terminal[] feed = looped && v % 2 == 1 ? right : left;
            for (int w = 0; w < 3; w++)
            {
                Input watts = b.AddInput($"W {v} {w}", 6000 + (500 * w));
                loads.Add(watts);
                b.AddLoad($"load {v} {w}", feed[w], null, LoadKind.Power, Volts, watts, b.AddInput($"var {v} {w}", 2500), floor: 0.7);
            }
        }

        if (looped)
        {
            Join(b, left, right, new(0.001, 0.001), default);
        }

        LoadFlow flow = b.Build();
        FlowState state = flow.NewState();
        double[] inputs = flow.NewInputs();
        return (i =>
        {
            inputs[loads[i % loads.Count].Index] = 5000 + (i % 7 * 500);
            flow.Solve(inputs, state);
            if (state.Outcome != FlowOutcome.Settled)
            {
                throw new InvalidOperationException("The load flow of the bench is to settle.");
            }
        }, flow.Terminals - 3);
    }

    private static Terminal[] Place(LoadFlowBuilder b, string name) => [.. Enumerable.Range(0, 3).Select(w => b.AddTerminal($"{name} {w}"))];

    private static Terminal[] Extend(LoadFlowBuilder b, Terminal[] from, string name)
    {
        Terminal[] next = Place(b, name);
        Join(b, from, next, new(0.003, 0.0025), new(0.001, 0.001));
        return next;
    }

    private static void Join(LoadFlowBuilder b, Terminal[] from, Terminal[] to, Phasor self, Phasor mutual) =>
        b.AddLine("line", from, to, [.. Enumerable.Range(0, 9).Select(i => i % 4 == 0 ? self : mutual)]);

    private static (Action<int> Solve, int Coordinates) Springs()
    {
        SuspensionBuilder b = new();
        Body body = b.AddBody("body", 0, 0);
        Input weight = b.AddInput("weight", 1e6);
        b.AddWeight(body, 0.2, 0.05, weight);
        foreach (int end in new[] { -1, 1 })
        {
            double at = 4.5 * end;
            Body bolster = b.AddBody("bolster", at, 0), frame = b.AddBody("frame", at, 0);
            foreach ((double x, double y) in new[] { (0.0, -0.8), (0, 0.8), (-0.2, 0), (0.2, 0) })
            {
                b.AddSpring("pivot", body, bolster, at + x, y, 4e7, pulls: x != 0);
            }

            foreach ((double x, double y) in new[] { (-0.3, -1.0), (-0.3, 1), (0.3, -1), (0.3, 1) })
            {
                b.AddSpring("secondary", bolster, frame, at + x, y, 7e5);
            }

            foreach (double x in new[] { -1.3, 1.3 })
            {
                Body set = b.AddBody("set", at + x, 0, Freedoms.Heave | Freedoms.Roll);
                foreach (double y in new[] { -1.0, 1 })
                {
                    b.AddSpring("primary", frame, set, at + x, 0.6 * y, 2e6);
                    b.AddSpring("contact", set, null, at + x, 0.75 * y, 1e9);
                }
            }
        }

        Suspension suspension = b.Build();
        SuspensionState state = suspension.NewState();
        double[] inputs = suspension.NewInputs();
        return (i =>
        {
            inputs[weight.Index] = 1e6 + (i % 5 * 1e4);
            suspension.Solve(inputs, state);
        }, 23);
    }
}
