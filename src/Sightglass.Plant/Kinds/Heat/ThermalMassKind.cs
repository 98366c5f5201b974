using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Stores;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Heat;

/// <summary>Something that is warm all through: water with the iron round it, oil, a grid.</summary>
public sealed class ThermalMassKind : KindBuilder
{
    /// <summary>Range over which errors of a temperature are judged, K.</summary>
    private const double Span = 100;

    public override KindSheet Sheet { get; } = new()
    {
        Name = "thermal mass",
        Purpose = "Something that is warm all through: cooling water with the iron round it, oil, a resistor grid, a bearing.",
        Details = """
            dT/dt = P/C: one temperature for all of it, from the heat that comes and goes by heat sources and heat exchangers. Valid where heat spreads inside faster than it leaves (Biot number below 0.1). Nothing boils or freezes by itself. Source: lumped heat capacity (any text of heat transfer, from memory).
            """,
        Medium = "water",
        Role = KindRole.Store,
        Symbol = "reservoir",
        Parameters =
        [
            Parameter.Needed("heat capacity", Dimension.HeatCapacity, "Mass times specific heat: 4.2 kJ/K for a litre of water, 0.46 for a kilogram of iron.", "1 J/K", "1000 MJ/K"),
            Parameter.Of("usual temperature", Dimension.Kelvin, "What it has where a situation says nothing.", "15 degC", "-60 degC", "1200 degC"),
        ],
        Quantities = [new("temperature", Dimension.Kelvin, "Of all of it.")],
    };

    public override Fluid? Holds => Fluid.Heat;

    public override void Declare(PlanBuilder plan, Item item)
    {
        int network = plan.NetworkOf(item, Fluid.Heat);
        double capacity = item.Get("heat capacity");
        StoreHandle store = plan.Network(network).AddStore<LinearStore>(item.Name, LinearStore.ParametersOf(0, 0, capacity), [capacity * item.Get("usual temperature")], [Span]);
        plan.NameAmounts(network, item.Name);
        plan.AddStore(item.Name, new(network, store, item, null, item.Position?.Z ?? 0, StoreSort.Heat));
        plan.Name($"temperature of {item.Name}", Dimension.Kelvin, new PotentialSignal(network, store.First));
        plan.AddStart(new($"temperature of {item.Name}", Dimension.Kelvin, network, store.First, t => capacity * t, default, []) { Least = 0 });
    }
}
