using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Circuits;

/// <summary>What kinds that conduct are built into: a circuit for all wires that something joins.</summary>
internal sealed class CircuitDraft(PlanBuilder plan)
{
    private readonly CircuitGroups _groups = new(plan.Book);
    private readonly Dictionary<string, CircuitPart> _parts = new(StringComparer.Ordinal);
    private readonly List<CircuitPart> _inOrder = [];

    public IReadOnlyList<CircuitPart> Parts => _inOrder;

    /// <summary>The circuit that a wire is of.</summary>
    public CircuitPart PartOf(string wire)
    {
        string root = _groups.Of(wire);
        if (!_parts.TryGetValue(root, out CircuitPart? part))
        {
            _parts[root] = part = new(wire);
            _inOrder.Add(part);
        }

        return part;
    }

    /// <summary>Both ends of an item; null after an error. Of the item that is being built: what it reads the circuit reads.</summary>
    public CircuitEnds? EndsOf(Item item)
    {
        Item? from = WireOf(item, item.From, "from");
        Item? to = WireOf(item, item.To, "to");
        if ((from is null && item.From is not { Item: PortReference.Frame }) || (to is null && item.To is not { Item: PortReference.Frame }))
        {
            return null;
        }

        if ((from ?? to) is not { } wire)
        {
            plan.Found.Error("P035", item.Span, $"`{item.Name}` joins the frame to itself", "let one of its ends be a wire");
            return null;
        }

        CircuitPart part = PartOf(wire.Name);
        plan.ReadBy(part.Ties);
        return new(part, NodeOf(part, from), NodeOf(part, to));
    }

    private static Node NodeOf(CircuitPart part, Item? wire) => wire is null ? part.Frame : part.NodeOf(wire.Name);

    /// <summary>Null for the frame, and after an error.</summary>
    private Item? WireOf(Item item, PortReference? end, string which)
    {
        if (end is null)
        {
            plan.Found.Error("P035", item.Span, $"`{item.Name}` has no `{which}`", $"write `{which}: NAME OF A WIRE`, or `frame`");
        }
        else if (end.IsItem && plan.Book.Items.TryGetValue(end.Item, out Item? wire) && wire.Kind.Role == KindRole.Wire)
        {
            return wire;
        }
        else if (end.Item != PortReference.Frame)
        {
            plan.Found.Error("P035", end.Span, $"`{end.Item}` is not a wire that `{item.Name}` can end at", Nearest.DidYouMean(end.Item, plan.Book.Items.Values.Where(i => i.Kind.Role == KindRole.Wire).Select(i => i.Name)));
        }

        return null;
    }
}
