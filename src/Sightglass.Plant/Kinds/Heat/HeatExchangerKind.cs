using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Heat;

/// <summary>A way for heat: a radiator, a cooler, a casing in the wind.</summary>
public sealed class HeatExchangerKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "heat exchanger",
        Purpose = "Lets heat pass from one thermal mass to another, or to the air outside: a radiator, an oil cooler, a grid in its blower's air.",
        Details = """
            P = G·ΔT, with G = G₀·(s + (1 − s)·xⁿ): s is what is left with nothing moving, x the share of the full stream: the mean of what moves it times how far each of what it goes through stands open. n is 0.6 for air across tubes (Hilpert, Zukauskas: Incropera ch. 7, from memory), 0.8 for a stream inside them (Dittus and Boelter, ch. 8). Outside is at the
            temperature of the surroundings. G₀ covers both sides: the product of effectiveness and least heat capacity rate at the full stream. Source: effectiveness of heat exchangers (Incropera ch. 11, from memory).
            """,
        Medium = "water",
        Role = KindRole.Path,
        Symbol = "filter",
        Parameters =
        [
            Parameter.Needed("conductance", Dimension.HeatConductance, "Heat for each kelvin between its ends, with the full stream.", "0.001 W/K", "10 MW/K"),
            Parameter.Of("still", Dimension.One, "Share of it that is left with nothing moving.", "5 %", "0 %", "100 %"),
            Parameter.Of("exponent", Dimension.One, "How its conductance grows with the stream.", "0.6", "0", "1"),
            Parameter.Items(Stream.MovedBy, "Fans, pumps or transmitters that move the stream: their mean counts. Always the full stream where nothing is named."),
            Parameter.Items(Stream.Through, "Screens, shutters and broken windows that the stream goes through, one after the other."),
        ],
        Quantities = [new("heat", Dimension.Power, "From its first end to its second.")],
        Faults = [new("fouled", "Scale, oil or dirt on its surface.", [Parameter.Of("share", Dimension.One, "Of its conductance, lost.", "40 %", "1 %", "99 %")])],
    };

    public override bool PassesHeat => true;

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (HeatJoin.End(plan, item, item.From, "from", item.To) is not { } from || HeatJoin.End(plan, item, item.To, "to", item.From) is not { } to
            || Stream.Share(plan, item) is not { } stream)
        {
            return;
        }

        double still = item.Get("still");
        double exponent = item.Get("exponent");
        Slot fouled = plan.Fault(item, "fouled", ("share", 0.4))[0];
        int network = from.Network;
        PathHandle path = plan.Network(network).AddPath<LinearPath>(
            item.Name,
            [from.Store.First, to.Store.First],
            [new(from.Store.First, to.Store.First)],
            LinearPath.ParametersOf(item.Get("conductance")),
            [plan.Bind(network, s => (still + ((1 - still) * Stream.Power(stream(s), exponent))) * (1 - s[fouled.Index]))]);
        plan.Name($"heat of {item.Name}", Dimension.Power, new FlowSignal(network, path));
    }
}
