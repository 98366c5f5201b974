namespace Sightglass.Basics.Statistics;

/// <summary>The gamma function through the error of Stirling's formula.</summary>
internal static class GammaFunction
{
    private const double HalfLogTwoPi = 0.91893853320467274178;
    private const double SeriesFrom = 16;

    /// <summary>Sizes of the series' terms, the last first.</summary>
    private static ReadOnlySpan<double> Terms => [691.0 / 360360, 1.0 / 1188, 1.0 / 1680, 1.0 / 1260, 1.0 / 360, 1.0 / 12];

    /// <summary>
    /// δ(x) in Γ(x) = √(2π)·x^(x−½)·e^(−x)·e^δ, for x &gt; 0: the asymptotic series (Abramowitz and Stegun 6.1.41, from memory) from 16 on
    /// (error below 1e-17), below by δ(x) = δ(x+1) + (x+½)·log(1+1/x) − 1.
    /// </summary>
    public static double StirlingError(double x)
    {
        double sum = 0;
        for (; x < SeriesFrom; x++)
        {
            sum += ((x + 0.5) * Elementary.LogOnePlus(1 / x)) - 1;
        }

        double z = 1 / (x * x);
        double series = 0;
        foreach (double term in Terms)
        {
            series = term - (z * series);
        }

        return sum + (series / x);
    }

    /// <summary>log Γ(x) for x &gt; 0.</summary>
    public static double LogGamma(double x) => ((x - 0.5) * Elementary.Log(x)) - x + HalfLogTwoPi + StirlingError(x);
}
