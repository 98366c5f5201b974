namespace Sightglass.Plant.Calculators;

/// <summary>What an engine burns. Source: Heywood, Internal Combustion Engine Fundamentals, ch. 2 (from memory).</summary>
public static class FuelRate
{
    /// <summary>kg/s.</summary>
    /// <param name="power">Brake power, W.</param>
    /// <param name="specificConsumption">kg/J; 1 kg/kWh is 1/3.6e6 kg/J.</param>
    public static double Mass(double power, double specificConsumption) => power * specificConsumption;

    /// <summary>m³/s of a fuel of a density, kg/m³.</summary>
    public static double Volume(double power, double specificConsumption, double density) => Mass(power, specificConsumption) / density;

    /// <summary>Share of the fuel's heat that becomes work.</summary>
    /// <param name="specificConsumption">kg/J.</param>
    /// <param name="heatingValue">Lower heating value, J/kg.</param>
    public static double Efficiency(double specificConsumption, double heatingValue) => 1 / (specificConsumption * heatingValue);
}
