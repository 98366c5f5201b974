using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>The condition stands before its action, with a comma.</summary>
internal sealed class ConditionFirstRule() : LintRule(3)
{
    public override void Check(LintContext card)
    {
        foreach (Sentence sentence in card.StepSentences.SelectMany(s => s.WithInner()).Where(s => s.Operation == Operation.If))
        {
            Span condition = sentence.ConditionAt("condition")?.Span ?? Span.None;
            Span action = sentence.ActionsAt("action").FirstOrDefault()?.Span ?? Span.None;
            if (condition.Source is null || action.Source is null)
            {
                continue;
            }

            if (condition.Start > action.Start)
            {
                card.Found.Add(LintMessages.ConditionFirst(sentence.Span));
            }
            else if (!condition.Source.Text[condition.End..action.Start].Contains(','))
            {
                card.Found.Add(LintMessages.NoComma(sentence.Span));
            }
        }
    }
}
