using Sightglass.Cards.Missteps;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>A step with a time limit says what to do when it is missed; before a long one something says that the time runs.</summary>
internal sealed class TimeLimitRule() : LintRule(15)
{
    private const double LongSeconds = 1800;

    public override void Check(LintContext card)
    {
        foreach (Sentence sentence in card.StepSentences.Where(s => IsLimited(card, s) && s.Tail(Operation.IfNot) is null))
        {
            card.Found.Add(LintMessages.MissedLimit(sentence.Span));
        }

        CardElement.Step? before = null;
        foreach (CardElement.Step step in card.Card.Steps)
        {
            foreach (Sentence sentence in step.Sentences.Where(s => IsLimited(card, s)))
            {
                bool isLong = sentence.AmountAt("limit")?.Quantity.Si >= LongSeconds;
                bool told = before?.Sentences.Any(s => s.Operation == Operation.Tell) ?? false;
                if (isLong && !told && Misstep.NoticesOf(card.Card, step).IsEmpty)
                {
                    card.Found.Add(LintMessages.SilentStart(sentence.Span));
                }
            }

            before = step;
        }
    }

    private static bool IsLimited(LintContext card, Sentence sentence) => card.Language.HintsOf(sentence.Operation).HasFlag(FormHints.Limited);
}
