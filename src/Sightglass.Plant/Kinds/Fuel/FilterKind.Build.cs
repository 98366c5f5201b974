using Sightglass.Book.Model;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Fuel;

public sealed partial class FilterKind
{
    public override void Connect(PlanBuilder plan, Item item)
    {
        Slot dirt = plan.Fault(item, "dirt", ("factor", 5))[0];
        double[] sheet = LiquidFilter.ParametersOf(item.Get("flow") * item.Get("density"), item.Get("drop"));
        LiquidJoin.Add<LiquidFilter>(plan, item, sheet, LiquidFilter.OffsetParameter, network => [plan.Bind(network, s => Math.Max(0, s[dirt.Index] - 1))]);
    }
}
