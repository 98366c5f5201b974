using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.RunningGear;

/// <summary>A rod through which a brake cylinder presses a part of its shoes.</summary>
public sealed class BrakeRodKind : KindBuilder
{
    public const string Name = "brake rod";

    private const string Broken = "broken";

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "A rod of the rigging between a brake cylinder and shoes or pads: whole, it passes on its part of the force; broken, that part is gone.",
        Details = "A brake cylinder names it in `by way of`. The piston goes out and the gauge shows as before: only the wheels tell. Source: common practice, no source.",
        Medium = "brake",
        Role = KindRole.Signal,
        Symbol = "box",
        Parameters = [Parameter.Of("share", Dimension.One, "Of the force of its cylinders that goes through it.", "50 %", "1 %", "100 %")],
        Quantities = [new("whole", Dimension.One, "It is not broken.", IsCondition: true)],
        Faults = [new(Broken, "It has come apart and hangs down; nothing goes through it any more.", [])],
    };

    /// <summary>What a broken rod takes away, as a share of its cylinder's force, less than nothing.</summary>
    internal static SlotSignal Lost(PlanBuilder plan, Item rod) => new(plan.Fault(rod, Broken, ("", 1))[0], -rod.Get("share"));

    public override void Declare(PlanBuilder plan, Item item) =>
        plan.Name($"whole of {item.Name}", Dimension.One, new SlotSignal(plan.Fault(item, Broken, ("", 1))[0], -1, 0.5), isCondition: true);
}
