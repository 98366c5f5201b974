using Sightglass.Book.Model;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Fuel;

public sealed partial class DisplacementPumpKind
{
    public override void Connect(PlanBuilder plan, Item item)
    {
        double flow = item.Get("flow");
        double relief = item.Get("relief");
        double density = item.Find("density") ?? 840;
        double slip = item.Get("slip") * flow / relief;
        Slot worn = plan.Fault(item, "worn", ("share", 0.4))[0];
        SlotFunction speed = Drive.Speed(plan, item);
        double[] sheet = DisplacementPump.ParametersOf(flow, slip, density, relief, flow);
        if (LiquidJoin.Add<DisplacementPump>(plan, item, sheet, DisplacementPump.OffsetParameter, network => [plan.Bind(network, speed)]) is { } path)
        {
            int network = plan.FindStore(item.From!.Item)!.Network;
            plan.BindParameter(network, path.FirstParameter + DisplacementPump.SlipParameter, s => density * (slip + (s[worn.Index] * flow / relief)));
        }
    }
}
