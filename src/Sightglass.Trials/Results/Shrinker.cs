using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Results;

/// <summary>
/// Makes a failing case as ordinary as it can be while it still fails of the same mechanism: each drawn number goes to the middle of its
/// range (each word to the first, the machine to the one that differs least from the class) or, where it must depart, as near to it as bisection
/// finds. Never counted in a result.
/// </summary>
public static class Shrinker
{
    private const int Halvings = 6;

    /// <summary>The draws of the least departure found, and which ranges still depart.</summary>
    public static Counterexample Shrink(TrialSetup setup, CaseDraws failing, string mechanism)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(failing);
        CaseDraws best = failing;
        List<DrawnRange> departing = [];
        foreach (DrawnRange range in setup.Ranges.Where(r => r.Varies))
        {
            double ordinary = setup.Ordinary(range);
            if (Fails(best.With(range.Order, ordinary)))
            {
                best = best.With(range.Order, ordinary);
                continue;
            }

            departing.Add(range);
            best = range.Words.IsEmpty ? Nearer(range, best, ordinary) : best;
        }

        return new(best, [.. departing.Select(r => (r.Name, r.Say(best)))], CaseStory.End(setup, best));

        bool Fails(CaseDraws draws)
        {
            Outcome end = CaseStory.End(setup, draws);
            return end.Kind == OutcomeKind.Failed && end.Mechanism == mechanism;
        }

        CaseDraws Nearer(DrawnRange range, CaseDraws from, double ordinary)
        {
            (double bad, double good) = (from.Uniform(range.Order), ordinary);
            for (int i = 0; i < Halvings; i++)
            {
                double middle = (bad + good) / 2;
                (bad, good) = Fails(from.With(range.Order, middle)) ? (middle, good) : (bad, middle);
            }

            return from.With(range.Order, bad);
        }
    }
}
