using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>A notice has the hazard, what it does to you, and how to avoid it.</summary>
internal sealed class NoticePartsRule() : LintRule(9)
{
    public override void Check(LintContext card)
    {
        foreach (CardElement.Notice notice in card.Notices)
        {
            Span span = notice.Sentence.TextAt("text")?.Span ?? Span.None;
            string text = " " + string.Join(' ', LintContext.WordsIn(span).Where(w => !w.IsMark).Select(w => w.Text.ToLowerInvariant())) + " ";
            ImmutableArray<ImmutableArray<Word>> sentences = NoticeSentences.Of(card.Language, span);
            if (sentences.Length > 0 && sentences.All(s => StartsWithAny(s, card.Words.Avoid)))
            {
                card.Found.Add(LintMessages.NoticePart(notice.Span, "what the hazard is"));
            }

            if (LintContext.FirstIn(text, card.Words.Harm) is null)
            {
                card.Found.Add(LintMessages.NoticePart(notice.Span, "what it does to you"));
            }
            else if (LintContext.FirstIn(text, card.Words.Avoid) is null)
            {
                card.Found.Add(LintMessages.NoticePart(notice.Span, "how to avoid it"));
            }
        }
    }

    private static bool StartsWithAny(ImmutableArray<Word> sentence, ImmutableArray<string> phrases) =>
        phrases.Any(p => p.Split(' ') is var parts && parts.Length <= sentence.Length && parts.Index().All(w => sentence[w.Index].Is(w.Item)));
}
