namespace Sightglass.Plant.Calculators.Fuel;

/// <summary>The surface of what is in a tank, seen from the tank: a plane, as two glasses and the lie of the track give it.</summary>
/// <param name="Middle">Over the middle of the floor, m at right angles to it; below 0 where the plane passes under a dry middle.</param>
/// <param name="Along">Fall of the plane for each m along the tank, towards the second glass.</param>
/// <param name="Across">Fall of the plane for each m across the tank, towards the right.</param>
public readonly record struct GlassPlane(double Middle, double Along, double Across)
{
    /// <summary>The plane of two glasses; null where both show nothing. A glass that shows nothing stands dry: then the other and the grade say it.</summary>
    /// <param name="first">m over the floor, 0 where nothing is seen.</param>
    /// <param name="second">The same, of the other glass.</param>
    /// <param name="apart">m between the two.</param>
    /// <param name="grade">Rise of the track over run from the first towards the second.</param>
    /// <param name="cant">Rise over run from the left to the right.</param>
    /// <param name="aside">m by which the glasses stand right of the tank's middle.</param>
    public static GlassPlane? Of(double first, double second, double apart, double grade, double cant, double aside)
    {
        double half = grade * apart / 2;
        double? middle = (first > 0, second > 0) switch
        {
            (true, true) => (first + second) / 2,
            (true, false) => first - half,
            (false, true) => second + half,
            _ => null,
        };
        return middle is { } m ? new(m + (cant * aside), grade, cant) : null;
    }
}
