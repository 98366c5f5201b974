using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Cards.Missteps;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;

namespace Sightglass.Trials.Missteps;

/// <summary>The simplest misstep: each step of a card left out in turn, tried in the same cases.</summary>
public static class LeftOutTrial
{
    /// <summary>A row for each step, in the card's order. Steps without which the card can no longer be read are left away.</summary>
    public static ImmutableArray<LeftOutResult> Run(Plan plan, Card card, Situation situation, SweepOptions options, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(card);
        ArgumentNullException.ThrowIfNull(options);
        ImmutableArray<LeftOutResult>.Builder rows = ImmutableArray.CreateBuilder<LeftOutResult>();
        Card numbered = StepNumbers.Renumber(card);
        TrialResult? whole = Try(numbered);
        foreach (CardElement.Step step in numbered.Steps)
        {
            if (stop.IsCancellationRequested)
            {
                break;
            }

            if (whole is not null && Try(Misstep.LeaveOut(numbered, step.Number)) is { } result)
            {
                int stops = whole.Outcomes.Zip(result.Outcomes).Count(o => o is { First.Kind: OutcomeKind.Done, Second.Kind: OutcomeKind.Stopped });
                rows.Add(new(step.Number, step.Span.Text.Trim(), result.Applicable, result.Failed, result.Groups.FirstOrDefault()?.Mechanism ?? "", stops, whole.Failed));
            }
        }

        return rows.ToImmutable();

        TrialResult? Try(Card tried) => TrialPreparation.Prepare(plan, tried, situation, []) is { } setup ? new(setup, options, [.. CaseSweep.Run(setup, options, stop)]) : null;
    }

    /// <summary>True when at least one step is needed: a card that passes without any of its steps is to be shortened.</summary>
    public static bool AnyMatters(ImmutableArray<LeftOutResult> rows) => rows.Any(r => r.Matters);
}
