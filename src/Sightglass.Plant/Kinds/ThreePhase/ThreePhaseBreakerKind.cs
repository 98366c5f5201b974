using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Phasors;
using Sightglass.Plant.Kinds.Electric;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.ThreePhase;

/// <summary>A breaker of three poles.</summary>
public sealed class ThreePhaseBreakerKind : KindBuilder
{
    /// <summary>Ω of its contacts.</summary>
    private const double Ohms = 0.2e-3;

    public override KindSheet Sheet { get; } = new()
    {
        Name = "three-phase breaker",
        Purpose = "Opens all three phases by itself when the current of one has been too great for too long, and by hand.",
        Details = Tripping.Details,
        Medium = "power",
        Role = KindRole.Path,
        Conducts = true,
        Alternates = true,
        Symbol = "breaker",
        Ports = [FeederSheet.From, FeederSheet.To],
        Positions = ["off", "on"],
        UsualPosition = "on",
        Parameters = Tripping.Parameters,
        Quantities = [FeederSheet.Current, .. Tripping.Quantities],
        Faults = [.. Tripping.Faults, FeederSheet.Open, FeederSheet.OpenPhase],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        Tripping.Declare(plan, item);
        FeederSheet.NameCurrent(plan, item);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (plan.Feeders.EndsOf(item) is not { } ends)
        {
            return;
        }

        Slot position = plan.PositionSlot(item);
        SlotFunction whole = FeederSheet.Whole(plan, item);
        Line line = ends.Part.AddLine(item.Name, ends.From, ends.To, Ohms, 0, ends.Part.Phases(item.Name, s => s[position.Index] > 0.5 ? whole(s) : 0, FeederSheet.OpenPhaseOf(plan, item)));
        ends.Part.TellCurrent(FeederSheet.Amperes(plan, item), line);
        Tripping.Add(plan, item, FeederSheet.Amperes(plan, item));
    }
}
