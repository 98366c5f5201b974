namespace Sightglass.Plant.Calculators.Heat;

/// <summary>
/// A resistor grid under a constant current, with a resistance that rises with its temperature: R = R₀(1 + α·θ), θ K above the air. Derived: the lumped mass with hA − α·I²·R₀ in place of
/// hA.
/// </summary>
/// <param name="Ohms">R₀, cold.</param>
/// <param name="PerKelvin">α.</param>
/// <param name="Capacity">m·c, J/K.</param>
/// <param name="Conductance">hA to the air that passes, W/K.</param>
public sealed record GridResistor(double Ohms, double PerKelvin, double Capacity, double Conductance)
{
    /// <summary>K by which it warms in a time when no air passes and its resistance stays.</summary>
    public double AdiabaticRise(double amperes, double seconds) => Heat(amperes) * seconds / Capacity;

    /// <summary>K that it comes to; endless where it warms faster than it can lose.</summary>
    public double FinalRise(double amperes) => Loss(amperes) > 0 ? Heat(amperes) / Loss(amperes) : double.PositiveInfinity;

    /// <summary>τ, s, under a current; without one that of cooling. Below 0 where it runs away.</summary>
    public double TimeConstant(double amperes) => LumpedMass.TimeConstant(Capacity, Loss(amperes));

    /// <summary>K above the air after a time, from K before.</summary>
    public double RiseAfter(double amperes, double seconds, double before = 0)
    {
        double loss = Loss(amperes);
        return loss == 0
            ? before + AdiabaticRise(amperes, seconds)
            : LumpedMass.TemperatureAfter(seconds, before, Heat(amperes) / loss, LumpedMass.TimeConstant(Capacity, loss));
    }

    private double Heat(double amperes) => amperes * amperes * Ohms;

    private double Loss(double amperes) => Conductance - (PerKelvin * Heat(amperes));
}
