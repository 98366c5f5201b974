using Sightglass.Basics.Numbers;

namespace Sightglass.Plant.Calculators;

/// <summary>Water in air.</summary>
public static class MoistAir
{
    /// <summary>Molar mass of water over that of dry air, 18.015/28.965.</summary>
    public const double MassRatio = 0.62196;

    private const double Celsius = 273.15;

    /// <summary>
    /// Pressure of saturated water vapour over water, Pa: 610.94·exp(17.625·t/(t + 243.04)), t in °C (Magnus form; Alduchov and Eskridge 1996, from memory). Within 0.4 % from
    /// −40 to 50 °C; below 0 °C over water that has not frozen.
    /// </summary>
    /// <param name="temperature">K, held within 220 and 350.</param>
    public static double SaturationPressure(double temperature)
    {
        double t = Math.Clamp(temperature, 220, 350) - Celsius;
        return 610.94 * Portable.Exp(new Scalar(17.625 * t / (t + 243.04))).V;
    }

    /// <summary>kg of vapour a kg of dry air: 0.622·e/(p − e).</summary>
    /// <param name="vapour">e, Pa, below the pressure.</param>
    /// <param name="pressure">p, Pa.</param>
    public static double Ratio(double vapour, double pressure) => MassRatio * vapour / (pressure - vapour);
}
