using Sightglass.Book.Model;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Feeders;

/// <summary>What kinds of three-phase equipment are built into: a feeder for all busbars that something joins.</summary>
internal sealed class FeederDraft(PlanBuilder plan, WireGroups groups)
{
    private readonly Dictionary<string, FeederPart> _parts = new(StringComparer.Ordinal);
    private readonly List<FeederPart> _inOrder = [];

    public IReadOnlyList<FeederPart> Parts => _inOrder;

    /// <summary>The feeder that a busbar is of. What the item that is being built reads, the feeder reads.</summary>
    public FeederPart PartOf(string bus)
    {
        string root = groups.Of(bus);
        if (!_parts.TryGetValue(root, out FeederPart? part))
        {
            _parts[root] = part = new(bus);
            _inOrder.Add(part);
        }

        plan.ReadBy(part.Ties);
        return part;
    }

    /// <summary>Both ends of an item; null after an error.</summary>
    public FeederEnds? EndsOf(Item item)
    {
        if (WireEnds.Of(plan, item) is not { } ends)
        {
            return null;
        }

        if (ends is not { From: { } from, To: { } to })
        {
            plan.Found.Error("P035", item.Span, $"`{item.Name}` joins three phases to the frame", "name two busbars; a phase that touches the frame is a fault of its busbar");
            return null;
        }

        FeederPart part = PartOf(from.Name);
        return new(part, part.BusOf(from.Name), part.BusOf(to.Name));
    }
}
