using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Plant.Kinds.Air;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Kinds.Fuel;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>Which fluid a path carries: that of the stores at its ends.</summary>
internal static class Join
{
    private static readonly LiquidPaths s_liquid = new();
    private static readonly GasPaths s_gas = new();

    /// <summary>The laws for a path. Where an end is wrong, the laws it is given say so.</summary>
    public static IJoin Of(PlanBuilder plan, Item item) => Sort(plan, item.From) == StoreSort.Gas || Sort(plan, item.To) == StoreSort.Gas ? s_gas : s_liquid;

    /// <summary>The end that a path names, or for the outside a boundary made for it; null after an error.</summary>
    /// <param name="plan">Where it is built.</param>
    /// <param name="item">The path.</param>
    /// <param name="reference">The end.</param>
    /// <param name="which">How the book calls it: from or to.</param>
    /// <param name="other">The other end.</param>
    public static StoreEnd? End(PlanBuilder plan, Item item, PortReference? reference, string which, PortReference? other)
    {
        if (reference is not { Item: PortReference.Outside })
        {
            return plan.FindEnd(item, reference, which);
        }

        return other is null || plan.FindStore(other.Item) is not { } inside ? null : Outside(plan, $"outside of {item.Name}", inside with { Port = PortOf(inside, other) });
    }

    /// <summary>The outside as a path's other end: at the pressure of the atmosphere, as high as the end inside; what passes is booked.</summary>
    public static StoreEnd Outside(PlanBuilder plan, string name, StoreEnd inside)
    {
        StoreHandle boundary = plan.Network(inside.Network).AddBoundary<FixedStore>(name, [Physical.Atmosphere]);
        plan.NameAmounts(inside.Network, name);
        return new(inside.Network, boundary, null, null, Tilt.PlaceOf(inside).Z, StoreSort.Outside);
    }

    /// <summary>Both ends, of one fluid and so in one network; null after an error.</summary>
    public static (StoreEnd From, StoreEnd To)? Ends(PlanBuilder plan, Item item)
    {
        StoreEnd? from = End(plan, item, item.From, "from", item.To);
        StoreEnd? to = End(plan, item, item.To, "to", item.From);
        if (from is null || to is null)
        {
            return null;
        }

        if (IsGas(from) != IsGas(to) && from.Holds != StoreSort.Outside && to.Holds != StoreSort.Outside)
        {
            plan.Found.Error("P017", item.Span, $"`{item.Name}` joins a liquid and a gas", "let both ends hold the same");
            return null;
        }

        return (from, to);
    }

    private static bool IsGas(StoreEnd end) => end.Holds == StoreSort.Gas;

    private static StoreSort? Sort(PlanBuilder plan, PortReference? reference) => reference is null ? null : plan.FindStore(reference.Item)?.Holds;

    private static Port? PortOf(StoreEnd end, PortReference reference) =>
        reference.Port is { } name && end.Item is { } item && item.Ports.TryGetValue(name, out Port? port) ? port : null;
}
