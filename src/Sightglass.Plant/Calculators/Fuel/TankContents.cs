namespace Sightglass.Plant.Calculators.Fuel;

/// <summary>What is in a tank under a plane.</summary>
/// <param name="Volume">m³.</param>
/// <param name="Dry">Share of the floor that is dry, 0…1.</param>
public readonly record struct TankContents(double Volume, double Dry);
