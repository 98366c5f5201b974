using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Heat;

/// <summary>Blades before a radiator that something opens.</summary>
public sealed class ShutterKind : KindBuilder
{
    public const string Name = "shutter";

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "Blades before a radiator that a relay or a transmitter opens, and that people wire open where they do not.",
        Details = "It stands as far open as what opens it tells, unless it is stuck; wired open, it is open, stuck or not. Source: derived.",
        Medium = "water",
        Role = KindRole.Control,
        Symbol = "valve",
        Positions = ["left to itself", "wired open"],
        Parameters = [Parameter.Item("opened by", "A relay, a governor or a transmitter.", required: true)],
        Quantities = [new("opening", Dimension.One, "How far it stands open."), new("open", Dimension.One, "It stands half open or more.", IsCondition: true)],
        Faults = [new("stuck shut", "It does not open.", []), new("stuck open", "It does not shut.", [])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        plan.PositionSlot(item);
        plan.Fault(item, "stuck shut", ("", 1));
        plan.Fault(item, "stuck open", ("", 1));
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (Told.Share(plan, item, "opened by") is null || !plan.Book.Items.TryGetValue(item.Text("opened by"), out Item? by))
        {
            return;
        }

        (Slot wired, Slot shut, Slot open) = Slots(plan, item);
        ProductSignal moves = new(new SlotSignal(Told.By(plan, by)), new SlotSignal(shut, -1, 1));
        SumSignal whole = new([moves, new SlotSignal(open), new SlotSignal(wired)]);
        AllSignal opening = new([whole, new ConstantSignal(1)]);
        plan.Name($"opening of {item.Name}", Dimension.One, opening);
        plan.Name($"open of {item.Name}", Dimension.One, new AtLeastSignal(opening, 0.5), isCondition: true);
    }

    /// <summary>How far it stands open, 0…1; nothing after an error, which its own building tells.</summary>
    internal static SlotFunction Open(PlanBuilder plan, Item item)
    {
        if (!plan.Book.Items.TryGetValue(item.Text("opened by"), out Item? by) || by.Kind.Role != KindRole.Signal)
        {
            return _ => 0;
        }

        Slot told = Told.By(plan, by);
        (Slot wired, Slot shut, Slot open) = Slots(plan, item);
        return s => Math.Clamp((s[told.Index] * (1 - s[shut.Index])) + s[open.Index] + s[wired.Index], 0, 1);
    }

    private static (Slot Wired, Slot Shut, Slot Open) Slots(PlanBuilder plan, Item item) =>
        (plan.PositionSlot(item), plan.Fault(item, "stuck shut", ("", 1))[0], plan.Fault(item, "stuck open", ("", 1))[0]);
}
