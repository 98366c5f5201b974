using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Common;

/// <summary>A lamp that is lit while a condition holds.</summary>
public sealed class LampKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "lamp",
        Purpose = "Is lit while a condition holds.",
        Details = "It is seen to be lit or dark from its places; nobody operates it.",
        Role = KindRole.Indication,
        Symbol = "lamp",
        Lights = true,
        Parameters = [new("lit when", ParameterType.Formula, Dimension.One, "The condition.", Required: true)],
        Faults = [new("burnt out", "It stays dark.", []), new("stays lit", "It stays lit.", [])],
    };

    public override void Indicate(PlanBuilder plan, Item item)
    {
        if (item.Parameters.TryGetValue("lit when", out ParameterValue? value)
            && plan.Read(value.Text, value.Span, FormulaKind.Condition, item.Vehicle) is { } formula)
        {
            MarginSignal whole = new(new SlotSignal(plan.Fault(item, "burnt out", ("", 1))[0]), 0.5, -1);
            MarginSignal stays = new(new SlotSignal(plan.Fault(item, "stays lit", ("", 1))[0]), 0.5, 1);
            plan.Update(plan.PlanOf(item) with { Lit = new AnySignal([new AllSignal([new FormulaSignal(formula), whole]), stays]) });
        }
    }
}
