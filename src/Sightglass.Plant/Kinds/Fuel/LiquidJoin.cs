using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Network.Laws.Liquid.Ends;
using Sightglass.Network.Stores;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Fuel;

/// <summary>Joins two stores by a liquid law, whatever the stores are: tank, line or the outside.</summary>
internal static class LiquidJoin
{
    /// <summary>Kinematic viscosity of diesel fuel at 40 °C where the book says nothing, m²/s (EN 590: 2.0–4.5 mm²/s, from memory).</summary>
    public const double Viscosity = 3e-6;

    /// <summary>
    /// Pressure difference below which an opening at a line counts as laminar at least, Pa: 0.2 mm of head. A line gives so little that a root so steep
    /// at zero as the true one would keep its pressure swinging about rest within the error allowed, thousands of steps a second.
    /// </summary>
    private const double LeastTransition = 2;

    /// <summary>Half the height of a pickup's mouth, m, where it stands at least so high.</summary>
    private const double HalfMouth = 0.01;

    /// <summary>Half the height of a mouth in the floor, m: less than a floor is uneven by, so that an empty tank gives nothing.</summary>
    private const double HalfFloorMouth = 2e-4;

    /// <summary>Adds the path of an item between its two ends, names its flow, and lets it follow the tilt.</summary>
    /// <param name="plan">Where it is built.</param>
    /// <param name="item">The path.</param>
    /// <param name="law">The law's sheet.</param>
    /// <param name="offset">Where the law's sheet has the static head at its first end.</param>
    /// <param name="inputs">The law's inputs.</param>
    public static PathHandle? Add<TLaw>(PlanBuilder plan, Item item, double[] law, int offset, Func<int, Input[]> inputs)
        where TLaw : struct, ILaw
    {
        if (Join.Ends(plan, item) is not var (from, to))
        {
            return null;
        }

        double density = item.Find("density") ?? 840;
        Input[] made = inputs(from.Network);
        PathHandle path = (from.Holds, to.Holds) switch
        {
            (StoreSort.OpenTank, StoreSort.OpenTank) => One<TankPort, TLaw, TankPort>(plan, item, from, to, law, made, density),
            (StoreSort.OpenTank, StoreSort.Line) => Two<TankPort, TLaw, LineEnd>(plan, item, from, to, law, made, density),
            (StoreSort.OpenTank, _) => One<TankPort, TLaw, AirEnd>(plan, item, from, to, law, made, density),
            (StoreSort.Line, StoreSort.OpenTank) => Two<LineEnd, TLaw, TankPort>(plan, item, from, to, law, made, density),
            (StoreSort.Line, StoreSort.Line) => Two<LineEnd, TLaw, LineEnd>(plan, item, from, to, law, made, density),
            (StoreSort.Line, _) => Two<LineEnd, TLaw, AirEnd>(plan, item, from, to, law, made, density),
            (_, StoreSort.OpenTank) => One<AirEnd, TLaw, TankPort>(plan, item, from, to, law, made, density),
            (_, StoreSort.Line) => Two<AirEnd, TLaw, LineEnd>(plan, item, from, to, law, made, density),
            _ => One<AirEnd, TLaw, AirEnd>(plan, item, from, to, law, made, density),
        };
        if (offset >= 0)
        {
            FollowHead(plan, path.FirstParameter + offset, from, to, density);
        }

        int first = path.FirstParameter + TLaw.Parameters;
        FollowPort(plan, first, from, density);
        FollowPort(plan, first + ParametersOf(from), to, density);
        plan.Name($"flow of {item.Name}", Dimension.VolumeFlow, new FlowSignal(from.Network, path, 1 / density));
        return path;
    }

    /// <summary>The sheet of an opening given by area or diameter; null after an error.</summary>
    public static double[]? Opening(PlanBuilder plan, Item item)
    {
        if (PathSheet.AreaOf(plan, item) is not { } area)
        {
            return null;
        }

        double[] sheet = LiquidOrifice.ParametersOf(item.Find("discharge coefficient") ?? LiquidOrifice.SharpEdged, area, item.Find("density") ?? 840, Viscosity);
        if (EndsAtLine(plan, item.From) || EndsAtLine(plan, item.To))
        {
            sheet[1] = Math.Max(sheet[1], LeastTransition);
        }

        return sheet;
    }

    private static bool EndsAtLine(PlanBuilder plan, PortReference? reference) =>
        reference is not null && plan.FindStore(reference.Item) is { Holds: StoreSort.Line };

    private static PathHandle One<TFrom, TLaw, TTo>(PlanBuilder plan, Item item, StoreEnd from, StoreEnd to, double[] law, Input[] inputs, double density)
        where TFrom : struct, ILiquidEnd
        where TLaw : struct, ILaw
        where TTo : struct, ILiquidEnd =>
        plan.Network(from.Network).AddPath<LiquidPath<TFrom, TLaw, TTo>>(
            item.Name,
            [.. PotentialsOf(from), .. PotentialsOf(to)],
            [new(from.Store.First, to.Store.First)],
            LiquidPath<TFrom, TLaw, TTo>.ParametersOf(law, SheetOf(from, density), SheetOf(to, density)),
            inputs);

    private static PathHandle Two<TFrom, TLaw, TTo>(PlanBuilder plan, Item item, StoreEnd from, StoreEnd to, double[] law, Input[] inputs, double density)
        where TFrom : struct, ILiquidEnd
        where TLaw : struct, ILaw
        where TTo : struct, ILiquidEnd =>
        plan.Network(from.Network).AddPath<MixedPath<TFrom, TLaw, TTo>>(
            item.Name,
            [.. PotentialsOf(from), .. PotentialsOf(to)],
            [new(from.Store.First, to.Store.First), new(AirOf(from), AirOf(to))],
            MixedPath<TFrom, TLaw, TTo>.ParametersOf(law, SheetOf(from, density), SheetOf(to, density), density),
            inputs);

    private static Amount[] PotentialsOf(StoreEnd end) =>
        end.Holds == StoreSort.Line ? [end.Store.First, end.Store.Second] : [end.Store.First];

    private static Amount AirOf(StoreEnd end) => end.Holds == StoreSort.Line ? end.Store.Second : Amount.None;

    private static int ParametersOf(StoreEnd end) => end.Holds switch
    {
        StoreSort.OpenTank => TankPort.Parameters,
        StoreSort.Line => LineEnd.Parameters,
        _ => AirEnd.Parameters,
    };

    private static double[] SheetOf(StoreEnd end, double density) => end.Holds switch
    {
        StoreSort.OpenTank => TankPort.ParametersOf(end.Port?.Height ?? 0, HalfHeight(end), density),
        StoreSort.Line => [0, LiquidAirLine.ResidualPressure],
        _ => [0],
    };

    private static double HalfHeight(StoreEnd end) => Math.Clamp(end.Port?.Height ?? 0, HalfFloorMouth, HalfMouth);

    /// <summary>Height of the middle of the mouth. In a curved floor it stands on the floor; a flat one is uneven enough to run dry under it.</summary>
    private static double MouthHeight(StoreEnd end) => end.Item is { } tank && tank.Text("shape") is "prismatic" or "upright cylinder"
        ? end.Port?.Height ?? 0
        : Math.Max(end.Port?.Height ?? 0, HalfHeight(end));

    /// <summary>The head between the two mouths, which changes as the machine tilts.</summary>
    private static void FollowHead(PlanBuilder plan, int parameter, StoreEnd from, StoreEnd to, double density)
    {
        Tilt tilt = new(plan);
        Point3 a = Tilt.PlaceOf(from);
        Point3 b = to.Holds == StoreSort.Outside ? a : Tilt.PlaceOf(to);
        a = from.Holds == StoreSort.Outside ? b : a;
        plan.BindParameter(
            from.Network, parameter, s => density * Physical.Gravity * (a.Z - b.Z + tilt.Lift(s, a.X, a.Y) - tilt.Lift(s, b.X, b.Y)));
    }

    /// <summary>The depth of a tank's port, which changes as the tank tilts.</summary>
    private static void FollowPort(PlanBuilder plan, int first, StoreEnd end, double density)
    {
        if (end.Holds != StoreSort.OpenTank)
        {
            return;
        }

        Tilt tilt = new(plan);
        Point3 port = Tilt.PlaceOf(end);
        Point3 floor = end.Item?.Position ?? new(0, 0, end.Elevation);
        double height = MouthHeight(end);
        plan.BindParameter(
            end.Network,
            first + TankPort.OffsetParameter,
            s => -density * Physical.Gravity * (height + tilt.Lift(s, port.X, port.Y) - tilt.Lift(s, floor.X, floor.Y)));
    }
}
