using System.Collections.Immutable;
using Sightglass.Trials.Missteps;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Tries;

/// <summary>Tries a card and lays out what failed.</summary>
public static class Trier
{
    /// <summary>Mechanisms that are laid out, each by its largest group; the others are only counted.</summary>
    private const int MostStories = 3;

    public static TryResult Run(TryRequest request, CancellationToken stop)
    {
        TrialResult trial = new(request.Setup, request.Options, [.. CaseSweep.Run(request.Setup, request.Options, stop)]);
        ImmutableArray<FailureStory> failures = stop.IsCancellationRequested ? [] : [.. trial.Groups.DistinctBy(g => g.Mechanism).Take(MostStories).Select(g => Tell(request, g))];
        SweepOptions quiet = request.Options with { Progress = null };
        return new(
            request,
            trial,
            failures,
            request.LeftOut && !stop.IsCancellationRequested ? LeftOutTrial.Run(request.Setup, request.Card, quiet, stop) : []);
    }

    private static FailureStory Tell(TryRequest request, FailureGroup group)
    {
        CaseDraws first = new(request.Options.Seed, (ulong)(request.Options.FirstCase + group.Cases[0]));
        Counterexample least = Shrinker.Shrink(request.Setup, first, group.Mechanism);
        return new(group, least, CaseStory.Tell(request.Setup, least.Draws));
    }
}
