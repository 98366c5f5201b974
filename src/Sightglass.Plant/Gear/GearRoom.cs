using Sightglass.Network.Springs;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Gear;

/// <summary>Where one world works out how running gear stands.</summary>
internal sealed class GearRoom(GearResolver resolver) : InputRoom(resolver, resolver.Inputs)
{
    private readonly SuspensionState _state = resolver.Suspension.NewState();

    protected override void Work(ReadOnlySpan<double> slots, double[] found)
    {
        resolver.Suspension.Solve(Given, _state);
        ReadOnlySpan<GearOutput> outputs = resolver.Outputs;
        for (int i = 0; i < outputs.Length; i++)
        {
            found[i] = outputs[i].Value(_state);
        }
    }
}
