namespace Sightglass.Basics.Statistics;

/// <summary>Chances of counts in independent tries, exact.</summary>
public static class Binomial
{
    /// <summary>P(X ≥ count) in <paramref name="tries"/> tries with this chance each.</summary>
    public static double AtLeast(int count, int tries, double chance)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(tries);
        return count <= 0 ? 1 : count > tries ? 0 : BetaFunction.Regularized(count, tries - count + 1, chance);
    }

    /// <summary>P(X ≤ count).</summary>
    public static double AtMost(int count, int tries, double chance)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(tries);
        return count < 0 ? 0 : count >= tries ? 1 : BetaFunction.Regularized(tries - count, count + 1, 1 - chance);
    }

    /// <summary>
    /// The least mark c with P(X ≥ c) ≤ risk for someone who guesses each answer right with this chance; one more than the tries where no mark is enough.
    /// </summary>
    public static int PassMark(int tries, double guess, double risk)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(tries);
        int mark = 0;
        while (mark <= tries && AtLeast(mark, tries, guess) > risk)
        {
            mark++;
        }

        return mark;
    }
}
