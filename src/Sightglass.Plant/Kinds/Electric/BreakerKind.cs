using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>A breaker that trips by its curve.</summary>
public sealed class BreakerKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "breaker",
        Purpose = "Opens a circuit by itself when its current has been too great for too long, and by hand.",
        Details = Tripping.Details,
        Medium = "power",
        Role = KindRole.Path,
        Conducts = true,
        Symbol = "breaker",
        Positions = ["off", "on"],
        UsualPosition = "on",
        Parameters =
        [
            .. Tripping.Parameters,
            Parameter.Of("resistance", Dimension.Resistance, "Of its contacts.", "2 mOhm", "1e-6 Ohm", "10 Ohm"),
        ],
        Quantities =
        [
            ConductorSheet.Voltage, ConductorSheet.Current, .. Tripping.Quantities,
        ],
        Faults = [.. Tripping.Faults, ConductorSheet.Open],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        Tripping.Declare(plan, item);
        ConductorSheet.NameBoth(plan, item);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (plan.Circuits.EndsOf(item) is not { } ends)
        {
            return;
        }

        Slot position = plan.PositionSlot(item);
        SlotFunction whole = ConductorSheet.Whole(plan, item);
        Branch branch = ends.Part.Draft.AddResistance(item.Name, ends.From, ends.To, item.Get("resistance"), ends.Part.Follow(item.Name, s => s[position.Index] > 0.5 ? whole(s) : 0));
        ConductorSheet.Tell(plan, item, ends, branch);
        Tripping.Add(plan, item, ConductorSheet.Amperes(plan, item));
    }
}
