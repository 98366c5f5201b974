using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>A valve that stands as far open as a transmitter tells it.</summary>
public sealed class ActuatedValveKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "actuated valve",
        Purpose = "Stands as far open as a handle sets it, or as a transmitter, a governor or a relay tells it, also one of another system.",
        Details = "The opening is the share told or set, held between 0 and 1, of that of an orifice. Source as for the orifice.",
        Role = KindRole.Path,
        Symbol = "valve",
        Parameters =
        [
            Parameter.Item("opened by", "The transmitter, governor or relay; or a handle, with `openings`.", required: true),
            new("openings", ParameterType.ByPosition, Dimension.One, "How far it stands open in each of the handle's positions."),
            .. PathSheet.Opening,
        ],
        Quantities = [PathSheet.Flow],
        Faults = [new("stuck shut", "It does not open.", []), new("stuck open", "It does not shut.", [])],
    };

    public override void Connect(PlanBuilder plan, Item item)
    {
        Slot shut = plan.Fault(item, "stuck shut", ("", 1))[0];
        Slot open = plan.Fault(item, "stuck open", ("", 1))[0];
        SlotFunction? share = item.Parameters.ContainsKey("openings") ? ByPosition.Of(plan, item, "opened by", "openings") : Told.Share(plan, item, "opened by");
        if (share is not null)
        {
            Join.Of(plan, item).Opening(plan, item, s => s[shut.Index] > 0.5 ? 0 : s[open.Index] > 0.5 ? 1 : Math.Clamp(share(s), 0, 1));
        }
    }
}
