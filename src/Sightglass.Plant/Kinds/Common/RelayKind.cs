using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Common;

/// <summary>A relay or latch whose conditions the book says: an interlock, a pressure switch, a knockdown with its reset.</summary>
public sealed class RelayKind : KindBuilder
{
    private const string Picks = "picks up when";
    private const string Drops = "drops when";

    /// <summary>How surely the second condition must not hold for the first to pick it up: less than any instrument tells, in any unit.</summary>
    private const double Least = 1e-9;

    private const double Ln2 = 0.6931471805599453;

    public override KindSheet Sheet { get; } = new()
    {
        Name = "relay",
        Purpose = "Picks up when a condition comes to hold and stays so until another one does: a pressure switch, an interlock, a knockdown with its reset.",
        Details = """
            It tells 1 while it is picked up and 0 while it is dropped, to whatever is opened by it, driven by it, loaded by it or cut out by it; lamps and other relays ask `picked up of` it. A
            condition speaks of controls (`emergency of brake handle`), of other relays, of the surroundings (`speed > 85 mph`) and of stores that are worked out together. While both hold it drops. With a delay it picks up when the first has held so long; what it held shortly before counts by a lag (half of it is forgotten in that time). Source: hysteresis and
            first-order lag, derived.
            """,
        Medium = "control",
        Role = KindRole.Signal,
        Symbol = "governor",
        Parameters =
        [
            new(Picks, ParameterType.Formula, Dimension.One, "The condition that picks it up.", Required: true),
            new(Drops, ParameterType.Formula, Dimension.One, "The condition that lets it drop.", Required: true),
            Parameter.Of("after", Dimension.Second, "How long the first condition must hold; at once where nothing is written.", least: "0.1 s", most: "1 h"),
        ],
        Quantities = [new("told", Dimension.One, "1 while it is picked up, 0 while it is not."), new("picked up", Dimension.One, "It is picked up.", IsCondition: true)],
        Faults = [new("stuck", "It stays as it is, picked up or dropped.", [])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot told = Told.By(plan, item);
        plan.Name($"told of {item.Name}", Dimension.One, new SlotSignal(told));
        plan.Name($"picked up of {item.Name}", Dimension.One, new SlotSignal(told, 1, -0.5), isCondition: true);
        plan.AddStart(new($"picked up of {item.Name}", Dimension.One, -1, default, null, told, ["no", "yes"]));
        plan.Fault(item, "stuck", ("", 1));
    }

    public override void Indicate(PlanBuilder plan, Item item)
    {
        if (Condition(plan, item, Picks) is not { } picks || Condition(plan, item, Drops) is not { } drops)
        {
            return;
        }

        if (NetworkOf(plan, item, picks, drops) is not { } network)
        {
            return;
        }

        Slot told = Told.By(plan, item);
        Slot stuck = plan.PlanOf(item).Faults["stuck"][0].Slot;
        FormulaSignal off = new(drops);
        AllSignal on = new([new FormulaSignal(picks), new MarginSignal(off, -Least, -1)]);
        plan.AddSwitch(new($"{item.Name} drops.", network, off, s => s[told.Index] > 0.5 && s[stuck.Index] < 0.5, told, new ConstantSignal(0), Jumps: true));
        (Signal up, SlotCondition when) = item.Find("after") is { } delay ? Delayed(plan, item, network, on, delay) : (on, _ => true);
        plan.AddSwitch(new($"{item.Name} picks up.", network, up, s => s[told.Index] < 0.5 && s[stuck.Index] < 0.5 && when(s), told, new ConstantSignal(1), Jumps: true));
    }

    /// <summary>A lag of 'the condition holds' that has come half of the way after the delay.</summary>
    private static (Signal Margin, SlotCondition When) Delayed(PlanBuilder plan, Item item, int network, Signal on, double delay)
    {
        Slot asked = plan.SlotNamed($"asked of {item.Name}");
        plan.AddSwitch(new($"", network, on, s => s[asked.Index] < 0.5, asked, new ConstantSignal(1), Jumps: true));
        plan.AddSwitch(new($"", network, new MarginSignal(on, -Least, -1), s => s[asked.Index] > 0.5, asked, new ConstantSignal(0), Jumps: true));
        Amount waited = LagNumber.Add(plan, network, $"delay of {item.Name}", Lag.Follower(delay / Ln2), s => s[asked.Index]);
        return (new PotentialSignal(network, waited, 1, -0.5), s => s[asked.Index] > 0.5);
    }

    private static Formula? Condition(PlanBuilder plan, Item item, string parameter) =>
        item.Parameters.TryGetValue(parameter, out ParameterValue? value) ? plan.Read(value.Text, value.Span, FormulaKind.Condition, item.Vehicle) : null;

    /// <summary>Whose steps land on its moments; one of its own system, where it looks at controls and other relays only. Null after an error.</summary>
    private static int? NetworkOf(PlanBuilder plan, Item item, Formula picks, Formula drops)
    {
        int[] networks = [.. plan.NetworksOf(picks).Union(plan.NetworksOf(drops))];
        if (networks.Length > 1)
        {
            plan.Found.Error("P015", item.Parameters[Picks].Span, $"`{item.Name}` sends what is not worked out together", "speak of the items of one system, or of systems that a path joins; write a transmitter for each");
            return null;
        }

        if (networks.Length == 0 && plan.Networks.Count == 0)
        {
            plan.Found.Error("P025", item.Span, $"`{item.Name}` stands in a book in which nothing is stored", "add a store, such as a tank or a reservoir");
            return null;
        }

        return networks is [var one] ? one : plan.NetworkOfSystem(item) ?? 0;
    }
}
