using System.Collections.Immutable;
using Sightglass.Basics.Draws;
using Sightglass.Trials.Missteps;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;
using Sightglass.World;

namespace Sightglass.Trials.Tries;

/// <summary>What trying a card in one situation came to, with the failures laid out.</summary>
/// <param name="Request">What was tried.</param>
/// <param name="Trial">Counts, bound, groups.</param>
/// <param name="Failures">The first groups, each with its least departure from the ordinary and the story of that case.</param>
/// <param name="LeftOut">What leaving each step out costs; empty where it was not asked for.</param>
public sealed record TryResult(
    TryRequest Request,
    TrialResult Trial,
    ImmutableArray<FailureStory> Failures,
    ImmutableArray<LeftOutResult> LeftOut)
{
    /// <summary>Over all outcomes, in the order of their cases.</summary>
    public ulong Hash => Trial.Outcomes.Aggregate(
        TrajectoryHash.Start, (h, o) => TrajectoryHash.Add(TrajectoryHash.Add(TrajectoryHash.Add(h, (long)o.Kind), o.Time.Ticks), unchecked((long)o.Hash)));
}
