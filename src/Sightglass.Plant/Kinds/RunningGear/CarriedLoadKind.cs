using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Gear;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.RunningGear;

/// <summary>Something whose weight may be there or not.</summary>
public sealed class CarriedLoadKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "carried load",
        Purpose = "Something on board whose weight may be there or not: sand in its box, tools, baggage.",
        Details = "Its weight lies at its `position` on what it names. How much of it is there is said by a situation (`fill of NAME`); nothing uses it up while the machine runs.",
        Role = KindRole.Signal,
        Symbol = "box",
        Parameters =
        [
            Parameter.Item(GearDraft.LiesOn, "The body, truck frame, equaliser or axle that it weighs on.", required: true),
            Parameter.Needed("full mass", Dimension.Kilogram, "When it is full, or all of it there.", "1 kg", "200 t"),
            Parameter.Of("usual fill", Dimension.One, "How much of it there is where a situation says nothing.", "100 %", "0 %", "100 %"),
        ],
        Quantities = [new("mass", Dimension.Kilogram, "What of it is there."), new("fill", Dimension.One, "Share of it that is there.")],
        Faults = [new("emptied", "It is empty, or gone.", [])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot fill = Fill(plan, item);
        ProductSignal there = new(new SlotSignal(fill), new SlotSignal(Emptied(plan, item), -1, 1));
        plan.Name($"fill of {item.Name}", Dimension.One, there);
        plan.Name($"mass of {item.Name}", Dimension.Kilogram, new ProductSignal(there, new ConstantSignal(item.Get("full mass"))));
        plan.AddStart(new($"fill of {item.Name}", Dimension.One, -1, default, null, fill, []) { Least = 0, Greatest = 1 });
    }

    public override SlotFunction? Weighs(PlanBuilder plan, Item item)
    {
        Slot fill = Fill(plan, item), emptied = Emptied(plan, item);
        double full = item.Get("full mass");
        return s => full * s[fill.Index] * (1 - s[emptied.Index]);
    }

    private static Slot Fill(PlanBuilder plan, Item item) => plan.SlotNamed($"fill of {item.Name}", item.Get("usual fill"));

    private static Slot Emptied(PlanBuilder plan, Item item) => plan.Fault(item, "emptied", ("", 1))[0];
}
