namespace Sightglass.Plant.Calculators.Running;

/// <summary>Where a train is at a moment of its run.</summary>
/// <param name="Seconds">Since the start.</param>
/// <param name="Metres">Of its head, since the start.</param>
/// <param name="Speed">m/s.</param>
/// <param name="Brake">0…1 of its brakes, in the step that ended here.</param>
/// <param name="Pull">N at the rail, in that step.</param>
public readonly record struct RoutePoint(double Seconds, double Metres, double Speed, double Brake, double Pull = 0);
