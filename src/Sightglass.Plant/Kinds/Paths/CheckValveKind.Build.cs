using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Paths;

public sealed partial class CheckValveKind
{
    private const double LeastWidth = 2000;

    public override void Connect(PlanBuilder plan, Item item)
    {
        double opensAt = item.Get("opens at");
        Slot shut = plan.Fault(item, "stuck shut", ("", 1))[0];
        Slot passes = plan.Fault(item, "passes", ("share", 0.05))[0];
        Join.Of(plan, item).CheckValve(plan, item, opensAt, Math.Max(LeastWidth, opensAt / 5), s => 1 - s[shut.Index], s => s[passes.Index]);
    }
}
