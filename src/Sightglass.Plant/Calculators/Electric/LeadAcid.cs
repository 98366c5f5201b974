namespace Sightglass.Plant.Calculators.Electric;

/// <summary>A lead-acid battery at its terminals.</summary>
public static class LeadAcid
{
    /// <summary>V of a cell at rest: 0.84 + specific gravity (rule of the trade, from memory). Right only hours after charging: fresh charge on the plates shows up to 0.1 V a cell too much.</summary>
    /// <param name="specificGravity">Of the acid: 1.12 empty, 1.265 full.</param>
    public static double RestVolts(double specificGravity) => 0.84 + specificGravity;

    /// <summary>V under a current: E − I·r.</summary>
    /// <param name="amperes">Out; below 0 for charging.</param>
    public static double Volts(double restVolts, double innerOhms, double amperes) => restVolts - (innerOhms * amperes);

    /// <summary>A into a load of constant resistance: E/(r + R).</summary>
    public static double Amperes(double restVolts, double innerOhms, double ohms) => restVolts / (innerOhms + ohms);
}
