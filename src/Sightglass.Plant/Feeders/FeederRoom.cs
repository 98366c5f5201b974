using Sightglass.Network.Phasors;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Feeders;

/// <summary>Where one world works out a feeder.</summary>
internal sealed class FeederRoom(FeederResolver resolver) : InputRoom(resolver, resolver.Inputs)
{
    private readonly FlowState _state = resolver.Flow.NewState();

    protected override void Work(ReadOnlySpan<double> slots, double[] found)
    {
        resolver.Flow.Solve(Given, _state);
        ReadOnlySpan<FeederOutput> outputs = resolver.Outputs;
        for (int i = 0; i < outputs.Length; i++)
        {
            found[i] = Value(outputs[i]);
        }
    }

    private double Value(FeederOutput output) => output.Kind switch
    {
        FeederOutputKind.LineVoltage => (Between(output.Bus!, 0, 1) + Between(output.Bus!, 1, 2) + Between(output.Bus!, 2, 0)) / 3,
        FeederOutputKind.GreatestVoltage => Greatest(output.Bus!),
        FeederOutputKind.FrameVoltage => _state.Voltage(resolver.Frame).Magnitude,
        FeederOutputKind.Current => Math.Max(Wire(output.Line, 0).Magnitude, Math.Max(Wire(output.Line, 1).Magnitude, Wire(output.Line, 2).Magnitude)),
        FeederOutputKind.Power => Into(output, 0) + Into(output, 1) + Into(output, 2),
        FeederOutputKind.Given => Given[output.Input.Index],
        _ => Drawn(output),
    };

    private double Greatest(Busbar bus)
    {
        double greatest = 0;
        for (int phase = 0; phase < 3; phase++)
        {
            double overFrame = _state.IsLive(bus[phase]) ? (_state.Voltage(bus[phase]) - _state.Voltage(resolver.Frame)).Magnitude : 0;
            greatest = Math.Max(greatest, Math.Max(overFrame, Between(bus, phase, (phase + 1) % 3)));
        }

        return greatest;
    }

    private double Between(Busbar bus, int one, int other) => (_state.Voltage(bus[one]) - _state.Voltage(bus[other])).Magnitude;

    private Phasor Wire(Line line, int wire) => _state.Current(line, wire);

    private double Into(FeederOutput output, int phase) => (_state.Voltage(output.Bus![phase]) * Wire(output.Line, phase).Conjugate).Re;

    private double Drawn(FeederOutput output)
    {
        double sum = 0;
        foreach (Load load in output.Loads)
        {
            sum += _state.Power(load).Re;
        }

        return sum;
    }
}
