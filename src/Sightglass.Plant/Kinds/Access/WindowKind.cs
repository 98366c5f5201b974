using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Access;

/// <summary>A pane that people look through.</summary>
public sealed class WindowKind : KindBuilder
{
    public const string Name = "window";

    private const string Blind = "cannot be seen through";
    private const string Broken = "broken";

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "A pane that people look through, and that keeps the air of a room in.",
        Details = """
            `clear of WINDOW` is for the signs that are seen through it. Broken, it stands open for the stream of the heat exchangers that say `through` it: the draught from a warm room to the outside. Source: derived.
            """,
        Quantities = [new("clear", Dimension.One, "Whether one sees through it.", IsCondition: true), new("hole", Dimension.One, "Whether it is broken.", IsCondition: true)],
        Faults = [new(Blind, "Dirt, ice, mist or cracks: nothing is seen through it.", []), new(Broken, "A hole through which the air goes.", [])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        plan.Name($"clear of {item.Name}", Dimension.One, new MarginSignal(new SlotSignal(plan.Fault(item, Blind, ("", 1))[0]), 0.5, -1), isCondition: true);
        plan.Name($"hole of {item.Name}", Dimension.One, new MarginSignal(new SlotSignal(Hole(plan, item)), 0.5, 1), isCondition: true);
    }

    /// <summary>How far air gets through it, 0 or 1.</summary>
    internal static SlotFunction Open(PlanBuilder plan, Item item)
    {
        Slot broken = Hole(plan, item);
        return s => s[broken.Index];
    }

    private static Slot Hole(PlanBuilder plan, Item item) => plan.Fault(item, Broken, ("", 1))[0];
}
