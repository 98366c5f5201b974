namespace Sightglass.Plant.Calculators.Running;

/// <summary>
/// Force at the rail by power and adhesion. Source: P = F·v; adhesion by Hay, Railroad Engineering (from memory): 0.25…0.30 dry, 0.15…0.20 wet, with sand in between.
/// </summary>
public static class TractiveEffort
{
    /// <summary>N that a power gives at a speed: P·η/v. Endless at standstill, where adhesion decides.</summary>
    /// <param name="watts">For traction, at the input of what has the efficiency.</param>
    /// <param name="efficiency">η to the rail, 0…1.</param>
    /// <param name="speed">m/s, 0 or more.</param>
    public static double PowerNewtons(double watts, double efficiency, double speed) => watts * efficiency / speed;

    /// <summary>N that the wheels hold: μ·weight.</summary>
    /// <param name="weight">On driven axles that pull, N.</param>
    public static double AdhesionNewtons(double weight, double adhesion) => weight * adhesion;

    /// <summary>N: the lesser of both.</summary>
    public static double Newtons(double watts, double efficiency, double weight, double adhesion, double speed) =>
        Math.Min(PowerNewtons(watts, efficiency, speed), AdhesionNewtons(weight, adhesion));

    /// <summary>m/s below which adhesion decides and above which power does.</summary>
    public static double CornerSpeed(double watts, double efficiency, double weight, double adhesion) => watts * efficiency / AdhesionNewtons(weight, adhesion);
}
