namespace Sightglass.Plant.Calculators.Electric;

/// <summary>How long a lead-acid battery lasts at a steady current. Source: Peukert 1897 (forms read in stored pages). It knows no rest and no cold: the two wells do the first.</summary>
public static class Peukert
{
    /// <summary>s to empty, from the rating of a number of hours: H·(C/(I·H))^k.</summary>
    /// <param name="coulombs">C at its rate.</param>
    /// <param name="ratedSeconds">H of the rating, usually 20 h.</param>
    /// <param name="amperes">I, above 0.</param>
    /// <param name="exponent">k, 1.1…1.3.</param>
    public static double Seconds(double coulombs, double ratedSeconds, double amperes, double exponent) =>
        ratedSeconds * Real.Pow(coulombs / (amperes * ratedSeconds), exponent);

    /// <summary>s to empty from the capacity at one ampere, a different number: C₁/I^k, in hours inside.</summary>
    /// <param name="coulombsAtOneAmpere">At 1 A.</param>
    public static double SecondsByOneAmpere(double coulombsAtOneAmpere, double amperes, double exponent) => coulombsAtOneAmpere / Real.Pow(amperes, exponent);
}
