using Sightglass.Network.Circuits;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Circuits;

/// <summary>Where one world works out a circuit.</summary>
internal sealed class CircuitRoom(CircuitResolver resolver) : InputRoom(resolver, resolver.Inputs)
{
    /// <summary>V by which an electromotive force is moved to see what that does.</summary>
    private const double Little = 0.01;

    private readonly CircuitState _state = resolver.Circuit.NewState();
    private readonly CircuitState _moved = resolver.Circuit.NewState();
    private readonly double[] _movedInputs = new double[resolver.Inputs.Length];

    protected override void Work(ReadOnlySpan<double> slots, double[] found)
    {
        ReadOnlySpan<CircuitOutput> outputs = resolver.Outputs;
        foreach (CircuitOutput output in outputs)
        {
            if (output.Kind == CircuitOutputKind.Up)
            {
                _state.Set(output.Coil, slots[output.Slot.Index] > 0.5);
            }
        }

        resolver.Circuit.Solve(Given, _state);
        for (int i = 0; i < outputs.Length; i++)
        {
            found[i] = outputs[i].Kind switch
            {
                CircuitOutputKind.Voltage => _state.Voltage(outputs[i].Plus) - _state.Voltage(outputs[i].Minus),
                CircuitOutputKind.Current => _state.Current(outputs[i].Branch),
                CircuitOutputKind.Made => _state.IsMade(outputs[i].Branch) ? 1 : 0,
                CircuitOutputKind.Slope => SlopeOf(outputs[i]),
                CircuitOutputKind.Up => _state.IsUp(outputs[i].Coil) ? 1 : 0,
                _ => _state.IsRestless(outputs[i].Coil) ? 1 : 0,
            };
        }
    }

    private double SlopeOf(CircuitOutput output)
    {
        Given.CopyTo(_movedInputs, 0);
        _movedInputs[output.Force.Index] += Little;
        foreach (CircuitOutput coil in resolver.Outputs)
        {
            if (coil.Kind == CircuitOutputKind.Up)
            {
                _moved.Set(coil.Coil, _state.IsUp(coil.Coil));
            }
        }

        resolver.Circuit.Solve(_movedInputs, _moved);
        return _moved.Up.SequenceEqual(_state.Up) ? (_moved.Current(output.Branch) - _state.Current(output.Branch)) / Little : 0;
    }
}
