using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>Another actor is named.</summary>
internal sealed class ActorRule() : LintRule(12)
{
    public override void Check(LintContext card)
    {
        foreach (Sentence sentence in card.StepSentences)
        {
            if (LintContext.FirstIn(card.TextOf(sentence), card.Words.Somebody) is { } somebody)
            {
                card.Found.Add(LintMessages.Somebody(sentence.Span, somebody));
            }
        }
    }
}
