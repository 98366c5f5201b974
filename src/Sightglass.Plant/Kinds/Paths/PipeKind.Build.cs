using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Paths;

public sealed partial class PipeKind
{
    public override void Connect(PlanBuilder plan, Item item) => Join.Of(plan, item).Pipe(plan, item);
}
