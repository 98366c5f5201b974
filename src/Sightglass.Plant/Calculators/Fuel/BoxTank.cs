namespace Sightglass.Plant.Calculators.Fuel;

/// <summary>A tank with a flat rectangular floor and upright walls under any plane, exact. Source: geometry; the integral of what is above 0 of a plane over a rectangle, derived.</summary>
/// <param name="Length">m along.</param>
/// <param name="Width">m across.</param>
/// <param name="Depth">m from floor to roof.</param>
public sealed record BoxTank(double Length, double Width, double Depth)
{
    /// <summary>Share of the greater rise below which the lesser is nothing: its part of the volume goes with its square.</summary>
    private const double Nothing = 1e-6;

    public TankContents Under(GlassPlane plane)
    {
        (double a, double b) = (Math.Abs(plane.Along) * Length, Math.Abs(plane.Across) * Width);
        (double rise, double lesser) = (Math.Max(a, b), Math.Min(a, b));
        double mean = Over(plane.Middle, rise, lesser, 1) - Over(plane.Middle - Depth, rise, lesser, 1);
        return new(mean * Length * Width, 1 - Over(plane.Middle, rise, lesser, 0));
    }

    /// <summary>Mean over a unit square of the positive part of a plane, to the power of 1 or of 0.</summary>
    private static double Over(double middle, double rise, double lesser, int power)
    {
        double high = middle + ((rise + lesser) / 2), low = middle - ((rise + lesser) / 2);
        return low >= 0 ? (power == 1 ? middle : 1)
            : high <= 0 ? 0
            : lesser <= Nothing * rise ? (Raised(middle + (rise / 2), power + 1) - Raised(middle - (rise / 2), power + 1)) / rise
            : (Raised(high, power + 2) - Raised(high - lesser, power + 2) - Raised(low + lesser, power + 2) + Raised(low, power + 2)) / (rise * lesser);
    }

    /// <summary>zⁿ/n! of what is above 0.</summary>
    private static double Raised(double z, int n)
    {
        double above = Math.Max(0, z);
        return n switch { 1 => above, 2 => above * above / 2, _ => above * above * above / 6 };
    }
}
