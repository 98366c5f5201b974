using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.TrainControl;

/// <summary>A current in the rails that is broken so and so often a minute.</summary>
public sealed class CodeSenderKind : KindBuilder
{
    public const string Name = "code sender";

    private const string SetBy = "set by";
    private const string Codes = "codes";
    private const string NoCode = "no code";
    private const string Dead = "dead";

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "Sends a current through the rails ahead of the first axle, broken so and so often a minute: a signal's code, a test loop, a portable generator.",
        Details = """
            Which codes there are, and how often each breaks the current, is said for each position of the control that sets it; 0 a minute sends nothing. What a code means is said by the relays that listen. Without its code it sends an unbroken current, dead it sends none.
            Source: common practice, no source.
            """,
        Medium = "control",
        Role = KindRole.Signal,
        Symbol = "gauge",
        Parameters =
        [
            Parameter.Item(SetBy, "The control that sets it.", required: true),
            new(Codes, ParameterType.ByPosition, Dimension.Frequency, "How often the current is broken, by position of that control; 75 a minute is 1.25 Hz.", Required: true),
            Parameter.Of("current", Dimension.Ampere, "In the rails while it sends.", "1 A", "1 mA", "100 A"),
        ],
        Quantities = [new("code rate", Dimension.Frequency, "How often the current is broken now; nothing for none, or for an unbroken one."), new("rail current", Dimension.Ampere, "While it is not broken.")],
        Faults = [new(NoCode, "It sends an unbroken current.", []), new(Dead, "It sends nothing.", [])],
    };

    /// <summary>The current in the rails, A.</summary>
    internal static Signal Current(PlanBuilder plan, Item sender) => new ProductSignal(
        Table(plan, sender, rate => rate > 0 ? sender.Get("current") : 0), new SlotSignal(plan.Fault(sender, Dead, ("", 1))[0], -1, 1));

    public override void Declare(PlanBuilder plan, Item item)
    {
        if (ByPosition.Of(plan, item, SetBy, Codes) is null)
        {
            return; // told there
        }

        SlotSignal coded = new(plan.Fault(item, NoCode, ("", 1))[0], -1, 1), alive = new(plan.Fault(item, Dead, ("", 1))[0], -1, 1);
        plan.Name($"code rate of {item.Name}", Dimension.Frequency, new ProductSignal(Table(plan, item, rate => rate), new ProductSignal(coded, alive)));
        plan.Name($"rail current of {item.Name}", Dimension.Ampere, Current(plan, item));
    }

    private static Signal Table(PlanBuilder plan, Item item, Func<double, double> of)
    {
        Item? control = item.Parameters.GetValueOrDefault(SetBy) is { Names: [var name, ..] } ? plan.Book.Items.GetValueOrDefault(name) : null;
        ImmutableSortedDictionary<string, double>? rates = item.Parameters.GetValueOrDefault(Codes)?.ByPosition;
        return control is null || rates is null || control.Positions.IsDefaultOrEmpty
            ? new ConstantSignal(0)
            : new TableSignal(plan.PositionSlot(control), [.. control.Positions.Select(p => of(rates.GetValueOrDefault(p)))]);
    }
}
