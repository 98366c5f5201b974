namespace Sightglass.Training.Evaluation;

/// <summary>
/// How far two assessors agree who judged the same things, each met or not met. Cohen's kappa collapses when nearly all is met, Gwet's AC1 does not: both are told, and always of how many.
/// </summary>
/// <param name="BothMet">Things that both judged met.</param>
/// <param name="FirstOnly">That the first alone judged met.</param>
/// <param name="SecondOnly">That the second alone judged met.</param>
/// <param name="NeitherMet">That both judged not met.</param>
public readonly record struct Agreement(int BothMet, int FirstOnly, int SecondOnly, int NeitherMet)
{
    /// <summary>Things that both judged.</summary>
    public int Of => BothMet + FirstOnly + SecondOnly + NeitherMet;

    /// <summary>Of those, judged alike.</summary>
    public int Alike => BothMet + NeitherMet;

    /// <summary>Share judged alike, 0…1; not a number where nothing was judged by both.</summary>
    public double Observed => (double)Alike / Of;

    /// <summary>
    /// Cohen's kappa: agreement beyond what two would have by chance who each judge met as often as these did (J. Cohen, 1960). Not a number where nothing was judged by both, or where
    /// both judged everything alike in one way, so that chance explains all.
    /// </summary>
    public double Kappa
    {
        get
        {
            double first = (double)(BothMet + FirstOnly) / Of;
            double second = (double)(BothMet + SecondOnly) / Of;
            return Beyond((first * second) + ((1 - first) * (1 - second)));
        }
    }

    /// <summary>Gwet's AC1: the same beyond a chance that is small when nearly all is met (K. L. Gwet, 2008). Not a number where nothing was judged by both.</summary>
    public double Ac1
    {
        get
        {
            double met = ((2.0 * BothMet) + FirstOnly + SecondOnly) / (2.0 * Of);
            return Beyond(2 * met * (1 - met));
        }
    }

    /// <summary>The two figures of several runs together.</summary>
    public static Agreement operator +(Agreement a, Agreement b) => new(a.BothMet + b.BothMet, a.FirstOnly + b.FirstOnly, a.SecondOnly + b.SecondOnly, a.NeitherMet + b.NeitherMet);

    /// <summary>From what each judged of the same things.</summary>
    /// <param name="pairs">Whether the first judged it met, and whether the second did.</param>
    public static Agreement Over(IEnumerable<(bool First, bool Second)> pairs)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        Agreement sum = default;
        foreach ((bool first, bool second) in pairs)
        {
            sum += (first, second) switch
            {
                (true, true) => new(1, 0, 0, 0),
                (true, false) => new(0, 1, 0, 0),
                (false, true) => new(0, 0, 1, 0),
                _ => new(0, 0, 0, 1),
            };
        }

        return sum;
    }

    private double Beyond(double chance) => chance < 1 ? (Observed - chance) / (1 - chance) : double.NaN;
}
