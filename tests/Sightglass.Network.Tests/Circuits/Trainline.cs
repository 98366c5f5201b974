using Sightglass.Network.Circuits;
using Sightglass.Network.Compile;

namespace Sightglass.Network.Tests.Circuits;

/// <summary>
/// A control line of 27 wires over a train: a battery and a controller in the first vehicle, in every vehicle a coil on each wire that commands, back to the common negative.
/// A turned vehicle has wires 8 and 9 crossed between its ends, as common practice has it (no source); the other functions here are invented.
/// </summary>
internal sealed class Trainline
{
    public const int Wires = 27;
    public const int Negative = 4;
    public const int Positive = 13;
    public const int Forward = 8;
    public const int Reverse = 9;
    private const double Volts = 74;
    private const double WireOhms = 0.02;
    private const double PinOhms = 0.005;
    private const double Winding = 800;

    private readonly Input[] _commands = new Input[Wires + 1];
    private readonly Input[,] _pins;
    private readonly Input[,] _shorts;
    private readonly Coil[,] _coils;
    private readonly Node[,] _nodes;
    private readonly Input _cross;

    /// <param name="turned">Vehicles, from 0, that face the other way.</param>
    public Trainline(int vehicles, params int[] turned)
    {
        CircuitBuilder b = new();
        Node ground = b.AddNode("frame");
        b.Hold(ground);
        _pins = new Input[vehicles, Wires + 1];
        _shorts = new Input[vehicles, Wires + 1];
        _coils = new Coil[vehicles, Wires + 1];
        _nodes = new Node[vehicles, Wires + 1];
        Node[] rear = new Node[Wires + 1];
        for (int v = 0; v < vehicles; v++)
        {
            Node[] front = new Node[Wires + 1];
            for (int w = 1; w <= Wires; w++)
            {
                // A vehicle knows its own wires 8 and 9 by its own front: turned, what comes in on 8 is its 9.
                int own = Array.IndexOf(turned, v) >= 0 && w is Forward or Reverse && turned.Contains(v) ? Forward + Reverse - w : w;
                front[w] = b.AddNode($"front {w} of vehicle {v}");
                _nodes[v, own] = b.AddNode($"wire {own} of vehicle {v}");
                b.AddResistance($"front run {w} of {v}", front[w], _nodes[v, own], WireOhms / 2);
                if (v > 0)
                {
                    _pins[v, w] = b.AddInput($"pin {w} before vehicle {v}", 1);
                    b.AddResistance($"jumper {w} before {v}", rear[w], front[w], PinOhms, _pins[v, w]);
                }

                rear[w] = b.AddNode($"rear {w} of vehicle {v}");
                b.AddResistance($"rear run {w} of {v}", _nodes[v, own], rear[w], WireOhms / 2);
            }

            for (int w = 1; w <= Wires; w++)
            {
                if (w is not (Negative or Positive))
                {
                    _coils[v, w] = b.AddCoil($"coil {w} of {v}", _nodes[v, w], _nodes[v, Negative], Winding, 45, 15);
                }

                _shorts[v, w] = b.AddInput($"short of {w} in {v}", 0);
                b.AddResistance($"short {w} in {v}", _nodes[v, w], ground, 0.5, _shorts[v, w]);
            }
        }

        b.AddSource("battery", _nodes[0, Negative], _nodes[0, Positive], 0.03, b.AddInput("volts of the battery", Volts));
        b.AddResistance("ground detector, positive", _nodes[0, Positive], ground, 20e3);
        b.AddResistance("ground detector, negative", _nodes[0, Negative], ground, 20e3);
        for (int w = 1; w <= Wires; w++)
        {
            _commands[w] = b.AddInput($"command {w}", 0);
            b.AddResistance($"controller {w}", _nodes[0, Positive], _nodes[0, w], 0.01, _commands[w]);
        }

        _cross = b.AddInput("3 crossed with 7", 0);
        b.AddResistance("crossed", _nodes[vehicles - 1, 3], _nodes[vehicles - 1, 7], 0.5, _cross);
        Circuit = b.Build();
    }

    public Circuit Circuit { get; }

    public Input Crossed => _cross;

    public Input Command(int wire) => _commands[wire];

    public Input Pin(int before, int wire) => _pins[before, wire];

    public Input Short(int vehicle, int wire) => _shorts[vehicle, wire];

    public Coil CoilOf(int vehicle, int wire) => _coils[vehicle, wire];

    public Node NodeOf(int vehicle, int wire) => _nodes[vehicle, wire];

    public CircuitState With(params (Input Input, double Value)[] set)
    {
        CircuitState state = Circuit.NewState();
        double[] inputs = Circuit.NewInputs();
        foreach ((Input input, double value) in set)
        {
            inputs[input.Index] = value;
        }

        Circuit.Solve(inputs, state);
        return state;
    }
}
