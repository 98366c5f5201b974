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
        Details = "Positions are dark and lit, seen from its places; nobody operates it.",
        Role = KindRole.Indication,
        Symbol = "lamp",
        Parameters = [new("lit when", ParameterType.Formula, Dimension.One, "The condition.", Required: true)],
        Faults = [new("stuck", "It goes on as it is.", [])],
    };

    public override void Indicate(PlanBuilder plan, Item item)
    {
        if (item.Parameters.TryGetValue("lit when", out ParameterValue? value)
            && plan.Read(value.Text, value.Span, FormulaKind.Condition, item.Vehicle) is { } formula)
        {
            plan.Update(plan.PlanOf(item) with { Lit = new FormulaSignal(formula) });
        }
    }
}
