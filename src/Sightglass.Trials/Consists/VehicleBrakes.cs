using System.Collections.Immutable;

namespace Sightglass.Trials.Consists;

/// <summary>The brakes of one vehicle.</summary>
/// <param name="Vehicle">It.</param>
/// <param name="Cylinders">Each stands for as many axles as the others.</param>
public sealed record VehicleBrakes(CheckedVehicle Vehicle, ImmutableArray<CylinderReading> Cylinders)
{
    /// <summary>Axles whose brakes work.</summary>
    public double WorkingAxles => Cylinders.IsEmpty ? 0 : (double)Vehicle.Axles * Cylinders.Count(c => c.Works) / Cylinders.Length;

    /// <summary>N at the rail with the brakes of the train set in full.</summary>
    public double Newtons => Cylinders.Sum(c => c.Newtons);
}
