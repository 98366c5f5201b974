namespace Sightglass.Basics.Statistics;

/// <summary>The normal distribution with mean 0 and deviation 1, relative error about 1e-14 also far out.</summary>
public static class Normal
{
    private const double OneOverRootTwoPi = 0.39894228040143267794;
    private const double SeriesUpTo = 2.5;
    private const int FractionTerms = 200;

    public static double Density(double z) => OneOverRootTwoPi * Elementary.Exp(-0.5 * z * z);

    /// <summary>P(Z ≤ z).</summary>
    public static double Cumulative(double z) => Tail(-z);

    /// <summary>
    /// P(Z &gt; z): near 0 by the series ½ − φ(z)·(z + z³/3 + z⁵/15 + …), farther by the continued fraction φ(z)/(z + 1/(z + 2/(z + …)))
    /// (Abramowitz and Stegun 26.2.11 and 26.2.14, from memory).
    /// </summary>
    public static double Tail(double z) => z < -SeriesUpTo ? 1 - Tail(-z) : z <= SeriesUpTo ? 0.5 - Middle(z) : Density(z) / Fraction(z);

    /// <summary>The z with P(Z ≤ z) = <paramref name="chance"/>.</summary>
    public static double Quantile(double chance)
    {
        if (!(chance is > 0 and < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(chance), chance, "Must be between 0 and 1.");
        }

        return chance < 0.5 ? -UpperQuantile(chance) : UpperQuantile(1 - chance);
    }

    /// <summary>The z ≥ 0 with P(Z &gt; z) = <paramref name="tail"/> ≤ ½: Newton's method on the logarithm, which is concave, so that it comes in from above.</summary>
    private static double UpperQuantile(double tail)
    {
        double z = 0;
        double target = Elementary.Log(tail);
        for (int i = 0; i < 100; i++)
        {
            bool far = z > SeriesUpTo;
            double slope = far ? Fraction(z) : Density(z) / Tail(z);
            double log = far ? LogDensity(z) - Elementary.Log(slope) : Elementary.Log(Tail(z));
            double step = (log - target) / slope;
            z += step;
            if (Math.Abs(step) <= 1e-15 * (1 + z))
            {
                break;
            }
        }

        return Math.Max(z, 0);
    }

    private static double LogDensity(double z) => (-0.5 * z * z) + Elementary.Log(OneOverRootTwoPi);

    private static double Middle(double z)
    {
        double term = z;
        double sum = z;
        for (int k = 3; Math.Abs(term) > 1e-18 * Math.Abs(sum); k += 2)
        {
            term *= z * z / k;
            sum += term;
        }

        return Density(z) * sum;
    }

    private static double Fraction(double z)
    {
        double f = z;
        for (int k = FractionTerms; k >= 1; k--)
        {
            f = z + (k / f);
        }

        return f;
    }
}
