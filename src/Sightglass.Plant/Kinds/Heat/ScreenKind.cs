using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Heat;

/// <summary>A screen before an air intake, which leaves and snow block and people brush clear.</summary>
public sealed class ScreenKind : KindBuilder
{
    public const string Name = "screen";

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "A screen or filter that air is drawn through. Leaves, snow and oil block it, and who brushes it clears it.",
        Details = "It stands open by what is not blocked. Brushed, it is clear, whatever was on it. Where something opens a second way for the same air (a body door), the wider of the two counts, and what comes that way is not clean. Source: derived.",
        Medium = "water",
        Role = KindRole.Control,
        Symbol = "filter",
        Positions = ["as found", "brushed"],
        Parameters =
        [
            Parameter.Item("besides", "A door or hatch that lets the air in beside it, in any position but its first."),
            Parameter.Of("besides opens", Dimension.One, "Share of the full stream that comes that way.", "60 %", "1 %", "100 %"),
        ],
        Quantities = [new("clear", Dimension.One, "Share of it that lets air through.")],
        Faults = [new("blocked", "Leaves, snow, paper or oil lie on it.", [Parameter.Of("share", Dimension.One, "Of it.", "80 %", "1 %", "100 %")])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        (Slot position, Slot blocked) = Slots(plan, item);
        SlotSignal asFound = new(position, -1, 1);
        plan.Name($"clear of {item.Name}", Dimension.One, new SumSignal([new ConstantSignal(1), new ProductSignal(new SlotSignal(blocked, -1), asFound)]));
    }

    /// <summary>How far it stands open, 0…1; nothing after an error.</summary>
    internal static SlotFunction Open(PlanBuilder plan, Item item)
    {
        (Slot position, Slot blocked) = Slots(plan, item);
        double Clear(ReadOnlySpan<double> s) => s[position.Index] > 0.5 ? 1 : 1 - s[blocked.Index];
        if (!item.Parameters.TryGetValue("besides", out ParameterValue? named))
        {
            return Clear;
        }

        if (!plan.Book.Items.TryGetValue(named.Text, out Item? door) || door.Positions.IsDefaultOrEmpty)
        {
            plan.Found.Error("P054", named.Span, $"`{named.Text}` opens no way beside `{item.Name}`", "name a door, a hatch or a handle with positions");
            return _ => 0;
        }

        Slot stands = plan.PositionSlot(door);
        double opens = item.Get("besides opens");
        return s => Math.Max(Clear(s), s[stands.Index] > 0.5 ? opens : 0);
    }

    private static (Slot Position, Slot Blocked) Slots(PlanBuilder plan, Item item) => (plan.PositionSlot(item), plan.Fault(item, "blocked", ("share", 0.8))[0]);
}
