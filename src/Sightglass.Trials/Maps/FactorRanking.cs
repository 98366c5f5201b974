using System.Collections.Immutable;
using Sightglass.Trials.Results;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Maps;

/// <summary>
/// What matters for failing: of each thing that is drawn, the share of the variance of 'fails' that lies between its words, or between ten equal stretches of its
/// numbers, less what would lie there by chance (epsilon squared; T. L. Kelley 1935, from memory). So a factor of many words is not ahead of one
/// of few, and what has no influence comes to nothing, also in a small trial.
/// </summary>
public static class FactorRanking
{
    private const int Stretches = 10;

    /// <summary>All that vary, most telling first. Empty where all cases end alike.</summary>
    public static ImmutableArray<RankedFactor> Of(TrialResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        (int Index, bool Bad)[] cases =
        [
            .. result.Outcomes.Select((o, i) => (i, o.Kind))
                .Where(c => c.Kind is OutcomeKind.Done or OutcomeKind.Stopped or OutcomeKind.Failed)
                .Select(c => (c.i, c.Kind == OutcomeKind.Failed)),
        ];
        int bad = cases.Count(c => c.Bad);
        return bad == 0 || bad == cases.Length
            ? []
            :
            [
                .. result.Setup.Ranges.Where(r => r.Varies)
                    .Select(r => new RankedFactor(r, Share([.. cases.Select(c => (Stretch(r, result.DrawsOf(c.Index)), c.Bad))])))
                    .OrderByDescending(r => r.Share)
                    .ThenBy(r => r.Range.Order),
            ];
    }

    /// <summary>The share for cases of which each lies in one group and is bad or not; some are and some are not.</summary>
    public static double Share(ImmutableArray<(int Group, bool Bad)> cases)
    {
        double mean = cases.Count(c => c.Bad) / (double)cases.Length;
        double whole = mean * (1 - mean) * cases.Length;
        (int Count, double Mean)[] groups = [.. cases.GroupBy(c => c.Group).Select(g => (g.Count(), g.Count(c => c.Bad) / (double)g.Count()))];
        double within = groups.Sum(g => g.Count * g.Mean * (1 - g.Mean));
        int left = cases.Length - groups.Length;
        double byChance = left > 0 ? (groups.Length - 1) * within / left : whole;
        return Math.Max(0, (whole - within - byChance) / whole);
    }

    private static int Stretch(DrawnRange range, CaseDraws draws) =>
        range.Words.IsEmpty ? (int)(draws.Uniform(range.Order) * Stretches) : (int)range.Value(draws);
}
