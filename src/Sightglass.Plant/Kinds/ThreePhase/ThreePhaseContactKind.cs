using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Phasors;
using Sightglass.Plant.Feeders;
using Sightglass.Plant.Kinds.Electric;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.ThreePhase;

/// <summary>Three poles that something else moves.</summary>
public sealed class ThreePhaseContactKind : KindBuilder
{
    private const string While = "closed while";

    /// <summary>Ω of its poles.</summary>
    private const double Ohms = 0.2e-3;

    public override KindSheet Sheet { get; } = new()
    {
        Name = "three-phase contact",
        Purpose = "Closes three phases while a condition holds: `picked up of CONTACTOR`, where a changeover stands.",
        Details = "The condition speaks of where controls stand, of relays and contactors, of voltages and currents. Source: Ohm's law.",
        Medium = "power",
        Role = KindRole.Path,
        Conducts = true,
        Alternates = true,
        Symbol = "contact",
        Ports = [FeederSheet.From, FeederSheet.To],
        Parameters = [new(While, ParameterType.Formula, Dimension.One, "The condition.", Required: true)],
        Quantities = [FeederSheet.Current, new("closed", Dimension.One, "It conducts.", IsCondition: true)],
        Faults = [FeederSheet.Open, FeederSheet.OpenPhase, new("welded", "It stays closed.", [])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        FeederSheet.NameCurrent(plan, item);
        plan.Name($"closed of {item.Name}", Dimension.One, new SlotSignal(Closed(plan, item), 1, -0.5), isCondition: true);
    }

    /// <summary>In the third pass, when every name of a condition is there.</summary>
    public override void Indicate(PlanBuilder plan, Item item)
    {
        if (plan.Feeders.EndsOf(item) is not { } ends || WhileCondition.Of(plan, item, While) is not { } margin)
        {
            return;
        }

        FeederPart part = ends.Part;
        SlotFunction whole = FeederSheet.Whole(plan, item);
        Slot welded = plan.Fault(item, "welded", ("", 1))[0];
        Slot openPhase = FeederSheet.OpenPhaseOf(plan, item);
        AnySignal made = new([margin, new SlotSignal(welded, 1, -0.5)]);
        Input[] phases = [.. Enumerable.Range(1, 3).Select(p => part.Follow(item.Name, made, s => s[openPhase.Index] == p ? 0 : whole(s)))];
        Line line = part.AddLine(item.Name, ends.From, ends.To, Ohms, 0, phases);
        part.TellCurrent(FeederSheet.Amperes(plan, item), line);
        part.TellGiven(Closed(plan, item), part.Follow($"closed of {item.Name}", made, whole));
    }

    private static Slot Closed(PlanBuilder plan, Item item) => plan.SlotNamed($"closed of {item.Name}");
}
