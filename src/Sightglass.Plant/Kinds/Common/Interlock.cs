using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Common;

/// <summary>
/// What lets a control move at all: the one removable handle that is not on another stand, a bar that another control lays across it. It speaks of where controls stand and of nothing else, so that it can be
/// asked at any moment.
/// </summary>
internal static class Interlock
{
    private const string MovesWhile = "moves only while";

    public static readonly KindParameter Parameter = new(
        MovesWhile, ParameterType.Formula, Dimension.One, "Where other controls must stand for it to move, such as `handle-off of rear brake handle` where one handle is for both stands; it moves always where nothing is written.");

    /// <summary>Lets the item's plan know it, once everything that sets slots is built.</summary>
    public static void Bind(PlanBuilder plan, Item item)
    {
        if (!item.Parameters.TryGetValue(MovesWhile, out ParameterValue? value) || plan.Read(value.Text, value.Span, FormulaKind.Condition, item.Vehicle) is not { } formula)
        {
            return;
        }

        FormulaSignal free = new(formula);
        SignalReads reads = new(plan.Signals);
        reads.Add(free);
        if (reads.Networks.Count > 0 || reads.Slots.Any(s => !plan.IsPosition(s)))
        {
            plan.Found.Error("P034", value.Span, $"`{item.Name}` moves only by what no control says", "speak of where controls stand: `POSITION of CONTROL`");
            return;
        }

        plan.Update(plan.PlanOf(item) with { Free = new(free, value.Text) });
    }
}
