namespace Sightglass.Plant.Calculators.Electric;

/// <summary>
/// A copper cable as the US electrical code's tables have it: three single conductors in conduit, 75 °C, 60 Hz (National Electrical Code, chapter 9 table 9, read in two copies), and its
/// ampacity with up to three conductors in raceway at 30 °C (table 310.16, read). For orders of magnitude; a design follows the code itself.
/// </summary>
/// <param name="Name">Gauge or thousands of circular mils.</param>
/// <param name="ReactancePlastic">Ω to neutral per 1,000 ft in plastic or aluminium conduit.</param>
/// <param name="ReactanceSteel">The same in steel.</param>
/// <param name="OhmsPlastic">Resistance, the same unit, in plastic conduit.</param>
/// <param name="OhmsAluminium">In aluminium conduit.</param>
/// <param name="OhmsSteel">In steel conduit.</param>
/// <param name="Amperes75">A with insulation for 75 °C.</param>
/// <param name="Amperes90">A with insulation for 90 °C.</param>
public sealed record CableSize(
    string Name, double ReactancePlastic, double ReactanceSteel, double OhmsPlastic, double OhmsAluminium, double OhmsSteel, double Amperes75, double Amperes90)
{
    private const double FeetPerKilometre = 1000 / 0.3048;

    /// <summary>Temperature at which copper would have no resistance if it fell on in a straight line, °C below 0 (234.5, IEC 60228; from memory).</summary>
    private const double CopperZero = 234.5;

    private const double TableCelsius = 75;

    public static IReadOnlyList<CableSize> All { get; } =
    [
        new("4/0", 0.041, 0.051, 0.062, 0.067, 0.063, 230, 260),
        new("250", 0.041, 0.052, 0.052, 0.057, 0.054, 255, 290),
        new("350", 0.040, 0.050, 0.038, 0.043, 0.039, 310, 350),
        new("500", 0.039, 0.048, 0.027, 0.032, 0.029, 380, 430),
    ];

    /// <summary>Effective impedance, in the unit of both: R·cosφ + X·sinφ, what makes the drop.</summary>
    public static double Effective(double ohms, double reactance, double powerFactor) => FeederDrop.VoltsAlong(1, ohms, reactance, powerFactor);

    /// <summary>Ω per km of Ω per 1,000 ft.</summary>
    public static double PerKilometre(double perThousandFeet) => perThousandFeet * FeetPerKilometre / 1000;

    /// <summary>Factor on a resistance of the table at another temperature of the wire: (234.5 + t)/(234.5 + 75).</summary>
    public static double HeatFactor(double celsius) => (CopperZero + celsius) / (CopperZero + TableCelsius);

    /// <summary>Factor on an ampacity of the table, which is for 30 °C: √((t_c − t_a)/(t_c − 30)), 0 from t_c up. Source: National Electrical Code 310 (from memory).</summary>
    /// <param name="wireCelsius">t_c that the insulation stands.</param>
    /// <param name="airCelsius">t_a around.</param>
    public static double AmbientFactor(double wireCelsius, double airCelsius) => Math.Sqrt(Math.Max(0, (wireCelsius - airCelsius) / (wireCelsius - 30)));
}
