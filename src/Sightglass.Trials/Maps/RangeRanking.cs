using System.Collections.Immutable;
using Sightglass.Trials.Results;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Maps;

/// <summary>Which drawn ranges matter for failing: the share of the variance of 'fails' that lies between ten bins of the range (correlation ratio η²).</summary>
public static class RangeRanking
{
    private const int Bins = 10;

    /// <summary>All that vary, most telling first; 0…1. Empty where all cases end alike.</summary>
    public static ImmutableArray<(DrawnRange Range, double Share)> Of(TrialResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        (int Index, bool Bad)[] cases =
        [
            .. result.Outcomes.Select((o, i) => (i, o.Kind))
                .Where(c => c.Kind is OutcomeKind.Done or OutcomeKind.Stopped or OutcomeKind.Failed)
                .Select(c => (c.i, c.Kind == OutcomeKind.Failed)),
        ];
        double mean = cases.Length == 0 ? 0 : cases.Count(c => c.Bad) / (double)cases.Length;
        double variance = mean * (1 - mean) * cases.Length;
        if (variance == 0)
        {
            return [];
        }

        return
        [
            .. result.Setup.Start.Ranges.Where(r => r.Varies)
                .Select(r => (Range: r, Share: Between(result, cases, r, mean) / variance))
                .OrderByDescending(r => r.Share)
                .ThenBy(r => r.Range.Order),
        ];
    }

    private static double Between(TrialResult result, (int Index, bool Bad)[] cases, DrawnRange range, double mean) =>
        cases
            .GroupBy(c => Bin(range, new(result.Seed, (ulong)(result.FirstCase + c.Index))))
            .Sum(g => g.Count() * Math.Pow((g.Count(c => c.Bad) / (double)g.Count()) - mean, 2));

    private static int Bin(DrawnRange range, CaseDraws draws) =>
        range.Words.IsEmpty ? (int)(draws.Uniform(range.Order) * Bins) : (int)range.Value(draws);
}
