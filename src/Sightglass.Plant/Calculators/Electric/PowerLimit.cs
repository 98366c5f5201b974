namespace Sightglass.Plant.Calculators.Electric;

/// <summary>A load of constant power behind an impedance, one phase. Source: P-V curve (any text of power flow).</summary>
public static class PowerLimit
{
    /// <summary>
    /// The two V at which a load gets its power, roots of V⁴ + V²(2(RP + XQ) − E²) + (R² + X²)(P² + Q²) = 0: it runs at the upper. Null beyond the nose, where there is none.
    /// </summary>
    /// <param name="volts">E, of the source.</param>
    /// <param name="ohms">R.</param>
    /// <param name="reactance">X, Ω.</param>
    /// <param name="watts">P.</param>
    /// <param name="vars">Q, above 0 lagging.</param>
    public static (double Upper, double Lower)? Volts(double volts, double ohms, double reactance, double watts, double vars)
    {
        double b = (2 * ((ohms * watts) + (reactance * vars))) - (volts * volts);
        double c = ((ohms * ohms) + (reactance * reactance)) * ((watts * watts) + (vars * vars));
        double root = (b * b) - (4 * c);
        if (b > 0 || root < 0)
        {
            return null;
        }

        double upper = (-b + Math.Sqrt(root)) / 2;
        return (Math.Sqrt(upper), Math.Sqrt(c / upper));
    }

    /// <summary>The most VA that can be drawn: E²/(2(|Z| + R·cosφ + X·sinφ)).</summary>
    /// <param name="powerFactor">cosφ, lagging, 0…1.</param>
    public static double MostVoltAmperes(double volts, double ohms, double reactance, double powerFactor) =>
        volts * volts / (2 * (Math.Sqrt((ohms * ohms) + (reactance * reactance)) + (ohms * powerFactor) + (reactance * PowerFactor.Sine(powerFactor))));

    /// <summary>The most W out of a source of direct current: E²/4r, at half its voltage.</summary>
    public static double MostWatts(double volts, double innerOhms) => volts * volts / (4 * innerOhms);
}
