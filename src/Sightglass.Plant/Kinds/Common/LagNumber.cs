using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Common;

/// <summary>A number that runs along in a network: a counter of time, a lag.</summary>
internal static class LagNumber
{
    /// <summary>Adds the number, zero at the start.</summary>
    /// <param name="plan">Where it is built.</param>
    /// <param name="network">With whose steps it goes.</param>
    /// <param name="name">For snapshots.</param>
    /// <param name="law">Of <see cref="Lag"/>.</param>
    /// <param name="aim">What it follows or how fast it counts, from the slots.</param>
    public static Amount Add(PlanBuilder plan, int network, string name, double[] law, SlotFunction aim)
    {
        NetworkBuilder b = plan.Network(network);
        Amount number = b.AddStore<FollowerStore>(name, [], [0], [1]).First;
        plan.NameAmounts(network, name);
        b.AddPath<Lag>(name, [number, number], [new(Amount.None, number)], law, [plan.Bind(network, aim)]);
        return number;
    }
}
