using Sightglass.Book.Model;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Fuel;

public sealed partial class CheckValveKind
{
    private const double LeastWidth = 2000;

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (LiquidJoin.Opening(plan, item) is { } law)
        {
            double crack = item.Get("opens at");
            double[] sheet = LiquidCheckValve.ParametersOf(law, crack, Math.Max(LeastWidth, crack / 5));
            LiquidJoin.Add<LiquidCheckValve>(plan, item, sheet, LiquidCheckValve.OffsetParameter, network => [plan.Bind(network, _ => 1), plan.Bind(network, _ => 0)]);
        }
    }
}
