namespace Sightglass.Basics.Statistics;

/// <summary>
/// Bounds of a chance that hold at all times at once: a trial may be looked at after every case, stopped early or made longer, and the
/// chance that the bound is ever wrong is still at most 1 − confidence. The price: wider than <see cref="BinomialBounds"/>.
/// </summary>
/// <remarks>
/// To say that the chance p is below p₀, the likelihood of what was seen, averaged over all θ &lt; p₀ with a beta(½, ½) weight, is divided by its likelihood under p₀.
/// For every p ≥ p₀ this ratio is a non-negative supermartingale that starts at 1: in one case its mean factor is p·θ/p₀ + (1−p)(1−θ)/(1−p₀) ≤ 1.
/// So the chance that it ever reaches 1/(1−confidence) is at most 1 − confidence (J. Ville 1939). The upper bound is the least p₀ that can be ruled out.
/// Mixtures of this kind: H. Robbins, Annals of Mathematical Statistics 41, 1970 (from memory); the one-sided weight is written out here.
/// </remarks>
public static class AnytimeBound
{
    private const double Weight = 0.5;

    /// <summary>The upper bound of the chance after so many failures in so many tries; 1 where all failed.</summary>
    public static double Upper(int failures, int tries, double confidence)
    {
        RequireCounts(failures, tries, confidence);
        if (failures == tries)
        {
            return 1;
        }

        double wanted = -Elementary.Log(1 - confidence);
        (double low, double high) = ((double)failures / tries, 1);
        while (high - low > 1e-12 * high)
        {
            double middle = 0.5 * (low + high);
            (low, high) = LogEvidenceBelow(failures, tries, middle) < wanted ? (middle, high) : (low, middle);
        }

        return high;
    }

    /// <summary>The lower bound of the chance; 0 where none failed.</summary>
    public static double Lower(int failures, int tries, double confidence) => 1 - Upper(tries - failures, tries, confidence);

    /// <summary>Both bounds, each with half the risk.</summary>
    public static Interval Both(int failures, int tries, double confidence)
    {
        double half = 1 - ((1 - confidence) / 2);
        return new(Lower(failures, tries, half), Upper(failures, tries, half));
    }

    /// <summary>
    /// The logarithm of the evidence that the chance is below <paramref name="chance"/>, against all that is not; from −log(1−confidence) on it counts.
    /// </summary>
    /// <param name="chance">Between 0 and 1.</param>
    public static double LogEvidenceBelow(int failures, int tries, double chance)
    {
        (double a, double b) = (failures + Weight, tries - failures + Weight);
        double averaged = BetaFunction.LogRegularized(a, b, chance) + BetaFunction.Log(a, b);
        double weight = BetaFunction.LogRegularized(Weight, Weight, chance) + BetaFunction.Log(Weight, Weight);
        return averaged - weight - (failures * Elementary.Log(chance)) - ((tries - failures) * Elementary.LogOnePlus(-chance));
    }

    private static void RequireCounts(int failures, int tries, double confidence)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(failures);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(failures, tries);
        if (!(confidence is > 0 and < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "Must be between 0 and 1.");
        }
    }
}
