using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>A contact that something else moves.</summary>
public sealed class ContactKind : KindBuilder
{
    private const string While = "closed while";
    private const string Dropped = "dropped";

    public override KindSheet Sheet { get; } = new()
    {
        Name = "contact",
        Purpose = "Closes a circuit while a condition holds, or while a contactor is up or down: of a switch in the cab, of a relay, of a door.",
        Details = "A condition speaks of where controls stand, of relays, of voltages and currents; what a pressure or a level does goes through a relay or a transmitter. Source: Ohm's law.",
        Medium = "control",
        Role = KindRole.Path,
        Conducts = true,
        Symbol = "contact",
        Parameters =
        [
            new(While, ParameterType.Formula, Dimension.One, "The condition; or name a coil."),
            Parameter.Item("coil", "The contactor that moves it."),
            Parameter.Choice("closes when", "What its contactor does while it is closed.", "picked up", "picked up", Dropped),
            Parameter.Of("resistance", Dimension.Resistance, "Closed.", "10 mOhm", "1e-6 Ohm", "100 Ohm"),
        ],
        Quantities = [ConductorSheet.Voltage, ConductorSheet.Current, new("closed", Dimension.One, "It conducts.", IsCondition: true)],
        Faults = [new("does not close", "It stays open.", []), new("welded", "It stays closed.", [])],
    };

    public override IEnumerable<IEnumerable<string>> JoinsWires(ClassBook book, Item item) => [CoilOf(book, item) is { } coil ? EndsOf(item).Concat(EndsOf(coil)) : EndsOf(item)];

    public override void Declare(PlanBuilder plan, Item item)
    {
        ConductorSheet.NameVoltage(plan, item);
        plan.Name($"current of {item.Name}", Dimension.Ampere, new SumSignal([new SlotSignal(Own(plan, item)), new SlotSignal(OverWeld(plan, item))]));
        plan.Name($"closed of {item.Name}", Dimension.One, new SumSignal([new SlotSignal(Made(plan, item), 1, -0.5), new SlotSignal(plan.Fault(item, "welded", ("", 1))[0])]), isCondition: true);
    }

    /// <summary>In the third pass, when every name of a condition is there and every coil.</summary>
    public override void Indicate(PlanBuilder plan, Item item)
    {
        if (plan.Circuits.EndsOf(item) is not { } ends)
        {
            return;
        }

        Slot open = plan.Fault(item, "does not close", ("", 1))[0];
        Slot welded = plan.Fault(item, "welded", ("", 1))[0];
        CircuitPart part = ends.Part;
        double ohms = item.Get("resistance");
        SlotFunction whole = s => s[open.Index] > 0.5 || s[welded.Index] > 0.5 ? 0 : 1;
        Branch branch;
        if (item.Parameters.TryGetValue("coil", out ParameterValue? named))
        {
            if (CoilOf(plan.Book, item) is not { } by || !part.Coils.TryGetValue(by.Name, out Coil coil))
            {
                plan.Found.Error("P038", named.Span, $"`{named.Text}` does not move `{item.Name}`", "name a contactor, or write `closed while: CONDITION`");
                return;
            }

            branch = part.Draft.AddContact(item.Name, ends.From, ends.To, ohms, coil, item.Text("closes when") != Dropped, part.Follow(item.Name, whole));
        }
        else if (WhileCondition.Of(plan, item, While) is { } margin)
        {
            branch = part.Draft.AddResistance(item.Name, ends.From, ends.To, ohms, part.Follow(item.Name, margin, whole));
        }
        else
        {
            if (!item.Parameters.ContainsKey(While))
            {
                plan.Found.Error("P038", item.Span, $"nothing moves `{item.Name}`", "write `coil: NAME OF A CONTACTOR` or `closed while: CONDITION`");
            }

            return;
        }

        Branch weld = part.Draft.AddResistance($"weld of {item.Name}", ends.From, ends.To, ohms, part.Follow(item.Name, s => s[welded.Index] > 0.5 ? 1 : 0));
        part.TellMade(Made(plan, item), branch);
        part.TellCurrent(Own(plan, item), branch);
        part.TellCurrent(OverWeld(plan, item), weld);
        part.TellVoltage(ConductorSheet.Volts(plan, item), ends.From, ends.To);
    }

    private static Slot Made(PlanBuilder plan, Item item) => plan.SlotNamed($"made of {item.Name}");

    private static Slot Own(PlanBuilder plan, Item item) => plan.SlotNamed($"current through {item.Name}");

    private static Slot OverWeld(PlanBuilder plan, Item item) => plan.SlotNamed($"current over the weld of {item.Name}");

    private static Item? CoilOf(ClassBook book, Item item) =>
        item.Parameters.GetValueOrDefault("coil") is { Names: [var name, ..] } && book.Items.TryGetValue(name, out Item? coil) && coil.Kind.Symbol == "coil" ? coil : null;
}
