using Sightglass.Basics.Formulas;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>A condition under which something conducts. It sees what changes at events only: where controls stand, relays, what transmitters told, voltages and currents.</summary>
internal static class WhileCondition
{
    /// <summary>Its margin; null where nothing is written, and after an error. In the third pass, when every name is there.</summary>
    public static Signal? Of(PlanBuilder plan, Item item, string parameter)
    {
        if (!item.Parameters.TryGetValue(parameter, out ParameterValue? value) || plan.Read(value.Text, value.Span, FormulaKind.Condition, item.Vehicle) is not { } formula)
        {
            return null;
        }

        FormulaSignal margin = new(formula);
        SignalReads reads = new(plan.Signals);
        reads.Add(margin);
        if (reads.Networks.Count > 0)
        {
            plan.Found.Error("P036", value.Span, $"`{item.Name}` conducts by what changes all the time", "speak of controls, relays, voltages and currents; let a relay look at a pressure or a level, and name it: `picked up of RELAY`");
            return null;
        }

        plan.Reads(reads.Slots);
        return margin;
    }
}
