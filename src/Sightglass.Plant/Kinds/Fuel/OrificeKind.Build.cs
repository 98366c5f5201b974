using Sightglass.Book.Model;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Fuel;

public sealed partial class OrificeKind
{
    public override void Connect(PlanBuilder plan, Item item)
    {
        if (LiquidJoin.Opening(plan, item) is { } law)
        {
            LiquidJoin.Add<LiquidOrifice>(plan, item, law, LiquidOrifice.OffsetParameter, network => [plan.Bind(network, _ => 1)]);
        }
    }
}
