namespace Sightglass.Plant.Calculators.Running;

/// <summary>A stretch of a route along which nothing changes.</summary>
/// <param name="Length">m.</param>
/// <param name="Grade">Rise over run, above 0 uphill.</param>
/// <param name="Limit">m/s; kept from the head's entering until the last car has left.</param>
/// <param name="CurveDegrees">By 100 ft of arc.</param>
/// <param name="Adhesion">Share of the driven weight that the rail holds.</param>
/// <param name="Sanded">The same with sand.</param>
public sealed record RouteStretch(double Length, double Grade, double Limit, double CurveDegrees = 0, double Adhesion = 0.25, double Sanded = 0.30);
