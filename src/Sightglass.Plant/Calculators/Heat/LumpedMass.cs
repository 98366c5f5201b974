namespace Sightglass.Plant.Calculators.Heat;

/// <summary>
/// A body that has one temperature and loses heat in proportion to its excess over what is around: the closed form of a store with a <c>LinearPath</c>. Right while the Biot number is
/// below 0.1. Source: Incropera, Fundamentals of Heat and Mass Transfer, ch. 5 (from memory). Temperatures in one scale, K or °C.
/// </summary>
public static class LumpedMass
{
    /// <summary>τ, s.</summary>
    /// <param name="capacity">J/K.</param>
    /// <param name="conductance">hA, W/K.</param>
    public static double TimeConstant(double capacity, double conductance) => capacity / conductance;

    /// <summary>τ, s, of a sphere: ρ·D·c/(6h), a thermocouple's bead.</summary>
    /// <param name="density">kg/m³.</param>
    /// <param name="diameter">m.</param>
    /// <param name="specificHeat">J/(kg·K).</param>
    /// <param name="film">h, W/(m²·K).</param>
    public static double BeadTimeConstant(double density, double diameter, double specificHeat, double film) => density * diameter * specificHeat / (6 * film);

    /// <summary>The temperature that it comes to: T_a + P/hA.</summary>
    /// <param name="watts">Put in.</param>
    public static double FinalTemperature(double around, double watts, double conductance) => around + (watts / conductance);

    /// <summary>Temperature after a time.</summary>
    /// <param name="final">That it comes to.</param>
    public static double TemperatureAfter(double seconds, double start, double final, double timeConstant) => final + ((start - final) * Real.Exp(-seconds / timeConstant));

    /// <summary>s to a temperature between start and end; endless to one beyond the end, 0 to one behind the start.</summary>
    public static double SecondsTo(double temperature, double start, double final, double timeConstant)
    {
        double share = (start - final) / (temperature - final);
        return share > 0 && double.IsFinite(share) ? timeConstant * Math.Max(0, Real.Log(share)) : double.PositiveInfinity;
    }
}
