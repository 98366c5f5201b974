using Sightglass.Network.Compile;
using Sightglass.Network.Phasors;

namespace Sightglass.Network.Tests.Phasors;

/// <summary>Three-phase nets in few words, for the tests.</summary>
internal sealed class FlowRig
{
    public LoadFlowBuilder Builder { get; } = new();

    public Dictionary<string, Input> Inputs { get; } = [];

    public static double Volts480 => 480 / Math.Sqrt(3);

    public Input Input(string name, double value) => Inputs.TryGetValue(name, out Input known) ? known : Inputs[name] = Builder.AddInput(name, value);

    public Terminal[] Place(string name, int wires = 3) => [.. Enumerable.Range(0, wires).Select(w => Builder.AddTerminal($"{name} {"abcn"[w]}"))];

    /// <summary>Terminals with a symmetrical voltage to the frame, V.</summary>
    public Terminal[] Source(string name, double volts)
    {
        Terminal[] place = Place(name);
        for (int w = 0; w < 3; w++)
        {
            Builder.Hold(place[w], Input(name, volts), Phasor.OfPhase(w));
        }

        return place;
    }

    public Line Join(string name, Terminal[] from, Terminal[] to, Phasor each, Phasor mutual = default, bool switched = false, double ratio = 1) =>
        Join(name, from, to, [.. Enumerable.Range(0, from.Length * from.Length).Select(i => i % (from.Length + 1) == 0 ? each : mutual)], switched, ratio);

    public Line Join(string name, Terminal[] from, Terminal[] to, Phasor[] matrix, bool switched = false, double ratio = 1) =>
        Builder.AddLine(name, from, to, matrix, switched ? [.. from.Select((_, w) => Input($"{name} {"abcn"[w]}", 1))] : [], ratio: ratio);

    public Load[] Loads(string name, Terminal[] at, LoadKind kind, double volts, double watts, double vars, double floor = 0) =>
        [.. at.Take(3).Select((t, w) => Builder.AddLoad($"{name} {"abc"[w]}", t, at.Length > 3 ? at[3] : null, kind, volts, Input($"W of {name} {w}", watts), Input($"var of {name} {w}", vars), floor))];

    public FlowState Solve(params (string Input, double Value)[] set)
    {
        LoadFlow flow = Builder.Build();
        double[] inputs = flow.NewInputs();
        foreach ((string name, double value) in set)
        {
            inputs[Inputs[name].Index] = value;
        }

        FlowState state = flow.NewState();
        flow.Solve(inputs, state);
        return state;
    }

    public static double Degrees(Phasor p) => Math.Atan2(p.Im, p.Re) * 180 / Math.PI;

    public static Phasor Polar(double magnitude, double degrees) => new(magnitude * Math.Cos(degrees * Math.PI / 180), magnitude * Math.Sin(degrees * Math.PI / 180));

    public static void Near(double magnitude, double degrees, Phasor actual, double relative, double degreesWithin)
    {
        Assert.Equal(magnitude, actual.Magnitude, relative * magnitude);
        Assert.Equal(degrees, Degrees(actual), degreesWithin);
    }
}
