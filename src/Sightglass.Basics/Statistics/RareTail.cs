namespace Sightglass.Basics.Statistics;

/// <summary>How many draws it takes to see what is rare, and how fast a boundary is closed in.</summary>
public static class RareTail
{
    /// <summary>Halvings that bring a bracket of this length down to the tolerance: ⌈log₂(length/tolerance)⌉.</summary>
    public static int Bisections(double length, double tolerance)
    {
        if (!(length > 0 && tolerance > 0 && double.IsFinite(length)))
        {
            throw new ArgumentOutOfRangeException(nameof(length), (length, tolerance), "Length and tolerance must be above 0.");
        }

        int count = 0;
        for (double left = length; left > tolerance; left *= 0.5)
        {
            count++;
        }

        return count;
    }

    /// <summary>The chance that none of so many independent draws falls into a band that holds this share: (1−share)ⁿ.</summary>
    public static double ChanceToMiss(double share, int draws) => Elementary.Exp(draws * Elementary.LogOnePlus(-share));

    /// <summary>Independent draws after which a share p is known with this relative deviation: (1−p)/(p·v²).</summary>
    public static double CrudeDraws(double share, double relativeDeviation) => (1 - share) / (share * relativeDeviation * relativeDeviation);

    /// <summary>
    /// The same for the tail P(Z &gt; z) when the draws are taken around z and weighed back (importance sampling with a shifted mean):
    /// the weights' second moment is e^(z²)·Φ(−2z).
    /// </summary>
    public static double ShiftedDraws(double z, double relativeDeviation)
    {
        double share = Normal.Tail(z);
        double secondMoment = Elementary.Exp(z * z) * Normal.Tail(2 * z);
        return ((secondMoment / (share * share)) - 1) / (relativeDeviation * relativeDeviation);
    }
}
