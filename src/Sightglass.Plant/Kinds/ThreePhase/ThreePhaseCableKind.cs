using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Phasors;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.ThreePhase;

/// <summary>Three wires of a length.</summary>
public sealed class ThreePhaseCableKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "three-phase cable",
        Purpose = "Three wires side by side that lose voltage: U = (R + jX)·I in each.",
        Details = "R at the temperature at which it works and X at the rated frequency, of the whole length; several cables side by side have theirs divided by their number. Source: Ohm's law.",
        Medium = "power",
        Role = KindRole.Path,
        Conducts = true,
        Alternates = true,
        Symbol = "pipe",
        Ports = [FeederSheet.From, FeederSheet.To],
        Parameters =
        [
            Parameter.Needed("resistance", Dimension.Resistance, "Of each wire.", "1e-6 Ohm", "100 Ohm"),
            Parameter.Of("reactance", Dimension.Resistance, "Of each wire.", "0 Ohm", "0 Ohm", "100 Ohm"),
        ],
        Quantities = [FeederSheet.Current],
        Faults = [FeederSheet.Open, FeederSheet.OpenPhase],
    };

    public override void Declare(PlanBuilder plan, Item item) => FeederSheet.NameCurrent(plan, item);

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (plan.Feeders.EndsOf(item) is not { } ends)
        {
            return;
        }

        Line line = ends.Part.AddLine(item.Name, ends.From, ends.To, item.Get("resistance"), item.Get("reactance"), ends.Part.Phases(item.Name, FeederSheet.Whole(plan, item), FeederSheet.OpenPhaseOf(plan, item)));
        ends.Part.TellCurrent(FeederSheet.Amperes(plan, item), line);
    }
}
