using Sightglass.Book.Model;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Fuel;

public sealed partial class PipeKind
{
    public override void Connect(PlanBuilder plan, Item item)
    {
        double[] sheet = LiquidPipe.ParametersOf(
            item.Get("diameter"), item.Get("length"), item.Get("roughness"), item.Get("fittings"), item.Get("density"), item.Get("viscosity"));
        LiquidJoin.Add<LiquidPipe>(plan, item, sheet, LiquidPipe.OffsetParameter, _ => []);
    }
}
