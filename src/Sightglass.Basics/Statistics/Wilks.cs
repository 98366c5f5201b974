namespace Sightglass.Basics.Statistics;

/// <summary>
/// How many runs make an extreme of them a tolerance limit, whatever the distribution (S. Wilks, Annals of Mathematical Statistics 12, 1941, and 13, 1942).
/// </summary>
public static class Wilks
{
    /// <summary>The least number of runs for which the m-th largest is above a share <paramref name="coverage"/> of all cases with this confidence.</summary>
    public static int LeastOneSided(double coverage, double confidence, int order = 1)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(order);
        return Least(coverage, confidence, order, n => OneSided(n, coverage, order));
    }

    /// <summary>The least number of runs between whose smallest and largest a share of all cases lies with this confidence.</summary>
    public static int LeastTwoSided(double coverage, double confidence) => Least(coverage, confidence, 2, n => TwoSided(n, coverage));

    /// <summary>The confidence of the m-th largest of so many runs.</summary>
    public static double OneSided(int runs, double coverage, int order = 1) => Binomial.AtLeast(order, runs, 1 - coverage);

    /// <summary>The confidence of smallest and largest of so many runs: 1 − γⁿ − n(1−γ)γⁿ⁻¹.</summary>
    public static double TwoSided(int runs, double coverage) => Binomial.AtLeast(2, runs, 1 - coverage);

    private static int Least(double coverage, double confidence, int from, Func<int, double> confidenceOf)
    {
        if (!(coverage is > 0 and < 1) || !(confidence is > 0 and < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(coverage), (coverage, confidence), "Coverage and confidence must be between 0 and 1.");
        }

        (int low, int high) = (from - 1, from);
        while (confidenceOf(high) < confidence)
        {
            (low, high) = (high, checked(2 * high));
        }

        while (high - low > 1)
        {
            int middle = low + ((high - low) / 2);
            (low, high) = confidenceOf(middle) < confidence ? (middle, high) : (low, middle);
        }

        return high;
    }
}
