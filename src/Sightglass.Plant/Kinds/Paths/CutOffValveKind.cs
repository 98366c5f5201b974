using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>An emergency cut-off that falls shut when tripped and is latched open by hand.</summary>
public sealed class CutOffValveKind : ValveLikeKind
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "cut-off valve",
        Purpose = "Falls shut when one of its buttons is pushed, and stays shut until a person latches it open.",
        Details = "As a hand valve; the fault `tripped` shuts it without a button. Source as for the orifice.",
        Role = KindRole.Path,
        Symbol = "cut-off",
        Positions = ["tripped", "open"],
        UsualPosition = "open",
        Parameters = [.. PathSheet.Opening, Parameter.Items("tripped by", "Buttons that trip it, where they do not say so themselves.")],
        Quantities = [PathSheet.Flow],
        Faults =
        [
            new("stuck", "It does not move from where it stands.", []),
            new("tripped", "It fell shut by itself.", []),
        ],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        base.Declare(plan, item);
        Slot position = plan.PositionSlot(item);
        Slot fell = plan.Fault(item, "tripped", ("", 1))[0];
        plan.AddPulse(new($"{item.Name} falls shut.", fell, s => s[fell.Index] > 0.5, position, _ => 0));
    }
}
