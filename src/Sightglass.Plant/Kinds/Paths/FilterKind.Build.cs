using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Paths;

public sealed partial class FilterKind
{
    public override void Connect(PlanBuilder plan, Item item)
    {
        Slot dirt = plan.Fault(item, "dirt", ("factor", 5))[0];
        Join.Of(plan, item).Filter(plan, item, s => Math.Max(0, s[dirt.Index] - 1));
    }
}
