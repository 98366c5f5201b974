using Sightglass.Network.Circuits;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Circuits;

/// <summary>Where one world works out a circuit.</summary>
internal sealed class CircuitRoom : ResolverRoom
{
    private readonly CircuitResolver _resolver;
    /// <summary>V by which an electromotive force is moved to see what that does.</summary>
    private const double Little = 0.01;

    private readonly CircuitState _state;
    private readonly CircuitState _moved;
    private readonly double[] _inputs;
    private readonly double[] _next;
    private readonly double[] _values;

    public CircuitRoom(CircuitResolver resolver)
    {
        _resolver = resolver;
        _state = resolver.Circuit.NewState();
        _moved = resolver.Circuit.NewState();
        _inputs = new double[resolver.Inputs.Length];
        _next = new double[_inputs.Length];
        _values = new double[resolver.Outputs.Length];
        Forget();
    }

    public override ReadOnlySpan<double> Values => _values;

    public override bool Solve(LaneBank bank, int lane, ReadOnlySpan<double> slots)
    {
        Take(bank, lane, slots, _next);
        if (_next.AsSpan().SequenceEqual(_inputs))
        {
            return false;
        }

        _next.CopyTo(_inputs, 0);
        ReadOnlySpan<CircuitOutput> outputs = _resolver.Outputs;
        for (int i = 0; i < outputs.Length; i++)
        {
            if (outputs[i].Kind == CircuitOutputKind.Up)
            {
                _state.Set(outputs[i].Coil, slots[outputs[i].Slot.Index] > 0.5);
            }
        }

        _resolver.Circuit.Solve(_inputs, _state);
        for (int i = 0; i < outputs.Length; i++)
        {
            _values[i] = outputs[i].Kind switch
            {
                CircuitOutputKind.Voltage => _state.Voltage(outputs[i].Plus) - _state.Voltage(outputs[i].Minus),
                CircuitOutputKind.Current => _state.Current(outputs[i].Branch),
                CircuitOutputKind.Made => _state.IsMade(outputs[i].Branch) ? 1 : 0,
                CircuitOutputKind.Slope => SlopeOf(outputs[i]),
                CircuitOutputKind.Up => _state.IsUp(outputs[i].Coil) ? 1 : 0,
                _ => _state.IsRestless(outputs[i].Coil) ? 1 : 0,
            };
        }

        return true;
    }

    private double SlopeOf(CircuitOutput output)
    {
        _inputs.CopyTo(_next, 0);
        _next[output.Force.Index] += Little;
        foreach (CircuitOutput coil in _resolver.Outputs)
        {
            if (coil.Kind == CircuitOutputKind.Up)
            {
                _moved.Set(coil.Coil, _state.IsUp(coil.Coil));
            }
        }

        _resolver.Circuit.Solve(_next, _moved);
        return _moved.Up.SequenceEqual(_state.Up) ? (_moved.Current(output.Branch) - _state.Current(output.Branch)) / Little : 0;
    }

    public override void Remember(LaneBank bank, int lane, ReadOnlySpan<double> slots)
    {
        Take(bank, lane, slots, _inputs);
        for (int i = 0; i < _values.Length; i++)
        {
            _values[i] = slots[_resolver.Sets[i].Index];
        }
    }

    public override void Forget() => Array.Fill(_inputs, double.NaN);

    private void Take(LaneBank bank, int lane, ReadOnlySpan<double> slots, double[] into)
    {
        ReadOnlySpan<CircuitInput> inputs = _resolver.Inputs;
        for (int i = 0; i < inputs.Length; i++)
        {
            into[i] = inputs[i].Of(bank, lane, slots);
        }
    }
}
