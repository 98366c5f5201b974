using Sightglass.Basics.Formulas;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Common;

/// <summary>An instrument that shows a formula.</summary>
public sealed class GaugeKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "gauge",
        Purpose = "Shows a formula of the true state, within its scale and at its resolution.",
        Details = "What it shows is rounded to the resolution. A bias is added before; stuck, it goes on showing what it showed.",
        Role = KindRole.Indication,
        Symbol = "gauge",
        Faults =
        [
            new("bias", "It shows too much or too little.", [new("error", ParameterType.Quantity, Basics.Quantities.Dimension.One, "Added to what it shows, in its unit.", Required: true)]),
            new("stuck", "It goes on showing what it showed.", []),
        ],
    };

    public override void Indicate(PlanBuilder plan, Item item)
    {
        if (item.Reading?.Formula is not { } text)
        {
            return;
        }

        if (plan.Read(text, item.Reading.Span, FormulaKind.Value(item.Reading.Unit.Dimension), item.Vehicle) is { } formula)
        {
            plan.ShowOn(item, new FormulaSignal(formula));
        }
    }
}
