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
        Purpose = "Stands as far open as a transmitter or a governor tells it, also one of another system.",
        Details = "The opening is the share told, held between 0 and 1, of that of an orifice. Source as for the orifice.",
        Role = KindRole.Path,
        Symbol = "valve",
        Parameters = [Parameter.Item("opened by", "The transmitter or governor.", required: true), .. PathSheet.Opening],
        Quantities = [PathSheet.Flow],
    };

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (Told.Share(plan, item, "opened by") is { } share)
        {
            Join.Of(plan, item).Opening(plan, item, share);
        }
    }
}
