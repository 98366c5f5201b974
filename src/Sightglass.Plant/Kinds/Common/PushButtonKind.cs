using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Common;

/// <summary>A button that trips valves.</summary>
public sealed class PushButtonKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "push button",
        Purpose = "Trips the valves it names at the moment it is pushed.",
        Details = "It springs back by itself; what it tripped stays tripped.",
        Role = KindRole.Control,
        Symbol = "button",
        Positions = ["normal", "pushed"],
        Parameters = [Parameter.Items("trips", "Cut-off valves that fall when it is pushed.")],
        Faults = [new("stuck", "It cannot be pushed.", [])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot position = plan.PositionSlot(item);
        plan.JamFault(item);
        if (!item.Parameters.TryGetValue("trips", out ParameterValue? trips))
        {
            return;
        }

        foreach (string name in trips.Names)
        {
            if (plan.Book.Items.TryGetValue(name, out Item? valve))
            {
                Slot target = plan.PositionSlot(valve);
                plan.AddPulse(new($"{name} falls shut.", position, s => s[position.Index] > 0.5, target, _ => 0));
            }
        }

        plan.AddPulse(new($"", position, s => s[position.Index] > 0.5, position, _ => 0));
    }
}
