using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>A small cock to drain a tank to the outside.</summary>
public sealed class DrainCockKind : ValveLikeKind
{
    public const string Name = "drain cock";

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "A small cock at the lowest point of a store.",
        Details = "As a hand valve. Source as for the orifice.",
        Role = KindRole.Path,
        Symbol = "valve",
        Positions = ["closed", "open"],
        Parameters = [.. PathSheet.Opening],
        Quantities = [PathSheet.Flow],
        Faults =
        [
            new("stuck", "It does not move from where it stands.", []),
            new("frozen shut", "Ice or dirt fills it: open, it lets nothing out.", []),
            new("frozen open", "Ice or dirt holds it: closed, it still lets a share out.", [Parameter.Of("share", Dimension.One, "Of the open flow.", "50 %", "0.1 %", "100 %")]),
        ],
    };

    public override void Connect(PlanBuilder plan, Item item) => Join.Of(plan, item).Opening(plan, item, Opening(plan, item));

    /// <summary>How far it stands open, 0…1.</summary>
    internal static SlotFunction Opening(PlanBuilder plan, Item item)
    {
        Slot position = plan.PositionSlot(item);
        Slot shut = FrozenShut(plan, item);
        Slot open = plan.Fault(item, "frozen open", ("share", 0.5))[0];
        return s => s[shut.Index] > 0.5 ? 0 : s[position.Index] > 0.5 ? 1 : s[open.Index];
    }

    internal static Slot FrozenShut(PlanBuilder plan, Item item) => plan.Fault(item, "frozen shut", ("", 1))[0];
}
