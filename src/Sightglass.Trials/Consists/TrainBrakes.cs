using System.Collections.Immutable;

namespace Sightglass.Trials.Consists;

/// <summary>The brakes of a train, found by setting them.</summary>
/// <param name="Vehicles">From the head of the train.</param>
public sealed record TrainBrakes(ImmutableArray<VehicleBrakes> Vehicles)
{
    /// <summary>kg above which each axle of a locomotive that is cut out counts as two: 200,000 lb, 49 CFR 238.15(d)(1)(iii) (read; see the rules).</summary>
    private const double Heavy = 200_000 * 0.45359237;

    public int Axles => Vehicles.Sum(v => v.Vehicle.Axles);

    public double WorkingAxles => Vehicles.Sum(v => v.WorkingAxles);

    /// <summary>Share of the brakes that work, 0…1: axles with brakes that work over all axles, 49 CFR 238.15(d)(1)(i); each cut out of a heavy locomotive counts as two.</summary>
    public double Share => Axles == 0 ? 0 : Math.Max(0, 1 - (Vehicles.Sum(v => (v.Vehicle.Axles - v.WorkingAxles) * (IsHeavy(v.Vehicle) ? 2 : 1)) / Axles));

    /// <summary>N at the rail with the brakes of the train set in full.</summary>
    public double Newtons => Vehicles.Sum(v => v.Newtons);

    private static bool IsHeavy(CheckedVehicle vehicle) => vehicle.IsMachine && vehicle.Mass > Heavy;
}
