namespace Sightglass.Plant.Calculators.Electric;

/// <summary>Arithmetic of power factors, all lagging. Source: any text.</summary>
public static class PowerFactor
{
    private const double RootOfThree = 1.7320508075688772;

    /// <summary>sinφ for cosφ.</summary>
    public static double Sine(double powerFactor) => Math.Sqrt(1 - (powerFactor * powerFactor));

    /// <summary>var that go with W: P·tanφ.</summary>
    public static double Vars(double watts, double powerFactor) => watts * Sine(powerFactor) / powerFactor;

    /// <summary>var that a capacitor gives to raise a power factor.</summary>
    public static double CapacitorVars(double watts, double before, double after) => Vars(watts, before) - Vars(watts, after);

    /// <summary>VA of W.</summary>
    public static double VoltAmperes(double watts, double powerFactor) => watts / powerFactor;

    /// <summary>A in each wire of three phases.</summary>
    /// <param name="voltsBetween">Between two phases.</param>
    public static double Amperes(double voltAmperes, double voltsBetween) => voltAmperes / (RootOfThree * voltsBetween);
}
