using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>A switch that a person opens and closes and through which the current goes.</summary>
public sealed class KnifeSwitchKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "knife switch",
        Purpose = "Opens and closes a circuit by hand.",
        Details = "Closed it has a small resistance. A switch by which other things act, without the current going through it, is a `switch` with contacts that name it. Source: Ohm's law.",
        Medium = "power",
        Role = KindRole.Path,
        Conducts = true,
        Symbol = "contact",
        Positions = ["open", "closed"],
        UsualPosition = "closed",
        Parameters = [Parameter.Of("resistance", Dimension.Resistance, "Of its blades.", "0.5 mOhm", "1e-6 Ohm", "1 Ohm"), Interlock.Parameter],
        Quantities = [ConductorSheet.Voltage, ConductorSheet.Current],
        Faults = [new("stuck", "It does not move from where it stands.", []), new("burnt", "Its blades touch badly.", [Parameter.Of("resistance", Dimension.Resistance, "Besides its own.", "1 Ohm", "1 mOhm", "1 MOhm")])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        plan.PositionSlot(item);
        plan.JamFault(item);
        ConductorSheet.NameBoth(plan, item);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (plan.Circuits.EndsOf(item) is not { } ends)
        {
            return;
        }

        double ohms = item.Get("resistance");
        Slot position = plan.PositionSlot(item);
        Slot burnt = plan.Fault(item, "burnt", ("resistance", 1))[0];
        Branch branch = ends.Part.Draft.AddResistance(item.Name, ends.From, ends.To, ohms, ends.Part.Follow(item.Name, s => s[position.Index] > 0.5 ? ohms / (ohms + s[burnt.Index]) : 0));
        ConductorSheet.Tell(plan, item, ends, branch);
    }
}
