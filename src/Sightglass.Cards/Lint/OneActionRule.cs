using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>One action a step.</summary>
internal sealed class OneActionRule() : LintRule(1)
{
    public override void Check(LintContext card)
    {
        foreach (CardElement.Step step in card.Card.Steps.Where(s => s.Sentences.Length > 1))
        {
            card.Found.Add(LintMessages.OneAction(step.Sentences[1].Span));
        }
    }
}
