using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Heat;

/// <summary>Heat that comes out of something else: fuel that burns, a current in a grid, friction.</summary>
public sealed class HeatSourceKind : KindBuilder
{
    private const string Gives = "gives";

    public override KindSheet Sheet { get; } = new()
    {
        Name = "heat source",
        Purpose = "Warms a thermal mass by what goes on elsewhere: fuel that burns, a current through a grid, friction in a bearing.",
        Details = """
            Its power is a formula of the true state of one system, told as a transmitter tells: at the start, when it has moved by the band, and at once when something switches. So what comes in is never further from the truth than the band. Less than nothing cools. Source: energy balance.
            """,
        Medium = "water",
        Role = KindRole.Path,
        Symbol = "load",
        Ports = [new("to", "The thermal mass that it warms.")],
        Parameters =
        [
            new(Gives, ParameterType.Formula, Dimension.Power, "The power: `consumption of engine * 7 MJ / 1 L`.", Required: true),
            Parameter.Of("band", Dimension.Power, "How far it moves before it is told again.", "2 kW", "0.1 W", "1 MW"),
        ],
        Quantities = [new("heat", Dimension.Power, "What it gives now.")],
        Faults =
        [
            new("too strong", "It gives more than it should: a dry bearing, a brake that drags.", [Parameter.Of("share", Dimension.One, "Of what it should give, besides.", "800 %", "1 %", "5000 %")]),
            new("dead", "It gives nothing.", []),
        ],
    };

    public override bool PassesHeat => true;

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (HeatJoin.End(plan, item, item.To, "to", null) is not { } to)
        {
            return;
        }

        StoreEnd outside = Join.Outside(plan, $"heat of {item.Name}", to);
        Slot told = Told.By(plan, item);
        Slot strong = plan.Fault(item, "too strong", ("share", 8))[0];
        Slot dead = plan.Fault(item, "dead", ("", 1))[0];
        PathHandle path = plan.Network(to.Network).AddPath<SetFlow>(
            item.Name, [outside.Store.First, to.Store.First], [new(outside.Store.First, to.Store.First)], [],
            [plan.Bind(to.Network, s => s[dead.Index] > 0.5 ? 0 : s[told.Index] * (1 + s[strong.Index]))]);
        plan.Name($"heat of {item.Name}", Dimension.Power, new FlowSignal(to.Network, path));
    }

    /// <summary>In the third pass, when every name of the formula is there.</summary>
    public override void Indicate(PlanBuilder plan, Item item)
    {
        if (plan.FindStore(item.To?.Item ?? "") is not { Holds: StoreSort.Heat } to || !item.Parameters.TryGetValue(Gives, out ParameterValue? value)
            || plan.Read(value.Text, value.Span, FormulaKind.Value(Dimension.Power), item.Vehicle) is not { } formula)
        {
            return;
        }

        if (plan.OneNetworkOf(formula, to.Network) is not { } network)
        {
            plan.Found.Error("P015", value.Span, $"`{item.Name}` sends what is not worked out together", "speak of the items of one system, or of systems that a path joins; write a transmitter for each");
            return;
        }

        plan.Follow($"{item.Name} tells on.", network, new FormulaSignal(formula), item.Get("band"), Told.By(plan, item), _ => true);
    }
}
