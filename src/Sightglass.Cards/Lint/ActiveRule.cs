using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>Active voice, and orders instead of wishes.</summary>
internal sealed class ActiveRule() : LintRule(5)
{
    public override void Check(LintContext card)
    {
        foreach (Sentence sentence in card.StepSentences)
        {
            if (LintContext.FirstIn(card.TextOf(sentence), card.Words.Modal) is { } modal)
            {
                card.Found.Add(LintMessages.Modal(sentence.Span, modal));
            }
            else if (sentence.Operation == Operation.Unread && IsPassive([.. card.WordsOf(sentence)], card.Words))
            {
                card.Found.Add(LintMessages.Passive(sentence.Span));
            }
        }
    }

    private static bool IsPassive(Word[] words, LintWords lint)
    {
        for (int i = 0; i + 1 < words.Length; i++)
        {
            bool be = lint.Be.Any(words[i].Is);
            if (be && lint.ParticipleEndings.Any(e => words[i + 1].Text.EndsWith(e, StringComparison.OrdinalIgnoreCase)))
            {
                return true;
            }
        }

        return false;
    }
}
