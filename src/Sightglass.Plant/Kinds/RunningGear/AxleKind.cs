using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Springs;
using Sightglass.Plant.Gear;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Spring = Sightglass.Network.Springs.Spring;

namespace Sightglass.Plant.Kinds.RunningGear;

/// <summary>An axle that rolls along with its vehicle, or does not, and what its two wheels press on the rails.</summary>
public sealed class AxleKind : KindBuilder
{
    private const string RimSpeed = "rim speed";
    private const string RightLoad = "right wheel load";
    private const string LeftLoad = "left wheel load";
    private const string Most = "most wheel load";
    private const string MostDifference = "most difference";

    /// <summary>Of a wheel on its rail, N/m: so much stiffer than springs that it counts as rigid.</summary>
    private const double Rigid = 1e11;

    public override KindSheet Sheet { get; } = new()
    {
        Name = "axle",
        Purpose = "An axle with its wheels: how fast their rims turn, for what compares axles with each other, and what they press on the rails.",
        Details = """
            Its rims turn as fast as the vehicle goes (`speed`, of the surroundings). Locked, it stands while the vehicle moves: a bearing or a gear has seized, and no switch lets it go. Without grip it turns faster by the share given; standing, nothing turns. Pull and brake forces are not worked out. Source: rolling without
            slip, derived. Wheel loads are those of a scale under each wheel, as the mass that it shows: what stands on the axle by springs, and its own. Source: statics.
            """,
        Medium = "control",
        Role = KindRole.Signal,
        Symbol = "axle",
        Parameters =
        [
            Parameter.Of("mass", Dimension.Kilogram, "Of wheels, axle, boxes and what of the motor hangs on it.", "0 kg", "0 kg", "50 t"),
            Parameter.Of(Most, Dimension.Kilogram, "What one of its wheels may carry; a picture of the loads shows it.", least: "1 kg", most: "50 t"),
            Parameter.Of(MostDifference, Dimension.Kilogram, "By which its two wheels may differ; a picture of the loads says more.", least: "1 kg", most: "50 t"),
            Parameter.Of("wheels apart", Dimension.Metre, "Between the points at which its wheels stand on the rails.", "1.5 m", "0.3 m", "3 m"),
        ],
        Quantities =
        [
            new(RimSpeed, Dimension.Speed, "Of the rims of its wheels."),
            new(RightLoad, Dimension.Kilogram, "What its right wheel carries."), new(LeftLoad, Dimension.Kilogram, "What its left wheel carries."),
            new("overloaded", Dimension.One, "One of its wheels carries more than it may.", IsCondition: true), new("uneven", Dimension.One, "Its two wheels differ by more than they may.", IsCondition: true),
        ],
        Faults = [new("locked", "It does not turn.", []), new("slips", "Its wheels turn faster than the vehicle goes.", [Parameter.Of("share", Dimension.One, "Of the vehicle's speed, besides.", "20 %", "1 %", "200 %")])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot locked = plan.Fault(item, "locked", ("", 1))[0];
        Slot slips = plan.Fault(item, "slips", ("share", 0.2))[0];
        ProductSignal turning = new(new SlotSignal(locked, -1, 1), new SlotSignal(slips, 1, 1));
        plan.Name($"{RimSpeed} of {item.Name}", Dimension.Speed, new ProductSignal(new SlotSignal(plan.SlotNamed("speed")), turning));
        plan.Gear.Add(item, Freedoms.Heave | Freedoms.Roll);
        Slot right = plan.SlotNamed($"{RightLoad} of {item.Name}"), left = plan.SlotNamed($"{LeftLoad} of {item.Name}");
        plan.Name($"{RightLoad} of {item.Name}", Dimension.Kilogram, new SlotSignal(right));
        plan.Name($"{LeftLoad} of {item.Name}", Dimension.Kilogram, new SlotSignal(left));
        NameLimit(plan, $"overloaded of {item.Name}", item.Find(Most), new SlotSignal(right), new SlotSignal(left));
        NameLimit(plan, $"uneven of {item.Name}", item.Find(MostDifference), Difference(right, left), Difference(left, right));
    }

    private static SumSignal Difference(Slot one, Slot other) => new([new SlotSignal(one), new SlotSignal(other, -1)]);

    /// <summary>Whether one of two has come to its limit; never where the book says none.</summary>
    private static void NameLimit(PlanBuilder plan, string name, double? most, Signal one, Signal other) =>
        plan.Name(name, Dimension.One, most is { } limit ? new AnySignal([new MarginSignal(one, limit, 1), new MarginSignal(other, limit, 1)]) : new ConstantSignal(-1), isCondition: true);

    public override void Connect(PlanBuilder plan, Item item)
    {
        GearPart part = plan.Gear.PartOf(item.Name);
        GearMass mass = part.Find(item.Name)!;
        plan.Gear.LoadUp(mass, item.Get("mass"));
        foreach ((string load, double side) in new[] { (RightLoad, mass.Way), (LeftLoad, -mass.Way) })
        {
            Spring wheel = part.Join(item.Name, mass, null, mass.X, mass.Y + (side * item.Get("wheels apart") / 2), Rigid);
            part.Tell(plan.SlotNamed($"{load} of {item.Name}"), s => s.Force(wheel) / GearPart.Gravity);
        }
    }
}
