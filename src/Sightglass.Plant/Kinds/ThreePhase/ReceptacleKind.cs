using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.ThreePhase;

/// <summary>A socket at the end of a vehicle.</summary>
public sealed class ReceptacleKind : KindBuilder
{
    public const string Pins = "pins";
    public const string Crosses = "jumper crosses";
    public const string Ohms = "jumper resistance";
    public const string Reactance = "jumper reactance";
    public const string Rated = "rated current";

    private const string CoverJoins = "cover joins";

    public override KindSheet Sheet { get; } = new()
    {
        Name = "receptacle",
        Purpose = "A socket at the end of a vehicle that takes the jumper to the next one: of head-end power, of the control line, of the communication line.",
        Details = """
            `pins` says which wire each pin is, by its number; one of them may be a busbar, and then the pin stands for its three phases. A train joins the receptacles of facing ends by a jumper, pin by pin. Without a jumper in it its cover, shut, may join wires: the
            loops that show a train line complete, or every door of a train shut. What the pins are for is the book's matter; numbers are invented or common practice.
            """,
        Medium = "control",
        Role = KindRole.Control,
        Symbol = "port",
        CoupledBy = JumperKind.Name,
        Positions = ["open", "shut"],
        UsualPosition = "shut",
        Parameters =
        [
            new(Pins, ParameterType.Pins, Dimension.One, "Its wires, and at most one busbar.", Required: true),
            new(Crosses, ParameterType.Text, Dimension.One, "Pairs of pins that change places in the jumper: `5 with 6, 8 with 9`."),
            Parameter.Items(CoverJoins, "Two wires or more that its shut cover joins while no jumper is in it."),
            Parameter.Of(Ohms, Dimension.Resistance, "Of each phase of the jumpers in it, with their pins.", "1 mOhm", "1e-6 Ohm", "1 Ohm"),
            Parameter.Of(Reactance, Dimension.Resistance, "Of each phase.", "0.5 mOhm", "0 Ohm", "1 Ohm"),
            Parameter.Of(Rated, Dimension.Ampere, "What the jumpers in it stand for ever, together.", "400 A", "0.1 A", "10000 A"),
        ],
        Quantities = [new("live", Dimension.One, "Its busbar has 50 V or more somewhere.", IsCondition: true), new("greatest voltage", Dimension.Voltage, "What a meter in it shows at most, of its busbar."), new("plugged", Dimension.One, "A jumper is in it.", IsCondition: true), new("pulled live", Dimension.One, "A jumper was parted from it while it was live.", IsCondition: true)],
        Faults = [new("stuck", "Its cover does not move.", []), new("cover contact open", "Its shut cover joins nothing.", [])],
    };

    public override IEnumerable<IEnumerable<string>> JoinsWires(ClassBook book, Item item) => [item.Parameters.GetValueOrDefault(CoverJoins)?.Names ?? []];

    public override void Declare(PlanBuilder plan, Item item)
    {
        plan.PositionSlot(item);
        plan.JamFault(item);
        Slot? volts = BusOf(plan.Book, item) is { } bus ? FeederSheet.GreatestVolts(plan, bus.Name) : null;
        plan.Name($"live of {item.Name}", Dimension.One, volts is { } v ? new SlotSignal(v, 1, -FeederSheet.Dangerous) : new ConstantSignal(-1), isCondition: true);
        plan.Name($"pulled live of {item.Name}", Dimension.One, new SlotSignal(JumperKind.PulledLive(plan, item), 1, -0.5), isCondition: true);
        plan.Name($"greatest voltage of {item.Name}", Dimension.Voltage, volts is { } g ? new SlotSignal(g) : new ConstantSignal(0));
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        ParameterValue pins = item.Parameters[Pins];
        foreach (string name in pins.Names.Where(n => plan.Book.Items.TryGetValue(n, out Item? i) && i.Kind.Role != KindRole.Wire))
        {
            plan.Found.Error("P040", pins.Span, $"`{name}` is no wire that a pin of `{item.Name}` can be", "name items of the kind `wire`, or one of the kind `busbar`");
        }

        if (pins.Names.Count(n => plan.Book.Items.TryGetValue(n, out Item? i) && i.Kind is { Role: KindRole.Wire, Alternates: true }) > 1)
        {
            plan.Found.Error("P040", pins.Span, $"`{item.Name}` has more than one busbar", "let each receptacle of a power line be an item of its own");
        }

        _ = PinPairs.CrossesOf(plan, item);
        Signal[] jumpers = [.. plan.Items.Where(i => i.Kind.Name == JumperKind.Name && (i.From?.Item == item.Name || i.To?.Item == item.Name)).Select(j => new SlotSignal(plan.PositionSlot(j), 1, -0.5))];
        plan.Name($"plugged of {item.Name}", Dimension.One, jumpers.Length == 0 ? new ConstantSignal(-1) : new AnySignal([.. jumpers]), isCondition: true);
        JoinByCover(plan, item);
    }

    /// <summary>The busbar among its pins.</summary>
    public static Item? BusOf(ClassBook book, Item item) => PinPairs.WiresOf(book, item).Select(p => p.Wire).FirstOrDefault(w => w.Kind.Alternates);

    private static void JoinByCover(PlanBuilder plan, Item item)
    {
        if (!item.Parameters.TryGetValue(CoverJoins, out ParameterValue? named))
        {
            return;
        }

        string[] wires = [.. named.Names.Distinct()];
        if (wires.Length < 2 || wires.Length < named.Names.Length || !wires.All(w => IsWire(plan, w)))
        {
            plan.Found.Error("P041", named.Span, $"the cover of `{item.Name}` joins no two wires", $"write `{CoverJoins}: [WIRE, WIRE]`");
            return;
        }

        CircuitPart part = plan.Circuits.PartOf(wires[0]);
        Slot position = plan.PositionSlot(item);
        Slot broken = plan.Fault(item, "cover contact open", ("", 1))[0];
        SlotFunction free = plan.HeadOpening(item);
        foreach (string other in wires.Skip(1))
        {
            part.Draft.AddResistance($"cover of {item.Name}", part.NodeOf(wires[0]), part.NodeOf(other), PinPairs.Ohms, part.Follow(item.Name, s => s[position.Index] > 0.5 && s[broken.Index] < 0.5 ? free(s) : 0));
        }
    }

    private static bool IsWire(PlanBuilder plan, string name) => plan.Book.Items.TryGetValue(name, out Item? item) && item.Kind is { Role: KindRole.Wire, Alternates: false };
}
