using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>A coil that moves contacts.</summary>
public sealed class ContactorKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "contactor",
        Purpose = "A coil that picks up by its voltage and moves the contacts that name it; whatever is driven, opened or loaded by it follows too.",
        Details = """
            Down, it goes up at the voltage at which it picks; up, it falls below the one at which it drops. Where its own contacts, or the load that they switch, take away the voltage that holds it, it chatters: the picture is one of its moments.
            Source: hysteresis, derived.
            """,
        Medium = "control",
        Role = KindRole.Signal,
        Conducts = true,
        Symbol = "coil",
        Ports = [ConductorSheet.From, ConductorSheet.To],
        Parameters =
        [
            Parameter.Of("resistance", Dimension.Resistance, "Of its winding.", "500 Ohm", "0.01 Ohm", "1 MOhm"),
            Parameter.Needed("picks at", Dimension.Voltage, "Voltage at which it goes up.", "0.1 V", "10 kV"),
            Parameter.Needed("drops at", Dimension.Voltage, "Voltage at which it falls.", "0 V", "10 kV"),
        ],
        Quantities =
        [
            ConductorSheet.Voltage, ConductorSheet.Current, new("told", Dimension.One, "1 while it is up, 0 while it is down."), new("picked up", Dimension.One, "It is up.", IsCondition: true),
            new("chattering", Dimension.One, "It picks and drops without end.", IsCondition: true),
        ],
        Faults = [new("open coil", "Its winding is broken.", [])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        ConductorSheet.NameBoth(plan, item);
        Slot told = Told.By(plan, item);
        plan.Name($"told of {item.Name}", Dimension.One, new SlotSignal(told));
        plan.Name($"picked up of {item.Name}", Dimension.One, new SlotSignal(told, 1, -0.5), isCondition: true);
        plan.Name($"chattering of {item.Name}", Dimension.One, new SlotSignal(plan.SlotNamed($"chattering of {item.Name}"), 1, -0.5), isCondition: true);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        double pick = item.Get("picks at");
        double drop = item.Get("drops at");
        if (pick <= drop)
        {
            plan.Found.Error("P037", item.Parameters["picks at"].Span, $"`{item.Name}` picks at or below where it drops", "let it drop at a lower voltage than it picks");
            return;
        }

        if (plan.Circuits.EndsOf(item) is not { } ends)
        {
            return;
        }

        SlotFunction whole = ConductorSheet.Whole(plan, item, "open coil");
        Coil coil = ends.Part.Draft.AddCoil(item.Name, ends.From, ends.To, item.Get("resistance"), pick, drop, opening: ends.Part.Follow(item.Name, whole));
        ends.Part.Coils[item.Name] = coil;
        ends.Part.TellCoil(Told.By(plan, item), plan.SlotNamed($"chattering of {item.Name}"), coil, item.Name);
        ConductorSheet.Tell(plan, item, ends, coil.Branch);
    }
}
