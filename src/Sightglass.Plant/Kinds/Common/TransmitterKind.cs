using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Common;

/// <summary>Tells a number of one system to another: a float, a speed sender.</summary>
public sealed class TransmitterKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "transmitter",
        Purpose = "Tells a number of one system to items of another: how far a float stands open, how fast an engine turns.",
        Details = """
            Systems that nothing joins are worked out each by itself. What one does to another goes through transmitters: the number is told at the start, when it has moved by
            the band, and at once when something else happens that moves it by as much. In between the receiver has what was told last, which is never
            further from the truth than the band. Source: hysteresis of a transmitter with a dead band, derived.
            """,
        Role = KindRole.Signal,
        Symbol = "gauge",
        Parameters =
        [
            new("sends", ParameterType.Formula, Dimension.One, "The number, from one system's true state: 0 is shut or standing, 1 open or full speed.", Required: true),
            Parameter.Of("band", Dimension.One, "How far it moves before it is told again.", "2 %", "0.1 %", "50 %"),
        ],
        Quantities = [new("told", Dimension.One, "What it told last.")],
        Faults = [new("stuck", "It goes on telling what it told.", [])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        plan.Name($"told of {item.Name}", Dimension.One, new SlotSignal(Told.By(plan, item)));
        plan.Fault(item, "stuck", ("", 1));
    }

    public override void Indicate(PlanBuilder plan, Item item)
    {
        if (!item.Parameters.TryGetValue("sends", out ParameterValue? value)
            || plan.Read(value.Text, value.Span, FormulaKind.Value(Dimension.One), item.Vehicle) is not { } formula)
        {
            return;
        }

        if ((plan.Networks.Count == 0 ? null : plan.OneNetworkOf(formula, plan.NetworkOfSystem(item) ?? 0)) is not { } network)
        {
            plan.Found.Error("P015", value.Span, $"`{item.Name}` sends what is not worked out together", "speak of the items of one system, or of systems that a path joins; write a transmitter for each");
            return;
        }

        Slot stuck = plan.PlanOf(item).Faults["stuck"][0].Slot;
        plan.Follow($"{item.Name} tells on.", network, new FormulaSignal(formula), item.Get("band"), Told.By(plan, item), s => s[stuck.Index] < 0.5);
    }
}
