using System.Collections.Immutable;

namespace Sightglass.Plant.Calculators.Weight;

/// <summary>What stands on the rails.</summary>
/// <param name="Wheels">N at each wheel, axle by axle from the front, the right one first.</param>
/// <param name="Stop">N with which a frame rests on a stop; 0 where none does.</param>
public sealed record WheelForces(ImmutableArray<double> Wheels, double Stop);
