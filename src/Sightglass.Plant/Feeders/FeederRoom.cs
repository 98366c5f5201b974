using Sightglass.Network.Phasors;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Feeders;

/// <summary>Where one world works out a feeder.</summary>
internal sealed class FeederRoom(FeederResolver resolver) : InputRoom(resolver, resolver.Inputs)
{
    /// <summary>Halvings of the voltage of a source that is asked for too much: to a millionth of it.</summary>
    private const int Halvings = 20;

    private readonly FlowState _state = resolver.Flow.NewState();
    private readonly double[] _inputs = new double[resolver.Inputs.Length];
    private readonly bool[] _limited = new bool[resolver.Limits.Length];

    protected override void Work(ReadOnlySpan<double> slots, double[] found)
    {
        Given.CopyTo(_inputs, 0);
        resolver.Flow.Solve(_inputs, _state);
        for (int i = 0; i < _limited.Length; i++)
        {
            _limited[i] = Greatest(resolver.Limits[i].Line) > resolver.Limits[i].Amperes;
            if (_limited[i])
            {
                Lower(resolver.Limits[i]);
            }
        }

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
        FeederOutputKind.Current => Greatest(output.Line),
        FeederOutputKind.Limited => _limited[output.Limit] ? 1 : 0,
        FeederOutputKind.Power => Into(output, 0) + Into(output, 1) + Into(output, 2),
        FeederOutputKind.Given => Given[output.Input.Index],
        _ => Drawn(output),
    };

    /// <summary>
    /// The voltage, between nothing and what it would be, at which a source gives no more than its limit. Where loads keep their power there is more than one: halving finds one of them, with
    /// the current below the limit.
    /// </summary>
    private void Lower(FeederLimit limit)
    {
        (double low, double high) = (0, Given[limit.Force.Index]);
        for (int i = 0; i < Halvings; i++)
        {
            double middle = 0.5 * (low + high);
            _inputs[limit.Force.Index] = middle;
            resolver.Flow.Solve(_inputs, _state);
            (low, high) = Greatest(limit.Line) > limit.Amperes ? (low, middle) : (middle, high);
        }

        _inputs[limit.Force.Index] = low;
        resolver.Flow.Solve(_inputs, _state);
    }

    private double Greatest(Line line) => Math.Max(Wire(line, 0).Magnitude, Math.Max(Wire(line, 1).Magnitude, Wire(line, 2).Magnitude));

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
