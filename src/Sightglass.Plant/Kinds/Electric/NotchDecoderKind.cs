using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>What turns the wires of a control line into a notch.</summary>
public sealed class NotchDecoderKind : KindBuilder
{
    private const string Governor = "governor wires";
    private const string Minus = "minus";
    private const string Run = "run wire";
    private const string Codes = "codes";

    private const int Stop = 0;

    private const int Idle = 1;

    public override KindSheet Sheet { get; } = new()
    {
        Name = "notch decoder",
        Purpose = "Sets its unit's engine to the notch that the wires of a control line say: the solenoids of a governor, or a computer that reads the same wires.",
        Details = """
            Each wire in `governor wires` that has the voltage counts: the first one 1, the second 2, the third 4, the fourth 8. The position with that sum under `codes` is the one it takes; a sum that no position has leaves it where it is. Without voltage on the run wire it stands at
            idle, whatever the others say but stop. Each wire takes a little current through a coil to `minus`: with that wire open the coils feed each other, and wires that nobody put on may come on. Name it as the `throttle` of an engine. Codes are the book's matter. Source: common practice, no source.
            """,
        Medium = "control",
        Role = KindRole.Signal,
        Symbol = "relay",
        Positions = ["stop", "idle", "notch 1", "notch 2", "notch 3", "notch 4", "notch 5", "notch 6", "notch 7", "notch 8"],
        UsualPosition = "idle",
        Parameters =
        [
            new(Governor, ParameterType.Items, Dimension.One, "The wires that say the notch, from the one that counts 1.", Required: true),
            Parameter.Item(Minus, "The wire that they return by.", required: true),
            Parameter.Item(Run, "The wire that lets the engine leave idle; where none is named, nothing keeps it there."),
            new(Codes, ParameterType.ByPosition, Dimension.One, "The sum for each position; of two that have the same sum the first is taken.", Required: true, Minimum: "0", Maximum: "255"),
            Parameter.Of("picks at", Dimension.Voltage, "The voltage from which a wire counts.", "40 V", "0.1 V", "1 kV"),
            Parameter.Of("resistance", Dimension.Resistance, "Of each of its coils.", "1 kOhm", "1 Ohm", "1 MOhm"),
        ],
        Faults = [new("stuck", "It stays at the notch where it is.", [])],
    };

    public override IEnumerable<IEnumerable<string>> JoinsWires(ClassBook book, Item item) => [WiresOf(item)];

    public override void Declare(PlanBuilder plan, Item item)
    {
        plan.PositionSlot(item);
        plan.JamFault(item);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        string[] wires = [.. WiresOf(item)];
        foreach (string wire in wires.Where(w => !IsWire(plan, w)))
        {
            plan.Found.Error("P045", item.Span, $"`{wire}` is no wire that `{item.Name}` can read", "name items of the kind `wire`");
        }

        ImmutableSortedDictionary<string, double> codes = item.Parameters[Codes].ByPosition;
        foreach (string position in codes.Keys.Where(k => !Sheet.Positions.Contains(k)))
        {
            plan.Found.Error("P008", item.Parameters[Codes].Span, $"`{item.Name}` has no position `{position}`", $"its positions are: {string.Join(", ", Sheet.Positions.Select(p => $"`{p}`"))}");
        }

        if (!wires.All(w => IsWire(plan, w)))
        {
            return;
        }

        string minus = item.Parameters[Minus].Names[0];
        CircuitPart part = plan.Circuits.PartOf(minus);
        foreach (string wire in wires.Where(w => w != minus))
        {
            part.Draft.AddResistance($"coil of {item.Name}", part.NodeOf(wire), part.NodeOf(minus), item.Get("resistance"));
        }

        Follow(plan, item, codes);
    }

    /// <summary>Whenever the voltage of one of its wires has changed it takes the position that all of them say.</summary>
    private void Follow(PlanBuilder plan, Item item, ImmutableSortedDictionary<string, double> codes)
    {
        Slot minus = Volts(plan, item.Parameters[Minus].Names[0]);
        Slot[] governor = [.. item.Parameters[Governor].Names.Select(n => Volts(plan, n))];
        Slot? run = item.Parameters.GetValueOrDefault(Run) is { } named ? Volts(plan, named.Names[0]) : null;
        Slot position = plan.PositionSlot(item);
        Slot jammed = plan.PlanOf(item).Jammed!.Value;
        double picks = item.Get("picks at");
        (double Code, int Index)[] table = [.. Sheet.Positions.Select((p, i) => (p, i)).Where(p => codes.ContainsKey(p.p)).Select(p => (codes[p.p], p.i))];
        foreach (Slot wire in governor.Append(minus).Concat(run is { } r ? [r] : []))
        {
            plan.AddPulse(new($"", wire, s => s[jammed.Index] < 0.5, position, s => Decode(s)));
        }

        double Decode(ReadOnlySpan<double> slots)
        {
            int sum = 0;
            for (int i = 0; i < governor.Length; i++)
            {
                sum += slots[governor[i].Index] - slots[minus.Index] >= picks ? 1 << i : 0;
            }

            double stands = slots[position.Index];
            foreach ((double code, int index) in table)
            {
                if (code == sum)
                {
                    stands = index;
                    break;
                }
            }

            return stands != Stop && run is { } let && slots[let.Index] - slots[minus.Index] < picks ? Idle : stands;
        }
    }

    private static IEnumerable<string> WiresOf(Item item) => new[] { Governor, Minus, Run }.SelectMany(p => item.Parameters.GetValueOrDefault(p)?.Names ?? []);

    private static Slot Volts(PlanBuilder plan, string wire) => plan.SlotNamed($"voltage of {wire}");

    private static bool IsWire(PlanBuilder plan, string name) => plan.Book.Items.TryGetValue(name, out Item? item) && item.Kind is { Role: KindRole.Wire, Alternates: false };
}
