using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Network.Laws.Liquid.Ends;
using Sightglass.Network.Stores;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Fuel;

public sealed partial class FillPortKind
{
    /// <summary>Pressure at the nozzle over the atmosphere, Pa: so much that the level does not matter.</summary>
    private const double NozzlePressure = 1e5;

    /// <summary>Height over which the float shuts, m.</summary>
    private const double Band = 0.01;

    private const int Filling = 2;

    public override void Declare(PlanBuilder plan, Item item) => plan.PositionSlot(item);

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (plan.FindEnd(item, item.To, "to") is not { } tank)
        {
            return;
        }

        double density = item.Get("density");
        double weight = density * Physical.Gravity;
        double begin = Physical.Atmosphere + (weight * (item.Get("closes at height") - Band));
        double area = item.Get("flow") / (LiquidOrifice.SharpEdged * Math.Sqrt(2 * NozzlePressure / density));
        Slot position = plan.PositionSlot(item);
        Slot hangs = plan.Fault(item, "does not shut", ("", 1))[0];
        NetworkBuilder b = plan.Network(tank.Network);
        string name = $"nozzle at {item.Name}";
        Amount nozzle = b.AddBoundary<FixedStore>(name, [Physical.Atmosphere + NozzlePressure]).First;
        plan.NameAmounts(tank.Network, name);
        PathHandle path = b.AddPath<LiquidPath<FullEnd, FloatValve, TankPort>>(
            item.Name,
            [nozzle, tank.Store.First, tank.Store.First],
            [new(nozzle, tank.Store.First)],
            LiquidPath<FullEnd, FloatValve, TankPort>.ParametersOf(
                FloatValve.ParametersOf(LiquidOrifice.ParametersOf(LiquidOrifice.SharpEdged, area, density, LiquidJoin.Viscosity), begin, weight * Band),
                [0],
                TankPort.ParametersOf(tank.Port?.Height ?? 0, 0.02, density)),
            [plan.Bind(tank.Network, s => s[position.Index] > Filling - 0.5 ? 1 : 0)]);
        plan.BindParameter(tank.Network, path.FirstParameter + FloatValve.BeginParameter, s => s[hangs.Index] > 0.5 ? 1e9 : begin);
        plan.Name($"flow of {item.Name}", Dimension.VolumeFlow, new FlowSignal(tank.Network, path, 1 / density));
    }
}
