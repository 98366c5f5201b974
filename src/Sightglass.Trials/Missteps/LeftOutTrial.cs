using System.Collections.Immutable;
using Sightglass.Cards.Missteps;
using Sightglass.Cards.Tree;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;

namespace Sightglass.Trials.Missteps;

/// <summary>The simplest misstep: each step of a card, and each line of a list, left out in turn, tried in the same cases.</summary>
public static class LeftOutTrial
{
    /// <summary>A row for each step, in the card's order, and behind it for each line of its list, each in the same cases on the same machines. Those without which the card can no longer be read are left away.</summary>
    /// <param name="setup">The trial of the whole card.</param>
    /// <param name="card">That card.</param>
    /// <param name="options">Which cases.</param>
    /// <param name="stop">Ends it: a step that was not tried in all cases has no row.</param>
    public static ImmutableArray<LeftOutResult> Run(TrialSetup setup, Card card, SweepOptions options, CancellationToken stop = default) => [.. Each(setup, card, options, null, stop)];

    /// <summary>As <see cref="Run"/>, row by row: each is tried when it is asked for.</summary>
    /// <param name="setup">The trial of the whole card.</param>
    /// <param name="card">That card.</param>
    /// <param name="options">Which cases.</param>
    /// <param name="wanted">Which steps and lines, by their text; null for all.</param>
    /// <param name="stop">Ends it: a step that was not tried in all cases has no row.</param>
    public static IEnumerable<LeftOutResult> Each(TrialSetup setup, Card card, SweepOptions options, Predicate<string>? wanted = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(card);
        ArgumentNullException.ThrowIfNull(options);
        return Rows(setup, StepNumbers.Renumber(card), options, wanted ?? (_ => true), stop);
    }

    private static IEnumerable<LeftOutResult> Rows(TrialSetup setup, Card card, SweepOptions options, Predicate<string> wanted, CancellationToken stop)
    {
        TrialResult? whole = Try(card);
        foreach ((int step, int line, string text, Card left) in Misstep.Each(card).Where(m => wanted(m.Text)))
        {
            TrialResult? result = whole is null || stop.IsCancellationRequested ? null : Try(left);
            if (stop.IsCancellationRequested)
            {
                yield break;
            }

            if (result is not null)
            {
                int stops = whole!.Outcomes.Zip(result.Outcomes).Count(o => o is { First.Kind: OutcomeKind.Done, Second.Kind: OutcomeKind.Stopped });
                yield return new(step, line, text, result.Applicable, result.Failed, result.Groups.FirstOrDefault()?.Mechanism ?? "", stops, whole.Failed);
            }
        }

        TrialResult? Try(Card tried) => TrialPreparation.Instead(setup, tried, []) is { } other ? new(other, options, [.. CaseSweep.Run(other, options, stop)]) : null;
    }

    /// <summary>True when at least one step is needed: a card that passes without any of its steps is to be shortened.</summary>
    public static bool AnyMatters(ImmutableArray<LeftOutResult> rows) => rows.Any(r => r.Matters);
}
