namespace Sightglass.Plant.Calculators.Light;

/// <summary>Light from a small lamp, cd, in clear air. Source: photometry (any text). Distances in m, results in lx.</summary>
public static class Illuminance
{
    /// <summary>Time of Blondel and Rey's rule, s (from memory).</summary>
    private const double FlashSeconds = 0.2;

    /// <summary>On a surface that faces the lamp: I/d².</summary>
    public static double Facing(double candela, double distance) => candela / (distance * distance);

    /// <summary>On the ground, from a lamp at a height: I·h/(d² + h²)^1.5.</summary>
    /// <param name="distance">d along the ground.</param>
    public static double OnGround(double candela, double height, double distance) => candela * height / Cube(height, distance);

    /// <summary>On something upright on the ground: I·d/(d² + h²)^1.5.</summary>
    public static double OnUpright(double candela, double height, double distance) => candela * distance / Cube(height, distance);

    /// <summary>Minutes of arc under which a size is seen: 2·atan(s/2d).</summary>
    public static double ArcMinutes(double size, double distance) => 2 * Math.Atan(size / (2 * distance)) * 180 * 60 / Math.PI;

    /// <summary>cd of a steady light that is seen as well as a flash: I·Δt/(0.2 + Δt) (Blondel and Rey).</summary>
    public static double EffectiveCandela(double candela, double seconds) => candela * seconds / (FlashSeconds + seconds);

    private static double Cube(double height, double distance)
    {
        double square = (height * height) + (distance * distance);
        return square * Math.Sqrt(square);
    }
}
