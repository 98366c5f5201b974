using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Circuits;

/// <summary>What kinds that conduct are built into: a circuit for all wires that something joins.</summary>
internal sealed class CircuitDraft(PlanBuilder plan, WireGroups groups)
{
    private readonly Dictionary<string, CircuitPart> _parts = new(StringComparer.Ordinal);
    private readonly List<CircuitPart> _inOrder = [];

    public IReadOnlyList<CircuitPart> Parts => _inOrder;

    /// <summary>The circuit that a wire is of. What the item that is being built reads, the circuit reads.</summary>
    public CircuitPart PartOf(string wire)
    {
        string root = groups.Of(wire);
        if (!_parts.TryGetValue(root, out CircuitPart? part))
        {
            _parts[root] = part = new(wire);
            _inOrder.Add(part);
        }

        plan.ReadBy(part.Ties);
        return part;
    }

    /// <summary>Both ends of an item; null after an error.</summary>
    public CircuitEnds? EndsOf(Item item)
    {
        if (WireEnds.Of(plan, item) is not { } ends)
        {
            return null;
        }

        CircuitPart part = PartOf((ends.From ?? ends.To)!.Name);
        return new(part, NodeOf(part, ends.From), NodeOf(part, ends.To));
    }

    private static Node NodeOf(CircuitPart part, Item? wire) => wire is null ? part.Frame : part.NodeOf(wire.Name);
}
