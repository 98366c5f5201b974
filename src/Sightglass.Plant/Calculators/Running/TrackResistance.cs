namespace Sightglass.Plant.Calculators.Running;

/// <summary>What grades and curves add. Rules of the trade in pounds for each short ton: 20 for a per cent of grade, 0.8 for a degree of curve (read in a US Army manual of rail transport).</summary>
public static class TrackResistance
{
    /// <summary>lb/short ton for each per cent of grade, by the rule.</summary>
    public const double PoundsPerTonAndPercent = 20;

    /// <summary>lb/short ton for each degree of curve: as a grade of 0.04 %.</summary>
    public const double PoundsPerTonAndDegree = 0.8;

    /// <summary>Arc of a degree of curve in feet: 100 ft turn by one degree.</summary>
    private const double ArcFeet = 100;

    /// <summary>lb/short ton of a grade and a curve, by the rules.</summary>
    /// <param name="gradePercent">Up above 0.</param>
    /// <param name="curveDegrees">0 or more.</param>
    public static double PoundsPerTon(double gradePercent, double curveDegrees) => (PoundsPerTonAndPercent * gradePercent) + (PoundsPerTonAndDegree * curveDegrees);

    /// <summary>Force along the rail for each unit of weight, exactly: sin(atan grade).</summary>
    /// <param name="grade">Rise over run.</param>
    public static double GradeShare(double grade) => grade / Math.Sqrt(1 + (grade * grade));

    /// <summary>Grade, rise over run, that resists as much as a degree of curve by the rule.</summary>
    public static double GradeOfCurve(double curveDegrees) => PoundsPerTonAndDegree / PoundsPerTonAndPercent / 100 * curveDegrees;

    /// <summary>Radius in m of a curve told in degrees by 100 ft of arc.</summary>
    public static double RadiusByArc(double degrees) => ArcFeet * 0.3048 / (degrees * Math.PI / 180);

    /// <summary>Radius in m of a curve told in degrees by 100 ft of chord: 50 ft/sin(D/2).</summary>
    public static double RadiusByChord(double degrees) => ArcFeet / 2 * 0.3048 / Math.Sin(degrees * Math.PI / 360);
}
