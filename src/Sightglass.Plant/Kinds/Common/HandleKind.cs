using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Common;

/// <summary>A handle or switch with the author's own positions; what follows is said by the items it acts on.</summary>
public class HandleKind(string name, string purpose, params string[] positions) : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = name,
        Purpose = purpose,
        Details = "It only stands in a position; the items that name it say what follows. Where other controls must stand for it to move, it stays while they do not.",
        Role = KindRole.Control,
        Symbol = "handle",
        Positions = [.. positions],
        Parameters = [Interlock.Parameter],
        Quantities = [new("step", Dimension.One, "The number of the position in which it stands, 0 for the first.")],
        Faults = [new("stuck", "It does not move from where it stands.", []) { Bars = true }],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot position = plan.PositionSlot(item);
        plan.Name($"step of {item.Name}", Dimension.One, new SlotSignal(position));
        plan.JamFault(item);
    }
}
