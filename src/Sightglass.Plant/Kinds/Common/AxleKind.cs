using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Common;

/// <summary>An axle that rolls along with its vehicle, or does not.</summary>
public sealed class AxleKind : KindBuilder
{
    private const string RimSpeed = "rim speed";

    public override KindSheet Sheet { get; } = new()
    {
        Name = "axle",
        Purpose = "An axle with its wheels: how fast their rims turn, for what compares axles with each other.",
        Details = """
            Its rims turn as fast as the vehicle goes (`speed`, of the surroundings). Locked, it stands while the vehicle moves: a bearing or a gear has seized, and no switch lets it go. Without grip it turns faster by the share given; standing, nothing turns. Forces are not worked out. Source: rolling without
            slip, derived.
            """,
        Medium = "control",
        Role = KindRole.Signal,
        Symbol = "axle",
        Quantities = [new(RimSpeed, Dimension.Speed, "Of the rims of its wheels.")],
        Faults = [new("locked", "It does not turn.", []), new("slips", "Its wheels turn faster than the vehicle goes.", [Parameter.Of("share", Dimension.One, "Of the vehicle's speed, besides.", "20 %", "1 %", "200 %")])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot locked = plan.Fault(item, "locked", ("", 1))[0];
        Slot slips = plan.Fault(item, "slips", ("share", 0.2))[0];
        ProductSignal turning = new(new SlotSignal(locked, -1, 1), new SlotSignal(slips, 1, 1));
        plan.Name($"{RimSpeed} of {item.Name}", Dimension.Speed, new ProductSignal(new SlotSignal(plan.SlotNamed("speed")), turning));
    }
}
