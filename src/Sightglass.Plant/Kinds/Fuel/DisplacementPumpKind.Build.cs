using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Liquid;
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
        SlotFunction speed = Speed(plan, item);
        double[] sheet = DisplacementPump.ParametersOf(flow, slip, density, relief, flow);
        if (LiquidJoin.Add<DisplacementPump>(plan, item, sheet, DisplacementPump.OffsetParameter, network => [plan.Bind(network, speed)]) is { } path)
        {
            int network = plan.FindStore(item.From!.Item)!.Network;
            plan.BindParameter(network, path.FirstParameter + DisplacementPump.SlipParameter, s => density * (slip + (s[worn.Index] * flow / relief)));
        }
    }

    /// <summary>Full speed while what drives it is in any position but its first, or as a transmitter tells.</summary>
    private static SlotFunction Speed(PlanBuilder plan, Item item)
    {
        if (!item.Parameters.TryGetValue("driven by", out ParameterValue? driver) || driver.Names.Length == 0)
        {
            return _ => 1;
        }

        if (plan.Book.Items.TryGetValue(driver.Names[0], out Item? by) && by.Kind.Role == KindRole.Signal)
        {
            return ActuatedValveKind.ShareTold(plan, item, "driven by")!;
        }

        if (by is null || by.Positions.IsDefaultOrEmpty)
        {
            plan.Found.Error("P006", driver.Span, $"`{driver.Names[0]}` cannot drive `{item.Name}`", Nearest.DidYouMean(driver.Names[0], plan.Book.Items.Keys) ?? "name a switch, an engine or a transmitter");
            return _ => 0;
        }

        Slot position = plan.PositionSlot(by);
        return s => s[position.Index] > 0.5 ? 1 : 0;
    }
}
