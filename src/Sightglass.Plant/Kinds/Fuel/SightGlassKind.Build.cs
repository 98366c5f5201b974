using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Fuel;

public sealed partial class SightGlassKind
{
    public override void Indicate(PlanBuilder plan, Item item)
    {
        ParameterValue of = item.Parameters["of"];
        string name = of.Names.Length > 0 ? of.Names[0] : of.Text;
        if (plan.FindStore(name) is not { Holds: StoreSort.OpenTank, Item: { } tank } end)
        {
            plan.Found.Error("P014", of.Span, $"`{name}` is not a tank", Nearest.DidYouMean(name, plan.Book.Items.Values.Where(i => i.Kind.Name == "tank").Select(i => i.Name)) ?? "name the tank it stands at");
            return;
        }

        Point3 floor = tank.Position ?? default;
        Point3 here = item.Position ?? floor;
        Tilt tilt = new(plan);
        plan.ShowOn(
            item,
            new LevelSignal(
                end.Network, end.Store.First, end.Store.FirstParameter + PrismaticTank.WeightParameter, Physical.Atmosphere, here.X - floor.X, here.Y - floor.Y, tilt.Grade, tilt.Cant),
            "dirty");
    }
}
