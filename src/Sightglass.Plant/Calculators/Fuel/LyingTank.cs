namespace Sightglass.Plant.Calculators.Fuel;

/// <summary>A lying cylinder with flat ends under any plane, exact. Source: the area of a circular segment (Marks' handbook, from memory), integrated along the axis.</summary>
/// <param name="Radius">m.</param>
/// <param name="Length">m along.</param>
public sealed record LyingTank(double Radius, double Length)
{
    /// <summary>Difference of levels, in radii, below which the plane is level: what that leaves out goes with its square.</summary>
    private const double Nothing = 1e-6;

    public TankContents Under(GlassPlane plane)
    {
        // Across, the circle is the same from every side: only the distance of its middle from the surface counts.
        double lean = Math.Sqrt(1 + (plane.Across * plane.Across));
        double middle = Radius + ((plane.Middle - Radius) / lean);
        double rise = Math.Abs(plane.Along) * Length / lean;
        (double high, double low) = (middle + (rise / 2), middle - (rise / 2));
        return rise < Nothing * Radius
            ? new(Segment(middle) * Length, middle > 0 ? 0 : 1)
            : new((Under(high) - Under(low)) * Length / rise, Math.Clamp(-low / rise, 0, 1));
    }

    /// <summary>m² of the circle below a level.</summary>
    private double Segment(double level)
    {
        double u = Radius - Math.Clamp(level, 0, 2 * Radius);
        return (Radius * Radius * Math.Acos(u / Radius)) - (u * Math.Sqrt(Math.Max(0, (Radius * Radius) - (u * u))));
    }

    /// <summary>m³: the segment's area summed over all levels up to one.</summary>
    private double Under(double level)
    {
        double u = Radius - Math.Clamp(level, 0, 2 * Radius);
        double root = Math.Sqrt(Math.Max(0, (Radius * Radius) - (u * u)));
        double inside = -((Radius * Radius * ((u * Math.Acos(u / Radius)) - root)) + (root * root * root / 3));
        return inside + (Math.PI * Radius * Radius * Math.Max(0, level - (2 * Radius)));
    }
}
