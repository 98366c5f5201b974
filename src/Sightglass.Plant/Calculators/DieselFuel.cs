using Sightglass.Basics.Numbers;

namespace Sightglass.Plant.Calculators;

/// <summary>
/// Properties of diesel fuel, for worked examples and for the figures of a book. A real fuel spreads about ±1 % in heating value; density at 15 °C is 820 to
/// 845 kg/m³ (EN 590, from memory).
/// </summary>
public static class DieselFuel
{
    /// <summary>Volumetric expansion for the linear rule, 1/K (common practice, no source).</summary>
    public const double Expansion = 8.3e-4;

    /// <summary>Lower heating value, J/m³: 128 488 Btu per US gallon (attributed to an alternative-fuels table of the US DOE, from memory).</summary>
    public const double HeatingValuePerVolume = 128_488 * 1055.05585262 / 3.785411784e-3;

    /// <summary>Volume at a temperature by the linear rule, m³.</summary>
    /// <param name="volumeAt15">At 15 °C, m³.</param>
    /// <param name="kelvinAbove15">K above 15 °C; −40…60.</param>
    public static double Volume(double volumeAt15, double kelvinAbove15) => volumeAt15 * (1 + (Expansion * kelvinAbove15));

    /// <summary>Density at a temperature by the linear rule, kg/m³.</summary>
    public static double Density(double densityAt15, double kelvinAbove15) => densityAt15 / (1 + (Expansion * kelvinAbove15));

    /// <summary>Coefficient α of table 54B, 1/K (ASTM D1250, constants from memory).</summary>
    /// <param name="densityAt15">kg/m³; 839…1075 is the table's range for fuel oils, used here from 820 on.</param>
    public static double TableExpansion(double densityAt15) => (186.9696 / (densityAt15 * densityAt15)) + (0.48618 / densityAt15);

    /// <summary>Volume at 15 °C over the volume at a temperature: exp[−αΔT(1 + 0.8αΔT)], table 54B (ASTM D1250, from memory).</summary>
    public static double VolumeCorrection(double densityAt15, double kelvinAbove15)
    {
        double x = TableExpansion(densityAt15) * kelvinAbove15;
        return Portable.Exp(new Scalar(-x * (1 + (0.8 * x)))).V;
    }

    /// <summary>Lower heating value, J/kg, of a fuel of a density, kg/m³.</summary>
    public static double HeatingValue(double density) => HeatingValuePerVolume / density;
}
