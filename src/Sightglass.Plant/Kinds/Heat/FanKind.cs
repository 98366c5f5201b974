using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Heat;

/// <summary>A fan or a circulating pump, as what it moves past a heat exchanger.</summary>
public sealed class FanKind : KindBuilder
{
    public const string Name = "fan";

    private const string SwitchedBy = "switched by";

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "Moves a stream over heat exchangers, while something drives it and whatever switches it has it turn: a radiator fan, a blower, a water pump.",
        Details = "Its speed is that of what drives it times what its switch tells, 0 or 1 of a relay, any share of a transmitter. What it moves is in proportion. Source: fan laws, flow in proportion to speed (from memory).",
        Medium = "water",
        Role = KindRole.Signal,
        Symbol = "pump",
        Parameters =
        [
            Parameter.Item("driven by", "A switch or an engine that drives it, at full speed in any position but its first, or a transmitter that tells its speed; always on where there is none."),
            Parameter.Item(SwitchedBy, "A relay, a governor or a transmitter; always on where there is none."),
        ],
        Quantities = [new("speed", Dimension.One, "Share of its full speed."), new("turning", Dimension.One, "It turns at a tenth of its full speed or more.", IsCondition: true)],
        Faults = [new("does not turn", "It stands.", []), new("slow", "It moves less.", [Parameter.Of("share", Dimension.One, "Of its speed, lost.", "40 %", "1 %", "99 %")])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        plan.Fault(item, "does not turn", ("", 1));
        plan.Fault(item, "slow", ("share", 0.4));
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (Drive.Turning(plan, item) is not { } driven || (item.Parameters.ContainsKey(SwitchedBy) && Told.Share(plan, item, SwitchedBy) is null))
        {
            Drive.Speed(plan, item); // says what is wrong
            return;
        }

        Signal switched = Sender(plan, item) is { } sender ? new SlotSignal(Told.By(plan, sender)) : new ConstantSignal(1);

        (Slot stands, Slot slow) = Faults(plan, item);
        ProductSignal whole = new(new SlotSignal(stands, -1, 1), new SlotSignal(slow, -1, 1));
        ProductSignal speed = new(new ProductSignal(driven, switched), whole);
        plan.Name($"speed of {item.Name}", Dimension.One, speed);
        plan.Name($"turning of {item.Name}", Dimension.One, new AtLeastSignal(speed, 0.1), isCondition: true);
    }

    /// <summary>Share of its full speed, 0…1; nothing after an error, which its own building tells.</summary>
    internal static SlotFunction Speed(PlanBuilder plan, Item item)
    {
        if (Drive.Turning(plan, item) is null || (item.Parameters.ContainsKey(SwitchedBy) && Sender(plan, item) is null))
        {
            return _ => 0;
        }

        SlotFunction driven = Drive.Speed(plan, item);
        SlotFunction switched = item.Parameters.ContainsKey(SwitchedBy) ? Told.Share(plan, item, SwitchedBy)! : _ => 1;
        (Slot stands, Slot slow) = Faults(plan, item);
        return s => driven(s) * switched(s) * (1 - s[stands.Index]) * (1 - s[slow.Index]);
    }

    private static (Slot Stands, Slot Slow) Faults(PlanBuilder plan, Item item) => (plan.Fault(item, "does not turn", ("", 1))[0], plan.Fault(item, "slow", ("share", 0.4))[0]);

    private static Item? Sender(PlanBuilder plan, Item item) =>
        item.Parameters.TryGetValue(SwitchedBy, out ParameterValue? by) && plan.Book.Items.TryGetValue(by.Text, out Item? sender) && sender.Kind.Role == KindRole.Signal ? sender : null;
}
