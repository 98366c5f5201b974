using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Network.Laws.Liquid.Ends;
using Sightglass.Network.Stores;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Fuel;

public sealed partial class TankKind
{
    private const double LeastMouth = 0.5e-3;
    private const double NominalHole = 0.1;

    /// <summary>kg by which its weight moves before it is told to what carries it: an eighth of it is less than a shop scale is read to (common practice, no source).</summary>
    private const double ToldIn = 50;

    public override void Declare(PlanBuilder plan, Item item)
    {
        if (TankShape.Of(item, plan.Found) is not { } shape)
        {
            return;
        }

        int network = plan.NetworkOf(item, Fluid.Liquid);
        NetworkBuilder b = plan.Network(network);
        double density = item.Get("density");
        double half = shape.Capacity / 2 * density;
        StoreHandle store = shape.Add(b, item.Name, density, half);
        plan.NameAmounts(network, item.Name);
        Tilt tilt = new(plan);
        plan.BindParameter(network, store.FirstParameter + PrismaticTank.WeightParameter, s => PrismaticTank.Weight(density, tilt.Steepness(s)));
        if (shape.IsPrismatic)
        {
            plan.BindParameter(
                network, store.FirstParameter + PrismaticTank.HalfRiseParameter, s => Math.Max(PrismaticTank.Unevenness, tilt.HalfRise(s, shape.Length, shape.Width)));
        }

        plan.AddStore(item.Name, new(network, store, item, null, item.Position?.Z ?? 0, StoreSort.OpenTank));
        NameQuantities(plan, item, shape, store, network, density, tilt);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (plan.FindStore(item.Name) is not { } end || TankShape.Of(item, new()) is not { } shape)
        {
            return;
        }

        NetworkBuilder b = plan.Network(end.Network);
        Amount spilled = b.AddBoundary<FixedStore>($"spilled of {item.Name}", [Physical.Atmosphere]).First;
        plan.NameAmounts(end.Network, $"spilled of {item.Name}");
        double density = item.Get("density");
        PathHandle leak = Leak(plan, item, end, spilled, density);
        PathHandle vent = Vent(plan, item, end, spilled, shape, density);
        plan.Name($"leak flow of {item.Name}", Dimension.VolumeFlow, new FlowSignal(end.Network, leak, 1 / density));
        plan.Name($"overflow of {item.Name}", Dimension.VolumeFlow, new FlowSignal(end.Network, vent, 1 / density));
        plan.Name($"spilled of {item.Name}", Dimension.Volume, new AmountSignal(end.Network, spilled, 1 / density));
    }

    /// <summary>What is in it, told on in steps: a shop scale is not read more finely.</summary>
    public override SlotFunction? Weighs(PlanBuilder plan, Item item)
    {
        if (plan.FindStore(item.Name) is not { Holds: StoreSort.OpenTank } end || TankShape.Of(item, new()) is not { } shape)
        {
            return null;
        }

        Slot told = plan.SlotNamed($"weight of {item.Name}", shape.Capacity / 2 * item.Get("density"));
        plan.Follow("", end.Network, new AmountSignal(end.Network, end.Store.First), ToldIn, told, _ => true);
        return s => s[told.Index];
    }

    private static void NameQuantities(PlanBuilder plan, Item item, TankShape shape, StoreHandle store, int network, double density, Tilt tilt)
    {
        plan.Name($"volume of {item.Name}", Dimension.Volume, new AmountSignal(network, store.First, 1 / density));
        plan.Name($"mass of {item.Name}", Dimension.Kilogram, new AmountSignal(network, store.First));
        plan.Name($"fill of {item.Name}", Dimension.One, new AmountSignal(network, store.First, 1 / density / shape.Capacity));
        plan.Name(
            $"level of {item.Name}",
            Dimension.Metre,
            new LevelSignal(network, store.First, store.FirstParameter + PrismaticTank.WeightParameter, Physical.Atmosphere, 0, 0, tilt.Grade, tilt.Cant));
        plan.AddStart(new($"fill of {item.Name}", Dimension.One, network, store.First, f => f * shape.Capacity * density, default, []) { Least = 0, Greatest = 1 });
        plan.AddStart(new($"volume of {item.Name}", Dimension.Volume, network, store.First, v => v * density, default, []) { Least = 0, Greatest = shape.Capacity });
        plan.AddStart(new($"level of {item.Name}", Dimension.Metre, network, store.First, h => shape.VolumeAt(h) * density, default, []) { Least = 0, Greatest = shape.Depth });
    }

    /// <summary>A hole of no size until the fault gives it one: appended always, so that its absence changes no bit.</summary>
    private static PathHandle Leak(PlanBuilder plan, Item item, StoreEnd end, Amount spilled, double density)
    {
        Slot diameter = plan.Fault(item, "leak", ("diameter", 0.01), ("height", 0))[0];
        Slot height = plan.PlanOf(item).Faults["leak"][1].Slot;
        Input opening = plan.Bind(end.Network, s => s[diameter.Index] * s[diameter.Index] / (NominalHole * NominalHole));
        PathHandle path = plan.Network(end.Network).AddPath<LiquidPath<TankPort, LiquidOrifice, AirEnd>>(
            $"leak of {item.Name}",
            [end.Store.First, spilled],
            [new(end.Store.First, spilled)],
            LiquidPath<TankPort, LiquidOrifice, AirEnd>.ParametersOf(
                LiquidOrifice.ParametersOf(LiquidOrifice.SharpEdged, Math.PI * NominalHole * NominalHole / 4, density, LiquidJoin.Viscosity),
                TankPort.ParametersOf(0, LeastMouth, density),
                [0]),
            [opening]);
        int port = path.FirstParameter + LiquidOrifice.Parameters;
        plan.BindParameter(end.Network, port, s => TankPort.ParametersOf(s[height.Index], Math.Max(LeastMouth, s[diameter.Index] / 2), density)[0]);
        plan.BindParameter(end.Network, port + 2, s => TankPort.ParametersOf(s[height.Index], Math.Max(LeastMouth, s[diameter.Index] / 2), density)[2]);
        return path;
    }

    private static PathHandle Vent(PlanBuilder plan, Item item, StoreEnd end, Amount spilled, TankShape shape, double density)
    {
        double top = shape.Depth + item.Get("vent height");
        double area = item.Get("vent area");
        Input open = plan.Bind(end.Network, _ => 1);
        return plan.Network(end.Network).AddPath<LiquidPath<TankPort, LiquidOrifice, AirEnd>>(
            $"vent of {item.Name}",
            [end.Store.First, spilled],
            [new(end.Store.First, spilled)],
            LiquidPath<TankPort, LiquidOrifice, AirEnd>.ParametersOf(
                LiquidOrifice.ParametersOf(LiquidOrifice.SharpEdged, area, density, LiquidJoin.Viscosity), TankPort.ParametersOf(top, 0.01, density), [0]),
            [open]);
    }
}
