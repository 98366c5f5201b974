using Sightglass.Book.Model;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Fuel;

/// <summary>The paths of liquids.</summary>
internal sealed class LiquidPaths : IJoin
{
    public void Opening(PlanBuilder plan, Item item, SlotFunction share)
    {
        if (LiquidJoin.Opening(plan, item) is { } law)
        {
            LiquidJoin.Add<LiquidOrifice>(plan, item, law, LiquidOrifice.OffsetParameter, network => [plan.Bind(network, share)]);
        }
    }

    public void CheckValve(PlanBuilder plan, Item item, double opensAt, double width, SlotFunction lifts, SlotFunction passes)
    {
        if (LiquidJoin.Opening(plan, item) is { } law)
        {
            double[] sheet = LiquidCheckValve.ParametersOf(law, opensAt, width);
            LiquidJoin.Add<LiquidCheckValve>(plan, item, sheet, LiquidCheckValve.OffsetParameter, network => [plan.Bind(network, lifts), plan.Bind(network, passes)]);
        }
    }

    public void Pipe(PlanBuilder plan, Item item)
    {
        double[] sheet = LiquidPipe.ParametersOf(
            item.Get("diameter"), item.Get("length"), item.Get("roughness"), item.Get("fittings"), item.Get("density"), item.Get("viscosity"));
        LiquidJoin.Add<LiquidPipe>(plan, item, sheet, LiquidPipe.OffsetParameter, _ => []);
    }

    public void Filter(PlanBuilder plan, Item item, SlotFunction dirt)
    {
        double[] sheet = LiquidFilter.ParametersOf(item.Get("flow") * item.Get("density"), item.Get("drop"));
        LiquidJoin.Add<LiquidFilter>(plan, item, sheet, LiquidFilter.OffsetParameter, network => [plan.Bind(network, dirt)]);
    }
}
