namespace Sightglass.Plant.Calculators.Electric;

/// <summary>
/// How long the two wells of a battery last at a steady current; the closed form of what the network's <c>TwoWells</c> carries. Source: Manwell and McGowan 1993, Lead acid battery storage model (from
/// memory).
/// </summary>
public static class KineticBattery
{
    private const int Halvings = 60;

    /// <summary>C at hand after a time at a steady current, from rest; below 0 when it is already empty.</summary>
    /// <param name="coulombs">q₀ at the start, in both wells.</param>
    /// <param name="share">c: of it at hand, between 0 and 1.</param>
    /// <param name="rate">k′, 1/s.</param>
    public static double AtHand(double coulombs, double share, double rate, double amperes, double seconds)
    {
        double e = Real.Exp(-rate * seconds);
        return (coulombs * share) - (amperes * (1 - share) * (1 - e) / rate) - (amperes * share * seconds);
    }

    /// <summary>s until nothing is at hand. Endless for no current.</summary>
    public static double Seconds(double coulombs, double share, double rate, double amperes)
    {
        if (!(amperes > 0))
        {
            return double.PositiveInfinity;
        }

        (double low, double high) = (0, coulombs / amperes);
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = AtHand(coulombs, share, rate, amperes, middle) > 0 ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
