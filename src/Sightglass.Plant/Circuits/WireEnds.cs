using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Circuits;

/// <summary>The wires, or the busbars, between which an item lies; null for the frame, but not both.</summary>
internal sealed record WireEnds(Item? From, Item? To)
{
    /// <summary>Null after an error.</summary>
    public static WireEnds? Of(PlanBuilder plan, Item item)
    {
        Item? from = WireOf(plan, item, item.From, "from");
        Item? to = WireOf(plan, item, item.To, "to");
        if ((from is null && item.From is not { Item: PortReference.Frame }) || (to is null && item.To is not { Item: PortReference.Frame }))
        {
            return null;
        }

        // From the frame to the frame: the reader has told it.
        return (from ?? to) is null ? null : new(from, to);
    }

    /// <summary>A wire, or a busbar, that an item names; null after an error, and for the frame.</summary>
    public static Item? WireOf(PlanBuilder plan, Item item, PortReference? end, string which)
    {
        if (end is null)
        {
            plan.Found.Error("P035", item.Span, $"`{item.Name}` has no `{which}`", $"write `{which}: NAME OF A WIRE`, or `frame`");
        }
        else if (end.IsItem && plan.Book.Items.TryGetValue(end.Item, out Item? wire) && Fits(wire, item.Kind.Alternates))
        {
            return wire;
        }
        else if (end.Item != PortReference.Frame)
        {
            plan.Found.Error("P035", end.Span, $"`{end.Item}` is not a wire that `{item.Name}` can end at", Nearest.DidYouMean(end.Item, plan.Book.Items.Values.Where(i => Fits(i, item.Kind.Alternates)).Select(i => i.Name)) ?? $"name an item of the kind `{(item.Kind.Alternates ? "busbar" : "wire")}`");
        }

        return null;
    }

    private static bool Fits(Item wire, bool alternates) => wire.Kind.Role == KindRole.Wire && wire.Kind.Alternates == alternates;
}
