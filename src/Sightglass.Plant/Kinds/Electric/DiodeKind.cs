using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>Lets current one way.</summary>
public sealed class DiodeKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "diode",
        Purpose = "Lets current pass from its first end to its second, and none back.",
        Details = "Above its drop it has a small resistance, below a leak of 10 MΩ. Source: piecewise linear diode (any text of electronics).",
        Medium = "control",
        Role = KindRole.Path,
        Conducts = true,
        Symbol = "check",
        Parameters =
        [
            Parameter.Of("drop", Dimension.Voltage, "Before it lets any pass.", "0.8 V", "0 V", "10 V"),
            Parameter.Of("resistance", Dimension.Resistance, "Above that.", "10 mOhm", "1e-6 Ohm", "1 kOhm"),
        ],
        Quantities = [ConductorSheet.Voltage, ConductorSheet.Current],
        Faults = [ConductorSheet.Open, new("shorted", "It lets current pass both ways.", [])],
    };

    public override void Declare(PlanBuilder plan, Item item) => ConductorSheet.NameBoth(plan, item);

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (plan.Circuits.EndsOf(item) is not { } ends)
        {
            return;
        }

        CircuitPart part = ends.Part;
        double ohms = item.Get("resistance");
        SlotFunction whole = ConductorSheet.Whole(plan, item);
        Slot shorted = plan.Fault(item, "shorted", ("", 1))[0];
        // A short lies beside what is left of it: one branch tells both, behind a wire of no length.
        Node inside = part.Draft.AddNode($"inside of {item.Name}");
        Branch branch = part.Draft.AddResistance(item.Name, ends.From, inside, ohms / 2, part.Follow(item.Name, whole));
        part.Draft.AddDiode($"diode of {item.Name}", inside, ends.To, item.Get("drop"), ohms / 2);
        part.Draft.AddResistance($"short of {item.Name}", inside, ends.To, ohms / 2, part.Follow(item.Name, s => s[shorted.Index]));
        ConductorSheet.Tell(plan, item, ends, branch);
    }
}
