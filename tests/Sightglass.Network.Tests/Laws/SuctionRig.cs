using Sightglass.Basics.Time;
using Sightglass.Network.Compile;
using Sightglass.Network.Groups;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Network.Laws.Liquid.Ends;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Groups;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Laws;

/// <summary>
/// A tank of 0.1 m² with 10 L above the middle of its pickup (0.05 m up, 20 mm wide), a suction line of 2 L, a pump of 9 L/min, a delivery line of 0.5 L that runs out
/// into the open, and a supply of 18 L/min that can be opened into the tank.
/// </summary>
internal sealed class SuctionRig : IDisposable
{
    public const double Density = 840;

    private const double Viscosity = 3e-6;

    private static readonly double[] s_suctionSheet = LiquidAirLine.ParametersOf(2e-3, Density, 1e-8);

    private static readonly double[] s_deliverySheet = LiquidAirLine.ParametersOf(0.5e-3, Density, 1e-8);

    private readonly StoreHandle _tank;
    private readonly StoreHandle _suction;
    private readonly StoreHandle _delivery;
    private readonly StoreHandle _outside;
    private readonly StoreHandle _air;
    private readonly StoreHandle _main;
    private readonly Input _supply;
    private readonly LaneGroup _group;

    public SuctionRig()
    {
        NetworkBuilder b = new();
        double[] spans = [1e5, 1];
        _tank = b.AddStore<PrismaticTank>("tank", PrismaticTank.ParametersOf(0.1, 0.3, 1, Density), [0.15 * 0.1 * Density], [1e4]);
        _suction = b.AddStore<LiquidAirLine>("suction", s_suctionSheet, LiquidAirLine.AmountsAt(s_suctionSheet, 1e5, 0), spans);
        _delivery = b.AddStore<LiquidAirLine>("delivery", s_deliverySheet, LiquidAirLine.AmountsAt(s_deliverySheet, 1.1e5, 0), spans);
        _outside = b.AddBoundary<FixedStore>("outside", [Physical.Atmosphere]);
        _air = b.AddBoundary<FixedStore>("air", [Physical.Atmosphere]);
        _main = b.AddBoundary<FixedStore>("main", [Physical.Atmosphere + 1e5]);
        _supply = b.AddInput(0);
        Input open = b.AddInput(1), speed = b.AddInput(7.5);
        double[] line = [0, LiquidAirLine.ResidualPressure];
        double[] port = TankPort.ParametersOf(0.05, 0.01, Density);
        b.AddPath<MixedPath<TankPort, LiquidOrifice, LineEnd>>(
            "pickup", [_tank.First, _suction.First, _suction.Second], [new(_tank.First, _suction.First), new(_air.First, _suction.Second)],
            MixedPath<TankPort, LiquidOrifice, LineEnd>.ParametersOf(Opening(2e-4), port, line, Density), [open]);
        b.AddPath<MixedPath<LineEnd, DisplacementPump, LineEnd>>(
            "pump", [_suction.First, _suction.Second, _delivery.First, _delivery.Second],
            [new(_suction.First, _delivery.First), new(_suction.Second, _delivery.Second)],
            MixedPath<LineEnd, DisplacementPump, LineEnd>.ParametersOf(
                DisplacementPump.ParametersOf(20e-6, 1e-12, Density, 5e5, 1.5e-4), line, line, Density),
            [speed]);
        b.AddPath<MixedPath<LineEnd, LiquidOrifice, AirEnd>>(
            "outlet", [_delivery.First, _delivery.Second, _outside.First], [new(_delivery.First, _outside.First), new(_delivery.Second, _air.First)],
            MixedPath<LineEnd, LiquidOrifice, AirEnd>.ParametersOf(Opening(3e-5), line, [0], Density), [open]);
        b.AddPath<LiquidOrifice>("supply", [_main.First, _tank.First], [new(_main.First, _tank.First)], Opening(3.1e-5), [_supply]);
        _group = new LaneGroup(b.Build());
    }

    public double Level => _group.GetAmount(0, _tank.First) / Density / 0.1;

    /// <summary>Void share in the suction line.</summary>
    public double SuctionVoid => Potentials(_suction, s_suctionSheet)[1];

    public double SuctionPressure => Potentials(_suction, s_suctionSheet)[0];

    /// <summary>kg that ran out at the end.</summary>
    public double Delivered => _group.GetAmount(0, _outside.First);

    /// <summary>All liquid, then all air, wherever it is.</summary>
    public (double Liquid, double Air) Sum =>
        (Total(_tank.First, _suction.First, _delivery.First, _outside.First, _main.First), Total(_air.First, _suction.Second, _delivery.Second));

    public long Steps => _group.Steps(0);

    public void Supply(bool open) => _group.SetInput(0, _supply, open ? 1 : 0);

    public void RunTo(double seconds) => Rig.RunTo(_group, 0, SimTime.FromSeconds(seconds));

    public void Dispose() => _group.Dispose();

    private static double[] Opening(double area) => LiquidOrifice.ParametersOf(0.62, area, Density, Viscosity);

    private double[] Potentials(StoreHandle line, double[] sheet) =>
        StoreProbe.Evaluate<LiquidAirLine>([_group.GetAmount(0, line.First), _group.GetAmount(0, line.Second)], sheet).Potentials;

    private double Total(params Amount[] amounts) => amounts.Sum(a => _group.GetAmount(0, a));
}
