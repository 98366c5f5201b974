using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>A step starts with a verb, or with a condition.</summary>
internal sealed class VerbFirstRule() : LintRule(2)
{
    public override void Check(LintContext card)
    {
        HashSet<string> first = new(
            card.Language.Forms.Where(f => f.Pattern.Leading.Length > 0).Select(f => f.Pattern.Leading[0]),
            StringComparer.OrdinalIgnoreCase);
        foreach (Sentence sentence in card.StepSentences.Where(s => s.Operation == Operation.Unread))
        {
            if (LintContext.WordsIn(sentence.Span) is [{ } word, ..] && !first.Contains(word.Text))
            {
                card.Found.Add(LintMessages.VerbFirst(sentence.Span, word.Text));
            }
        }
    }
}
