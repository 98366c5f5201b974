using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>Positive wording: no exceptions turned round, no 'not' that is answered by 'if not'.</summary>
internal sealed class PositiveRule() : LintRule(4)
{
    private static readonly Operation[] s_negative = [Operation.ShowsNotWord, Operation.PositionIsNot];

    public override void Check(LintContext card)
    {
        foreach (Sentence sentence in card.StepSentences)
        {
            if (LintContext.FirstIn(card.TextOf(sentence), card.Words.Negative) is { } phrase)
            {
                card.Found.Add(LintMessages.Negative(sentence.Span, phrase));
            }

            bool not = sentence.ConditionAt("condition")?.Sentences().Any(s => s_negative.Contains(s.Operation)) ?? false;
            if (not && sentence.Tail(Operation.IfNot) is not null)
            {
                card.Found.Add(LintMessages.DoubleNegative(sentence.Span));
            }
        }
    }
}
