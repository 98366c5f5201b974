using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>A free order is said outright.</summary>
internal sealed class AnyOrderRule() : LintRule(18)
{
    public override void Check(LintContext card)
    {
        foreach (Sentence sentence in card.StepSentences.Where(s => s.Operation != Operation.AnyOrder))
        {
            if (LintContext.FirstIn(card.TextOf(sentence), card.Words.AnyOrder) is not null)
            {
                card.Found.Add(LintMessages.AnyOrder(sentence.Span));
            }
        }
    }
}
