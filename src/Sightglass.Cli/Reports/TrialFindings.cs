using System.Collections.Immutable;
using Sightglass.Cards.Tree;
using Sightglass.Trials.Maps;
using Sightglass.Trials.Missteps;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;
using Sightglass.World.Situations;

namespace Sightglass.Cli.Reports;

/// <summary>All that a report on a trial tells.</summary>
internal sealed record TrialFindings(TrialResult Result, Card Card, ImmutableArray<LeftOutResult> LeftOut)
{
    /// <summary>Ranges by how much they tell about failing, most first.</summary>
    public ImmutableArray<(DrawnRange Range, double Share)> Ranking { get; } = RangeRanking.Of(Result);

    /// <summary>For each mechanism its most ordinary failing case, told.</summary>
    public ImmutableArray<ToldFailure> Failures { get; } =
    [
        .. Result.Groups.Select(g =>
        {
            CaseDraws found = new(Result.Seed, (ulong)(Result.FirstCase + g.Cases[0]));
            Counterexample least = Shrinker.Shrink(Result.Setup, found, g.Mechanism);
            return new ToldFailure(g, least, CaseStory.Tell(Result.Setup, least.Draws));
        }),
    ];
}
