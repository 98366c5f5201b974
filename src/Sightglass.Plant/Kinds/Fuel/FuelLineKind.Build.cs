using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Fuel;

public sealed partial class FuelLineKind
{
    private const double Bar = 1e5;

    /// <summary>Range over which errors of a line's pressure are judged, Pa.</summary>
    private const double PressureSpan = 5e5;

    public override void Declare(PlanBuilder plan, Item item)
    {
        int network = plan.NetworkOf(item, Fluid.Liquid);
        double density = item.Get("density");
        double[] sheet = LiquidAirLine.ParametersOf(item.Get("volume"), density, item.Get("elasticity") / Bar);
        double[] start = LiquidAirLine.AmountsAt(sheet, Physical.Atmosphere + item.Get("start pressure"), 0);
        StoreHandle line = plan.Network(network).AddStore<LiquidAirLine>(item.Name, sheet, start, [PressureSpan, 1]);
        plan.NameAmounts(network, item.Name, $"air of {item.Name}");
        plan.AddStore(item.Name, new(network, line, item, null, item.Position?.Z ?? item.Get("height"), StoreSort.Line));
        plan.Name($"pressure of {item.Name}", Dimension.Pressure, new PotentialSignal(network, line.First, 1, -Physical.Atmosphere));
        plan.Name($"air of {item.Name}", Dimension.One, new PotentialSignal(network, line.Second));
        plan.Name($"volume of {item.Name}", Dimension.Volume, new AmountSignal(network, line.First, 1 / density));
    }
}
