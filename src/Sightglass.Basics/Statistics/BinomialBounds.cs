namespace Sightglass.Basics.Statistics;

/// <summary>
/// What a count of failures in a number of tries fixed beforehand says about the chance of failure. For trials that may stop early,
/// or are looked at while they run, take <see cref="AnytimeBound"/>.
/// </summary>
public static class BinomialBounds
{
    /// <summary>The exact two-sided interval (C. Clopper and E. Pearson, Biometrika 26, 1934): never covers less often than it says.</summary>
    public static Interval ClopperPearson(int count, int tries, double confidence)
    {
        double half = 1 - ((1 - Checked(count, tries, confidence)) / 2);
        return new(Lower(count, tries, half), Upper(count, tries, half));
    }

    /// <summary>The exact one-sided upper bound of the chance.</summary>
    public static double Upper(int count, int tries, double confidence)
    {
        Checked(count, tries, confidence);
        return count == tries ? 1 : count == 0 ? ZeroFailureUpper(tries, confidence) : BetaFunction.Quantile(count + 1, tries - count, confidence);
    }

    /// <summary>The exact one-sided lower bound of the chance.</summary>
    public static double Lower(int count, int tries, double confidence)
    {
        Checked(count, tries, confidence);
        return count == 0 ? 0 : BetaFunction.Quantile(count, tries - count + 1, 1 - confidence);
    }

    /// <summary>The upper bound after no failure: 1 − (1 − confidence)^(1/tries), about 3/tries for 95 %; 1 without tries.</summary>
    public static double ZeroFailureUpper(int tries, double confidence)
    {
        Checked(0, tries, confidence);
        return tries == 0 ? 1 : -Elementary.ExpMinusOne(Elementary.Log(1 - confidence) / tries);
    }

    /// <summary>The least number of tries, all good, that bound the chance of failure by <paramref name="upper"/>.</summary>
    public static int ZeroFailureTries(double upper, double confidence)
    {
        if (!(upper is > 0 and < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(upper), upper, "Must be between 0 and 1.");
        }

        int tries = (int)Math.Ceiling(Elementary.Log(1 - confidence) / Elementary.LogOnePlus(-upper)) - 1;
        tries = Math.Max(tries, 1);
        while (ZeroFailureUpper(tries, confidence) > upper)
        {
            tries++;
        }

        return tries;
    }

    /// <summary>The score interval (E. Wilson 1927; method 3 of R. Newcombe, Statistics in Medicine 17, 1998): covers about as often as it says.</summary>
    public static Interval Wilson(int count, int tries, double confidence)
    {
        Checked(count, tries, confidence);
        ArgumentOutOfRangeException.ThrowIfZero(tries);
        double z = Normal.Quantile((1 + confidence) / 2);
        double share = (double)count / tries;
        double spread = z * Math.Sqrt((share * (1 - share) / tries) + (z * z / (4.0 * tries * tries)));
        double centre = share + (z * z / (2.0 * tries));
        double below = 1 + (z * z / tries);
        return new(Math.Max(0, (centre - spread) / below), Math.Min(1, (centre + spread) / below));
    }

    private static double Checked(int count, int tries, double confidence)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, tries);
        return confidence is > 0 and < 1
            ? confidence
            : throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "Must be between 0 and 1.");
    }
}
