using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Stores;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Heat;

/// <summary>Ends of ways for heat.</summary>
internal static class HeatJoin
{
    /// <summary>The thermal mass that an end names, or the air outside; null after an error.</summary>
    /// <param name="plan">Where it is built.</param>
    /// <param name="item">The path.</param>
    /// <param name="reference">The end.</param>
    /// <param name="which">How the book calls it: from or to.</param>
    /// <param name="other">The other end.</param>
    public static StoreEnd? End(PlanBuilder plan, Item item, PortReference? reference, string which, PortReference? other)
    {
        if (reference is { Item: PortReference.Outside } && plan.FindStore(other?.Item ?? "") is { Holds: StoreSort.Heat } inside)
        {
            return Outside(plan, $"outside of {item.Name}", inside.Network);
        }

        return plan.FindEnd(item, reference, which);
    }

    /// <summary>The air outside, as warm as the surroundings say.</summary>
    private static StoreEnd Outside(PlanBuilder plan, string name, int network)
    {
        Slot ambient = plan.SlotNamed(WorldInput.AmbientTemperature);
        StoreHandle store = plan.Network(network).AddBoundary<FixedStore>(name, [0]);
        plan.NameAmounts(network, name);
        plan.BindParameter(network, store.FirstParameter, s => s[ambient.Index]);
        return new(network, store, null, null, 0, StoreSort.Heat);
    }
}
