using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Parsing;
using Sightglass.Cards.Sentences;

namespace Sightglass.Cards.Lint;

/// <summary>The sentences of a free text.</summary>
internal static class NoticeSentences
{
    public static ImmutableArray<ImmutableArray<Word>> Of(CardLanguage language, Span span)
    {
        ImmutableArray<Word> words = LintContext.WordsIn(span);
        ImmutableArray<ImmutableArray<Word>>.Builder sentences = ImmutableArray.CreateBuilder<ImmutableArray<Word>>();
        int at = 0;
        while (at < words.Length)
        {
            int end = StepSentences.SentenceEnd(language, words, at, words.Length);
            if (end > at)
            {
                sentences.Add(words[at..end]);
            }

            at = end + 1;
        }

        return sentences.ToImmutable();
    }
}
