using Sightglass.Network.Circuits;
using Sightglass.Network.Compile;

namespace Sightglass.Network.Tests.Circuits;

/// <summary>Coils and contacts as wired logic. Source: switching algebra; truth vectors as in the list of checks.</summary>
public sealed class RelayLogicTests
{
    private const double Contact = 0.01;
    private const double Winding = 1000;

    /// <summary>Q⁺ = (S + Q)·R̄, (S, R, Q) counted 000 … 111.</summary>
    [Fact]
    public void A3_11_SealIn_ThatStopsFirst_HasItsTruthVector()
    {
        CircuitBuilder b = new();
        (Node top, Node ground) = Rails(b);
        Input start = b.AddInput("start", 0);
        Input unstopped = b.AddInput("not stopped", 1);
        Node between = b.AddNode("between");
        Node winding = b.AddNode("winding");
        b.AddResistance("start", top, between, Contact, start);
        b.AddResistance("stop", between, winding, Contact, unstopped);
        Coil q = b.AddCoil("Q", winding, ground, Winding, 40, 10);
        b.AddContact("holding", top, between, Contact, q, closedWhenUp: true);
        Circuit circuit = b.Build();
        Assert.Equal("01001100", Vector(3, v =>
        {
            CircuitState state = circuit.NewState();
            state.Set(q, v[2]);
            double[] inputs = circuit.NewInputs();
            inputs[start.Index] = v[0] ? 1 : 0;
            inputs[unstopped.Index] = v[1] ? 0 : 1;
            circuit.Solve(inputs, state);
            return state.IsUp(q);
        }));
    }

    /// <summary>A broken winding carries no current and pulls nothing, whatever voltage stands at its ends. Source: derived.</summary>
    [Theory]
    [InlineData(1, true)]
    [InlineData(0.5, true)]
    [InlineData(0.3, false)]
    [InlineData(0, false)]
    public void Coil_WithABrokenWinding_StaysDown(double opening, bool up)
    {
        CircuitBuilder b = new();
        (Node top, Node ground) = Rails(b);
        Input whole = b.AddInput("whole", opening);
        Coil coil = b.AddCoil("coil", top, ground, Winding, 30, 10, opening: whole);
        Circuit circuit = b.Build();
        CircuitState state = circuit.NewState();
        circuit.Solve(circuit.NewInputs(), state);
        Assert.Equal(up, state.IsUp(coil));
    }

    /// <summary>Two changeover switches: a ⊕ b.</summary>
    [Fact]
    public void A3_11_TwoWaySwitch_HasItsTruthVector()
    {
        CircuitBuilder b = new();
        (Node top, Node ground) = Rails(b);
        Node upper = b.AddNode("upper");
        Node lower = b.AddNode("lower");
        Node lamp = b.AddNode("lamp");
        (Coil first, Input a) = Relay(b, top, ground, "a");
        (Coil second, Input c) = Relay(b, top, ground, "b");
        b.AddContact("a up", top, upper, Contact, first, closedWhenUp: true);
        b.AddContact("a down", top, lower, Contact, first, closedWhenUp: false);
        b.AddContact("b down", upper, lamp, Contact, second, closedWhenUp: false);
        b.AddContact("b up", lower, lamp, Contact, second, closedWhenUp: true);
        Branch load = b.AddResistance("lamp", lamp, ground, 100);
        Assert.Equal("0110", Vector(2, v => State(b.Build(), (a, v[0]), (c, v[1])).Current(load) > 0.1));
    }

    /// <summary>ab + bc + ca.</summary>
    [Fact]
    public void A3_11_TwoOutOfThree_HasItsTruthVector()
    {
        CircuitBuilder b = new();
        (Node top, Node ground) = Rails(b);
        Node lamp = b.AddNode("lamp");
        (Coil Coil, Input Input)[] relays = [.. "abc".Select(n => Relay(b, top, ground, $"{n}"))];
        for (int i = 0; i < 3; i++)
        {
            Node middle = b.AddNode($"middle {i}");
            b.AddContact($"first of {i}", top, middle, Contact, relays[i].Coil, closedWhenUp: true);
            b.AddContact($"second of {i}", middle, lamp, Contact, relays[(i + 1) % 3].Coil, closedWhenUp: true);
        }

        Branch load = b.AddResistance("lamp", lamp, ground, 100);
        Circuit circuit = b.Build();
        Assert.Equal("00010111", Vector(3, v => State(circuit, [.. relays.Select((r, i) => (r.Input, v[i]))]).Current(load) > 0.1));
    }

    /// <summary>F = a·b̄, R = b·ā: each command breaks the other.</summary>
    [Fact]
    public void A3_11_DirectionInterlock_HasItsTruthVectors()
    {
        CircuitBuilder b = new();
        (Node top, Node ground) = Rails(b);
        (Coil a, Input wantA) = Relay(b, top, ground, "a");
        (Coil c, Input wantB) = Relay(b, top, ground, "b");
        Coil forward = Interlocked(b, top, ground, "F", a, c);
        Coil reverse = Interlocked(b, top, ground, "R", c, a);
        Circuit circuit = b.Build();
        Assert.Equal("0010", Vector(2, v => State(circuit, (wantA, v[0]), (wantB, v[1])).IsUp(forward)));
        Assert.Equal("0100", Vector(2, v => State(circuit, (wantA, v[0]), (wantB, v[1])).IsUp(reverse)));
    }

    /// <summary>A notch closes the contacts of its drum; four windings move a governor by A + 4B + 2C − 2D. Source: from memory, as in the list of checks.</summary>
    [Fact]
    public void A3_12_Notches_ByTheWindingsThatAreUp_GiveEqualStepsOfSpeed()
    {
        string[] notches = ["", "", "A", "C", "AC", "BCD", "ABCD", "BC", "ABC"];
        int[] units = [0, 0, 1, 2, 3, 4, 5, 6, 7];
        CircuitBuilder b = new();
        (Node top, Node ground) = Rails(b);
        (Coil Coil, Input Input)[] windings = [.. "ABCD".Select(n => Relay(b, top, ground, $"{n}"))];
        Circuit circuit = b.Build();
        for (int notch = 0; notch < notches.Length; notch++)
        {
            CircuitState s = State(circuit, [.. windings.Select((w, i) => (w.Input, notches[notch].Contains("ABCD"[i])))]);
            int[] up = [.. windings.Select(w => s.IsUp(w.Coil) ? 1 : 0)];
            Assert.Equal(units[notch], up[0] + (4 * up[1]) + (2 * up[2]) - (2 * up[3]));
        }

        CircuitState stopped = State(circuit, [.. windings.Select((w, i) => (w.Input, i == 3))]);
        Assert.Equal([false, false, false, true], stopped.Up.ToArray());
    }

    /// <summary>A coil that breaks its own feed is a buzzer: told, and not run for ever.</summary>
    [Fact]
    public void Coil_ThatBreaksItsOwnFeed_Chatters()
    {
        CircuitBuilder b = new();
        (Node top, Node ground) = Rails(b);
        Node winding = b.AddNode("winding");
        Coil buzzer = b.AddCoil("buzzer", winding, ground, Winding, 40, 10);
        b.AddContact("its own", top, winding, Contact, buzzer, closedWhenUp: false);
        CircuitState s = DirectCurrentTests.Solved(b.Build());
        Assert.Equal(CircuitOutcome.Chatter, s.Outcome);
        Assert.Equal([new(CircuitFindingKind.Chatter, "buzzer")], s.Circuit.FindingsOf(s));
    }

    /// <summary>Two coils that break each other, both fed at once: one wins, and that it was a race is told.</summary>
    [Fact]
    public void Coils_ThatBreakEachOther_RaceAndOneWins()
    {
        CircuitBuilder b = new();
        (Node top, Node ground) = Rails(b);
        Node[] nodes = [b.AddNode("one"), b.AddNode("other")];
        Coil[] coils = [.. nodes.Select((n, i) => b.AddCoil($"coil {i}", n, ground, Winding, 40, 10))];
        b.AddContact("breaks one", top, nodes[0], Contact, coils[1], closedWhenUp: false);
        b.AddContact("breaks other", top, nodes[1], Contact, coils[0], closedWhenUp: false);
        CircuitState s = DirectCurrentTests.Solved(b.Build());
        Assert.Equal(CircuitOutcome.Race, s.Outcome);
        Assert.Equal([true, false], s.Up.ToArray());
        Assert.Equal(2, s.Circuit.FindingsOf(s).Count(f => f.Kind == CircuitFindingKind.Race));
    }

    /// <summary>A coil between picking and dropping stays as it was.</summary>
    [Theory]
    [InlineData(9, true, false)]
    [InlineData(25, true, true)]
    [InlineData(25, false, false)]
    [InlineData(40.1, false, true)]
    public void Coil_BetweenDroppingAndPicking_StaysAsItWas(double volts, bool before, bool after)
    {
        CircuitBuilder b = new();
        Node ground = DirectCurrentTests.Ground(b);
        Node top = DirectCurrentTests.Supply(b, ground, volts, Contact);
        Coil coil = b.AddCoil("coil", top, ground, Winding, 40, 10);
        Circuit circuit = b.Build();
        CircuitState s = circuit.NewState();
        s.Set(coil, before);
        circuit.Solve(circuit.NewInputs(), s);
        Assert.Equal(after, s.IsUp(coil));
    }

    /// <summary>A winding that is broken has its voltage all the same and lets go.</summary>
    [Fact]
    public void Coil_WindingBroken_FallsThoughItsVoltageIsThere()
    {
        CircuitBuilder b = new();
        (Node top, Node ground) = Rails(b);
        Input whole = b.AddInput("whole", 1);
        Coil coil = b.AddCoil("coil", top, ground, Winding, 40, 10, opening: whole);
        Circuit circuit = b.Build();
        CircuitState s = circuit.NewState();
        double[] inputs = circuit.NewInputs();
        circuit.Solve(inputs, s);
        Assert.True(s.IsUp(coil));
        inputs[whole.Index] = 0;
        circuit.Solve(inputs, s);
        Assert.False(s.IsUp(coil));
        Assert.Equal(64, s.Voltage(top), 1e-6);
    }

    private static (Node Top, Node Ground) Rails(CircuitBuilder b)
    {
        Node ground = DirectCurrentTests.Ground(b);
        return (DirectCurrentTests.Supply(b, ground, 64, Contact), ground);
    }

    private static (Coil Coil, Input Input) Relay(CircuitBuilder b, Node top, Node ground, string name)
    {
        Input command = b.AddInput(name, 0);
        Node node = b.AddNode($"winding of {name}");
        b.AddResistance($"switch of {name}", top, node, Contact, command);
        return (b.AddCoil(name, node, ground, Winding, 40, 10), command);
    }

    private static Coil Interlocked(CircuitBuilder b, Node top, Node ground, string name, Coil command, Coil other)
    {
        Node first = b.AddNode($"first of {name}");
        Node second = b.AddNode($"second of {name}");
        b.AddContact($"command of {name}", top, first, Contact, command, closedWhenUp: true);
        b.AddContact($"interlock of {name}", first, second, Contact, other, closedWhenUp: false);
        return b.AddCoil(name, second, ground, Winding, 40, 10);
    }

    private static CircuitState State(Circuit circuit, params (Input Input, bool On)[] commands)
    {
        CircuitState state = circuit.NewState();
        double[] inputs = circuit.NewInputs();
        foreach ((Input input, bool on) in commands)
        {
            inputs[input.Index] = on ? 1 : 0;
        }

        circuit.Solve(inputs, state);
        Assert.Equal(CircuitOutcome.Settled, state.Outcome);
        return state;
    }

    private static string Vector(int inputs, Func<bool[], bool> truth) =>
        string.Concat(Enumerable.Range(0, 1 << inputs).Select(i => truth([.. Enumerable.Range(0, inputs).Select(k => (i >> (inputs - 1 - k) & 1) == 1)]) ? '1' : '0'));
}
