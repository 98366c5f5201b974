namespace Sightglass.Plant.Calculators.Heat;

/// <summary>
/// Effectiveness by number of transfer units. Source: Incropera ch. 11, Kays and London (from memory); values at N 5, c 0.7 read in the documentation of a library of heat transfer. Streams are told by
/// their heat capacity rates, W/K.
/// </summary>
public static class HeatExchanger
{
    private const int MostTerms = 500;

    /// <summary>Ratio below which one stream hardly changes its temperature: what is left out is smaller still.</summary>
    private const double Steady = 1e-9;

    /// <summary>ε: share of the heat that could pass at most which does.</summary>
    /// <param name="units">N = UA/C_min, 0 or more.</param>
    /// <param name="ratio">c = C_min/C_max, 0…1; 0 for a stream that boils or condenses.</param>
    public static double Effectiveness(ExchangerKind kind, double units, double ratio)
    {
        if (!(units > 0))
        {
            return 0;
        }

        if (ratio < Steady)
        {
            return 1 - Real.Exp(-units);
        }

        return kind switch
        {
            ExchangerKind.Parallel => (1 - Real.Exp(-units * (1 + ratio))) / (1 + ratio),
            ExchangerKind.Counter => Counter(units, ratio),
            ExchangerKind.OneShell => OneShell(units, ratio),
            ExchangerKind.Cross => Cross(units, ratio),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "There is no such exchanger."),
        };
    }

    /// <summary>Crossflow by the usual short form 1 − exp{N^0.22/c·[exp(−c·N^0.78) − 1]}: within a hundredth.</summary>
    public static double CrossApproximately(double units, double ratio) =>
        1 - Real.Exp(Real.Pow(units, 0.22) / ratio * (Real.Exp(-ratio * Real.Pow(units, 0.78)) - 1));

    /// <summary>W from the hot to the cold stream, and where each comes out.</summary>
    /// <param name="conductance">UA, W/K.</param>
    /// <param name="hotRate">W/K, above 0.</param>
    /// <param name="coldRate">W/K, above 0.</param>
    public static (double Watts, double HotOut, double ColdOut) Duty(ExchangerKind kind, double conductance, double hotRate, double coldRate, double hotIn, double coldIn)
    {
        double least = Math.Min(hotRate, coldRate);
        double watts = Effectiveness(kind, conductance / least, least / Math.Max(hotRate, coldRate)) * least * (hotIn - coldIn);
        return (watts, hotIn - (watts / hotRate), coldIn + (watts / coldRate));
    }

    private static double Counter(double units, double ratio)
    {
        double x = units * (1 - ratio);

        // Near c = 1 numerator and denominator vanish together: both are divided by 1 − c, with (1 − e^−x)/(1 − c) = N·(1 − x/2 + x²/6).
        if (x < 1e-5)
        {
            double whole = units * (1 - (x / 2) + (x * x / 6));
            return whole / (1 + (ratio * whole));
        }

        double e = Real.Exp(-x);
        return (1 - e) / (1 - (ratio * e));
    }

    private static double OneShell(double units, double ratio)
    {
        double s = Math.Sqrt(1 + (ratio * ratio));
        double e = Real.Exp(-units * s);
        return 2 / (1 + ratio + (s * (1 + e) / (1 - e)));
    }

    /// <summary>Exactly: Σ P(k + 1, N)·P(k + 1, c·N)/(c·N), P the regularised lower gamma function, 1 less the first k + 1 terms of a Poisson distribution.</summary>
    private static double Cross(double units, double ratio)
    {
        (double a, double b) = (units, ratio * units);
        (double termA, double termB) = (Real.Exp(-a), Real.Exp(-b));
        (double leftA, double leftB) = (OneLessExp(a), OneLessExp(b));
        double sum = 0;
        for (int k = 0; k < MostTerms && leftA * leftB > 1e-18 * sum; k++)
        {
            sum += leftA * leftB;
            termA *= a / (k + 1);
            termB *= b / (k + 1);
            leftA = Math.Max(0, leftA - termA);
            leftB = Math.Max(0, leftB - termB);
        }

        return sum / b;
    }

    /// <summary>1 − e^−x without losing the digits of a small x: by its series, whose next term is below 1e-17 of it.</summary>
    private static double OneLessExp(double x) => x < 1e-4 ? x * (1 - (x / 2 * (1 - (x / 3 * (1 - (x / 4)))))) : 1 - Real.Exp(-x);
}
