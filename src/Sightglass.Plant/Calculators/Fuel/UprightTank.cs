namespace Sightglass.Plant.Calculators.Fuel;

/// <summary>An upright cylinder with a flat floor under any plane, exact. Source: the cylindrical wedge (any text on mensuration), derived.</summary>
/// <param name="Radius">m.</param>
/// <param name="Depth">m from floor to roof.</param>
public sealed record UprightTank(double Radius, double Depth)
{
    private double Floor => Math.PI * Radius * Radius;

    public TankContents Under(GlassPlane plane)
    {
        double slope = Math.Sqrt((plane.Along * plane.Along) + (plane.Across * plane.Across));
        (double volume, double wet) = Above(plane.Middle, slope);
        return new(volume - Above(plane.Middle - Depth, slope).Volume, 1 - (wet / Floor));
    }

    /// <summary>m³ and m² of floor where a plane stands above 0.</summary>
    private (double Volume, double Wet) Above(double middle, double slope)
    {
        double edge = slope * Radius > Math.Abs(middle) ? middle / slope : Radius * Math.Sign(middle);
        double root = Math.Sqrt(Math.Max(0, (Radius * Radius) - (edge * edge)));
        double wet = (edge * root) + (Radius * Radius * (Math.Asin(edge / Radius) + (Math.PI / 2)));
        return ((middle * wet) + (slope * 2 / 3 * root * root * root), wet);
    }
}
