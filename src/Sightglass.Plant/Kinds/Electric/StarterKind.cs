using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>Turns an engine until it runs by itself.</summary>
public sealed class StarterKind : KindBuilder
{
    private const string While = "cranks while";

    /// <summary>A from which it counts as cranking.</summary>
    private const double LeastCurrent = 1;

    private const double Ln2 = 0.6931471805599453;

    public override KindSheet Sheet { get; } = new()
    {
        Name = "starter",
        Purpose = "Turns an engine from a battery until it runs by itself, where the voltage is enough to turn it.",
        Details = """
            While it cranks it takes the current of a resistance. With at least the voltage that it needs it turns the engine, which fires after a time; with less it draws the battery down and nothing turns. A running engine throws it out, and nobody sets the engine running by hand any more. What
            the engine needs besides (fuel under pressure) is the engine's matter: it stops again without. Source: Ohm's law; the rest common practice, no source.
            """,
        Medium = "power",
        Role = KindRole.Path,
        Conducts = true,
        Symbol = "motor",
        Ports = [ConductorSheet.From, ConductorSheet.To],
        Parameters =
        [
            Parameter.Item("turns", "The engine.", required: true),
            new(While, ParameterType.Formula, Dimension.One, "Where the switch stands that has it crank.", Required: true),
            Parameter.Needed("resistance", Dimension.Resistance, "Of motor and leads while it cranks: 64 V at 900 A is 40 mΩ with a battery of 30 mΩ before it.", "0.01 mOhm", "100 Ohm"),
            Parameter.Needed("needs", Dimension.Voltage, "Voltage from which it turns the engine.", "0.1 V", "1 kV"),
            Parameter.Of("fires after", Dimension.Second, "How long it must be turned.", "6 s", "0.1 s", "5 min"),
        ],
        Quantities = [ConductorSheet.Voltage, ConductorSheet.Current, new("cranking", Dimension.One, "It is in and takes current.", IsCondition: true), new("turning", Dimension.One, "It turns the engine.", IsCondition: true)],
        Faults = [ConductorSheet.Open, new("worn", "It needs more voltage.", [Parameter.Of("voltage", Dimension.Voltage, "So much more.", "10 V", "0.1 V", "1 kV")])],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        ConductorSheet.NameBoth(plan, item);
        plan.Name($"cranking of {item.Name}", Dimension.One, new SlotSignal(ConductorSheet.Amperes(plan, item), 1, -LeastCurrent), isCondition: true);
        plan.Name($"turning of {item.Name}", Dimension.One, Turning(plan, item), isCondition: true);
    }

    public override void Indicate(PlanBuilder plan, Item item)
    {
        if (EngineOf(plan, item) is not { } engine || WhileCondition.Of(plan, item, While) is not { } margin || plan.Circuits.EndsOf(item) is not { } ends)
        {
            return;
        }

        Slot running = plan.PositionSlot(engine);
        SlotFunction whole = ConductorSheet.Whole(plan, item);
        Slot worn = Worn(plan, item);
        Branch branch = ends.Part.Draft.AddResistance(
            item.Name, ends.From, ends.To, item.Get("resistance"), ends.Part.Follow(item.Name, margin, s => s[running.Index] > 0.5 ? 0 : whole(s)));
        ConductorSheet.Tell(plan, item, ends, branch);
        Slot amperes = ConductorSheet.Amperes(plan, item);
        double needs = item.Get("needs");
        double ohms = item.Get("resistance");
        // By its current, not by the voltage before it: with a broken lead there is voltage and nothing turns.
        SlotCondition turns = s => s[amperes.Index] * ohms >= needs + s[worn.Index] && s[running.Index] < 0.5;
        int network = plan.NetworkOf(item, Fluid.Charge);
        Amount turned = LagNumber.Add(plan, network, $"turned of {item.Name}", Lag.Follower(item.Get("fires after") / Ln2), s => turns(s) ? 1 : 0);
        plan.Update(plan.PlanOf(engine) with { Free = new(Turning(plan, item), $"turning of {item.Name}", Into: 1) });
        plan.AddSwitch(new($"{engine.Name} fires.", network, new PotentialSignal(network, turned, 1, -0.5), s => turns(s), running, new ConstantSignal(1)));
    }

    /// <summary>What it has over what it needs, V.</summary>
    private static SumSignal Turning(PlanBuilder plan, Item item) =>
        new([new SlotSignal(ConductorSheet.Amperes(plan, item), item.Get("resistance"), -item.Get("needs")), new SlotSignal(Worn(plan, item), -1)]);

    private static Slot Worn(PlanBuilder plan, Item item) => plan.Fault(item, "worn", ("voltage", 10))[0];

    private static Item? EngineOf(PlanBuilder plan, Item item)
    {
        ParameterValue named = item.Parameters["turns"];
        if (plan.Book.Items.TryGetValue(named.Text, out Item? engine) && engine.Kind.Symbol == "engine" && engine.Positions.Length > 1)
        {
            return engine;
        }

        plan.Found.Error("P039", named.Span, $"`{named.Text}` is no engine that `{item.Name}` can turn", Nearest.DidYouMean(named.Text, plan.Book.Items.Values.Where(i => i.Kind.Symbol == "engine").Select(i => i.Name)) ?? "name an item of the kind `engine`");
        return null;
    }
}
