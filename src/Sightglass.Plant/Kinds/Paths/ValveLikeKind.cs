using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>An orifice that is shut in its first position and open in its second.</summary>
public abstract class ValveLikeKind : KindBuilder
{
    public override void Declare(PlanBuilder plan, Item item)
    {
        plan.PositionSlot(item);
        plan.JamFault(item);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        Slot position = plan.PositionSlot(item);
        Slot passes = plan.Fault(item, "passes", ("share", 0.05))[0];
        Join.Of(plan, item).Opening(plan, item, s => s[position.Index] > 0.5 ? 1 : s[passes.Index]);
    }
}
