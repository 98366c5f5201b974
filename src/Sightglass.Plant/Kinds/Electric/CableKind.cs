using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>A length of conductor with a resistance.</summary>
public sealed class CableKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "cable",
        Purpose = "A length of conductor that loses voltage: U = R·I.",
        Details = "Source: Ohm's law.",
        Medium = "power",
        Role = KindRole.Path,
        Conducts = true,
        Symbol = "line",
        Parameters = [Parameter.Of("resistance", Dimension.Resistance, "Of its whole length.", "10 mOhm", "1e-6 Ohm", "1 MOhm")],
        Quantities = [ConductorSheet.Voltage, ConductorSheet.Current],
        Faults = [ConductorSheet.Open, new("loose", "A connection that has come loose or corroded.", [Parameter.Of("resistance", Dimension.Resistance, "Besides its own.", "1 Ohm", "1 mOhm", "1 MOhm")])],
    };

    public override void Declare(PlanBuilder plan, Item item) => ConductorSheet.NameBoth(plan, item);

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (plan.Circuits.EndsOf(item) is not { } ends)
        {
            return;
        }

        double ohms = item.Get("resistance");
        SlotFunction whole = ConductorSheet.Whole(plan, item);
        Slot loose = plan.Fault(item, "loose", ("resistance", 1))[0];
        Branch branch = ends.Part.Draft.AddResistance(item.Name, ends.From, ends.To, ohms, ends.Part.Follow(item.Name, s => whole(s) * ohms / (ohms + s[loose.Index])));
        ConductorSheet.Tell(plan, item, ends, branch);
    }
}
