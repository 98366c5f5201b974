namespace Sightglass.Plant.Calculators;

/// <summary>What brake cylinders do to a vehicle. Source: definitions of the trade's brake standards (from memory).</summary>
public static class BrakingForce
{
    /// <summary>Share by which turning parts add to a vehicle's mass (common practice).</summary>
    public const double TurningParts = 0.05;

    /// <summary>Force on the shoes or pads of a vehicle, N: area·pressure·number·lever·efficiency.</summary>
    /// <param name="area">Of one piston, m².</param>
    /// <param name="pressure">In the cylinders, over the atmosphere, Pa.</param>
    /// <param name="cylinders">How many.</param>
    /// <param name="lever">Shoe force over piston force.</param>
    /// <param name="efficiency">Of the rigging, 0…1.</param>
    public static double Shoes(double area, double pressure, int cylinders, double lever, double efficiency) => area * pressure * cylinders * lever * efficiency;

    /// <summary>Net braking ratio: shoe force over weight, both in the same unit.</summary>
    public static double Ratio(double force, double weight) => force / weight;

    /// <summary>Deceleration as a share of g.</summary>
    /// <param name="ratio">Net braking ratio.</param>
    /// <param name="friction">Of shoe on wheel or pad on disc.</param>
    public static double Deceleration(double ratio, double friction) => ratio * friction / (1 + TurningParts);
}
