using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Phasors;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Feeders;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Kinds.RunningGear;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.ThreePhase;

/// <summary>What joins the receptacles of two vehicles. A train makes one for every line of receptacles that two of its vehicles have in common.</summary>
public sealed class JumperKind : KindBuilder
{
    public const string Name = "jumper";

    private const string NotHome = "not home";

    /// <summary>s in which its warmth follows its current to 63 % (common practice, no source).</summary>
    private const double Warms = 900;

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "Joins the receptacles of two vehicles pin by pin; it has no owner, and can be fed from either end.",
        Details = """
            Each pin has a small resistance, each phase of a busbar R and X as its receptacles say. Its warmth goes to the square of the share of its rated current, over a quarter of an hour; at 1 it is as hot as it may be for ever. Who parts it while it is live is noted, and leaves both covers open. A
            train has one for every line of receptacles that the facing ends of two vehicles join. Source: Ohm's law; first-order lag (any text of heat, from memory).
            """,
        Medium = "control",
        Role = KindRole.Path,
        Symbol = "jumper",
        CoupledAs = "jumper",
        SharesDangers = true,
        Positions = ["parted", "coupled"],
        UsualPosition = "coupled",
        Quantities =
        [
            FeederSheet.Current, new("warmth", Dimension.One, "Of its power pins: 1 is as hot as they may be for ever."), new("live", Dimension.One, "It is in, and one of its ends has 50 V or more.", IsCondition: true),
            new("hot", Dimension.One, "Its power pins are hotter than they may be for ever.", IsCondition: true), new("pulled live", Dimension.One, "It was parted while it was live.", IsCondition: true),
        ],
        Faults =
        [
            new("stuck", "It does not come out.", []), FeederSheet.OpenPhase, new(NotHome, "It looks in, and its short pins do not touch: all but the power pins. Parting sets it right: who joins it again looks.", []),
            new("open pin", "A wire of it is broken.", [PinValue("pin")]), new("shorted pins", "Two wires of it touch.", [PinValue("pin"), PinValue("other")]), new("crossed pins", "Two wires of it are taken for each other.", [PinValue("pin"), PinValue("other")]),
        ],
    };

    public override IEnumerable<IEnumerable<string>> JoinsWires(ClassBook book, Item item)
    {
        PinPair[] pairs = ReceptaclesOf(book, item) is [var one, var other] ? [.. PinPairs.Of(book, one, other, PinPairs.CrossesOf(one))] : [];
        return [pairs.Where(p => !p.IsBus).SelectMany(p => new[] { p.Wire, p.OtherWire }), .. pairs.Where(p => p.IsBus).Select(p => new[] { p.Wire, p.OtherWire })];
    }

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot position = plan.PositionSlot(item);
        plan.JamFault(item);
        Slot pulled = PulledLive(plan, item);
        Slot loose = plan.Fault(item, NotHome, ("", 1))[0];
        plan.AddPulse(new($"", position, s => s[position.Index] < 0.5 && s[loose.Index] > 0.5, loose, _ => 0));
        Item[] ends = ReceptaclesOf(plan.Book, item);
        foreach (Item receptacle in ends)
        {
            plan.JoinHead(receptacle, s => s[position.Index] > 0.5 ? 1 : 0);
            plan.AddPulse(new($"", position, s => s[position.Index] < 0.5, plan.PositionSlot(receptacle), _ => 0));
            plan.AddPulse(new($"", pulled, s => s[pulled.Index] > 0.5, PulledLive(plan, receptacle), _ => 1));
        }

        if (ends is [var one, var other])
        {
            Parting.WithTheCouplers(plan, item, one, other);
        }

        Slot[] volts = [.. ends.Select(r => ReceptacleKind.BusOf(plan.Book, r)).OfType<Item>().Select(b => FeederSheet.GreatestVolts(plan, b.Name))];
        Signal live = new AllSignal([new SlotSignal(position, 1, -0.5), volts.Length == 0 ? new ConstantSignal(-1) : new AnySignal([.. volts.Select(v => new SlotSignal(v, 1, -FeederSheet.Dangerous))])]);
        plan.Name($"live of {item.Name}", Dimension.One, live, isCondition: true);
        plan.Name($"pulled live of {item.Name}", Dimension.One, new SlotSignal(pulled, 1, -0.5), isCondition: true);
        plan.AddPulse(new($"{item.Name} is parted live.", position, s => s[position.Index] < 0.5 && IsLive(s, volts), pulled, _ => 1));
        FeederSheet.NameCurrent(plan, item);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (ReceptaclesOf(plan.Book, item) is not [var one, var other])
        {
            plan.Found.Error("P043", item.Span, $"`{item.Name}` joins what is no receptacle", "let `from` and `to` name two items of the kind `receptacle`");
            return;
        }

        IReadOnlyDictionary<int, int> crosses = PinPairs.CrossesOf(one);
        if (!crosses.OrderBy(c => c.Key).SequenceEqual(PinPairs.CrossesOf(other).OrderBy(c => c.Key)))
        {
            plan.Found.Error("P043", item.Span, $"`{one.Name}` and `{other.Name}` do not say the same of which pins change places between them", $"write the same `{ReceptacleKind.Crosses}` for both");
            return;
        }

        PinPair[] pairs = [.. PinPairs.Of(plan.Book, one, other, crosses)];
        AddWires(plan, item, [.. pairs.Where(p => !p.IsBus)]);
        foreach (PinPair pair in pairs.Where(p => p.IsBus))
        {
            AddPhases(plan, item, pair, one, other);
        }

        Warm(plan, item, pairs.Any(p => p.IsBus), Math.Min(one.Get(ReceptacleKind.Rated), other.Get(ReceptacleKind.Rated)));
    }

    /// <summary>Whether it, or what it was in, was parted live.</summary>
    internal static Slot PulledLive(PlanBuilder plan, Item item) => plan.SlotNamed($"pulled live of {item.Name}");

    private static KindParameter PinValue(string name) => Parameter.Whole(name, "Its number at the first end.", name == "pin" ? "1" : "2", "1", "999");

    private static void AddPhases(PlanBuilder plan, Item item, PinPair pair, Item one, Item other)
    {
        Slot position = plan.PositionSlot(item);
        FeederPart part = plan.Feeders.PartOf(pair.Wire);
        Input[] phases = part.Phases(item.Name, s => s[position.Index] > 0.5 ? 1 : 0, FeederSheet.OpenPhaseOf(plan, item));
        Line line = part.AddLine(item.Name, part.BusOf(pair.Wire), part.BusOf(pair.OtherWire), Mean(ReceptacleKind.Ohms), Mean(ReceptacleKind.Reactance), phases);
        part.TellCurrent(FeederSheet.Amperes(plan, item), line);

        double Mean(string parameter) => (one.Get(parameter) + other.Get(parameter)) / 2;
    }

    /// <summary>Straight wires; two that touch meet at a node of their own; two that are crossed meet the other's far end there.</summary>
    private static void AddWires(PlanBuilder plan, Item item, PinPair[] pairs)
    {
        if (pairs.Length == 0)
        {
            return;
        }

        Slot position = plan.PositionSlot(item);
        Slot loose = plan.Fault(item, NotHome, ("", 1))[0];
        Slot open = plan.Fault(item, "open pin", ("pin", 1))[0];
        (Slot Pin, Slot Other) touching = Two(plan, item, "shorted pins"), crossed = Two(plan, item, "crossed pins");
        foreach (string fault in new[] { "open pin", "shorted pins", "crossed pins" })
        {
            plan.KnowFault(item, fault, [.. pairs.Select(p => (double)p.Pin)]);
        }

        SlotFunction made = s => s[position.Index] > 0.5 && s[loose.Index] < 0.5 ? 1 : 0;
        CircuitPart part = plan.Circuits.PartOf(pairs[0].Wire);
        Node touch = part.Draft.AddNode($"touching in {item.Name}");
        (Node First, Node Second) cross = (part.Draft.AddNode($"crossed in {item.Name}"), part.Draft.AddNode($"crossed as well in {item.Name}"));
        foreach (PinPair pair in pairs)
        {
            (Node near, Node far) = (part.NodeOf(pair.Wire), part.NodeOf(pair.OtherWire));
            Join(near, far, s => s[open.Index] == pair.Pin || Is(s, crossed.Pin, pair) || Is(s, crossed.Other, pair) ? 0 : made(s));
            Join(near, touch, s => Is(s, touching.Pin, pair) || Is(s, touching.Other, pair) ? made(s) : 0);
            Join(near, cross.First, s => Is(s, crossed.Pin, pair) ? made(s) : 0);
            Join(cross.First, far, s => Is(s, crossed.Other, pair) ? made(s) : 0);
            Join(near, cross.Second, s => Is(s, crossed.Other, pair) ? made(s) : 0);
            Join(cross.Second, far, s => Is(s, crossed.Pin, pair) ? made(s) : 0);
        }

        void Join(Node a, Node b, SlotFunction opening) => part.Draft.AddResistance(item.Name, a, b, PinPairs.Ohms, part.Follow(item.Name, opening));
    }

    private static bool Is(ReadOnlySpan<double> slots, Slot fault, PinPair pair) => slots[fault.Index] == pair.Pin;

    private static (Slot Pin, Slot Other) Two(PlanBuilder plan, Item item, string fault)
    {
        var values = plan.Fault(item, fault, ("pin", 1), ("other", 2));
        return (values[0], values[1]);
    }

    /// <summary>Of power pins only: where it has none it is cold for ever, and nothing is stepped for it.</summary>
    private static void Warm(PlanBuilder plan, Item item, bool hasPower, double rated)
    {
        if (!hasPower)
        {
            plan.Name($"warmth of {item.Name}", Dimension.One, new ConstantSignal(0));
            plan.Name($"hot of {item.Name}", Dimension.One, new ConstantSignal(-1), isCondition: true);
            return;
        }

        Slot amperes = FeederSheet.Amperes(plan, item);
        int network = plan.NetworkOf(item, Fluid.Charge);
        Amount warmth = LagNumber.Add(plan, network, $"warmth of {item.Name}", Lag.Follower(Warms), s => s[amperes.Index] * s[amperes.Index] / (rated * rated));
        PotentialSignal warm = new(network, warmth);
        plan.Name($"warmth of {item.Name}", Dimension.One, warm);
        plan.Name($"hot of {item.Name}", Dimension.One, new MarginSignal(warm, 1, 1), isCondition: true);
    }

    private static bool IsLive(ReadOnlySpan<double> slots, Slot[] volts)
    {
        foreach (Slot slot in volts)
        {
            if (slots[slot.Index] >= FeederSheet.Dangerous)
            {
                return true;
            }
        }

        return false;
    }

    private static Item[] ReceptaclesOf(ClassBook book, Item item) =>
        [.. new[] { item.From, item.To }.OfType<PortReference>().Select(e => book.Items.GetValueOrDefault(e.Item)).OfType<Item>().Where(i => i.Kind.CoupledBy == Name)];
}
