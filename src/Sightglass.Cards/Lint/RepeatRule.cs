using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>What is repeated has an interval and an end.</summary>
internal sealed class RepeatRule() : LintRule(14)
{
    public override void Check(LintContext card)
    {
        foreach (CardElement.Step step in card.Card.Steps)
        {
            foreach (Sentence sentence in step.Sentences.SelectMany(s => s.WithInner()))
            {
                CheckSentence(card, step.Number, sentence);
            }
        }
    }

    private static void CheckSentence(LintContext card, int step, Sentence sentence)
    {
        switch (sentence.Operation)
        {
            case Operation.Repeat when !sentence.Slots.ContainsKey("count"):
                card.Found.Add(LintMessages.NoEnd(sentence.Span));
                break;
            case Operation.Repeat when !sentence.Slots.ContainsKey("period"):
                card.Found.Add(LintMessages.NoInterval(sentence.Span));
                break;
            case Operation.Jump when sentence.StepAt("step") is { } to && to.Number <= step:
                card.Found.Add(LintMessages.EndlessLoop(sentence.Span, to.Number));
                break;
            case Operation.Unread when LintContext.FirstIn(card.TextOf(sentence), card.Words.Again) is { } again:
                card.Found.Add(LintMessages.AgainAndAgain(sentence.Span, again));
                break;
        }
    }
}
