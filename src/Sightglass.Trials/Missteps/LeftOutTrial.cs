using System.Collections.Immutable;
using Sightglass.Cards.Missteps;
using Sightglass.Cards.Tree;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;

namespace Sightglass.Trials.Missteps;

/// <summary>The simplest misstep: each step of a card left out in turn, tried in the same cases.</summary>
public static class LeftOutTrial
{
    /// <summary>A row for each step, in the card's order, each in the same cases on the same machines. Steps without which the card can no longer be read are left away.</summary>
    /// <param name="setup">The trial of the whole card.</param>
    /// <param name="card">That card.</param>
    /// <param name="options">Which cases.</param>
    /// <param name="stop">Ends it: a step that was not tried in all cases has no row.</param>
    public static ImmutableArray<LeftOutResult> Run(TrialSetup setup, Card card, SweepOptions options, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(card);
        ArgumentNullException.ThrowIfNull(options);
        ImmutableArray<LeftOutResult>.Builder rows = ImmutableArray.CreateBuilder<LeftOutResult>();
        Card numbered = StepNumbers.Renumber(card);
        TrialResult? whole = Try(numbered);
        foreach (CardElement.Step step in numbered.Steps)
        {
            TrialResult? result = whole is null || stop.IsCancellationRequested ? null : Try(Misstep.LeaveOut(numbered, step.Number));
            if (stop.IsCancellationRequested)
            {
                break;
            }

            if (result is not null)
            {
                int stops = whole!.Outcomes.Zip(result.Outcomes).Count(o => o is { First.Kind: OutcomeKind.Done, Second.Kind: OutcomeKind.Stopped });
                rows.Add(new(step.Number, step.Span.Text.Trim(), result.Applicable, result.Failed, result.Groups.FirstOrDefault()?.Mechanism ?? "", stops, whole.Failed));
            }
        }

        return rows.ToImmutable();

        TrialResult? Try(Card tried) => TrialPreparation.Instead(setup, tried, []) is { } other ? new(other, options, [.. CaseSweep.Run(other, options, stop)]) : null;
    }

    /// <summary>True when at least one step is needed: a card that passes without any of its steps is to be shortened.</summary>
    public static bool AnyMatters(ImmutableArray<LeftOutResult> rows) => rows.Any(r => r.Matters);
}
