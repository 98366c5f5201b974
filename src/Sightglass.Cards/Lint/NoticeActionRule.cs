using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>No action inside a notice. Prohibitions and protective gear are allowed.</summary>
internal sealed class NoticeActionRule() : LintRule(8)
{
    public override void Check(LintContext card)
    {
        ImmutableArray<string> verbs =
        [
            .. card.Language.At(FormPlace.Step)
                .Where(f => f.Has(FormHints.Action) && f.Pattern.Leading.Length > 0)
                .Select(f => f.Pattern.Leading[0])
                .Where(v => !card.Words.NoticeVerbs.Contains(v, StringComparer.OrdinalIgnoreCase)),
        ];
        foreach (CardElement.Notice notice in card.Notices)
        {
            Span span = notice.Sentence.TextAt("text")?.Span ?? Span.None;
            foreach (ImmutableArray<Word> sentence in NoticeSentences.Of(card.Language, span))
            {
                foreach (int at in Starts(sentence, card.Language.Small).Where(i => verbs.Any(sentence[i].Is)))
                {
                    card.Found.Add(LintMessages.NoticeAction(notice.Span with { Start = sentence[at].Start, Length = sentence[at].Text.Length }, sentence[at].Text));
                }
            }
        }
    }

    /// <summary>Where an order may begin: first, or after a comma and the word for 'and'.</summary>
    private static IEnumerable<int> Starts(ImmutableArray<Word> sentence, SmallWords small)
    {
        for (int i = 0; i < sentence.Length; i++)
        {
            bool afterThen = i > 1 && small.Then.Any(t => sentence[i - 1].Is(t.Split(' ')[^1])) && sentence[i - 2].Is(",");
            if (i == 0 || afterThen)
            {
                yield return i;
            }
        }
    }
}
