using System.Collections.Frozen;
using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Parsing;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>Short sentences by the measure of the card's language, short texts, at most three nouns in a row.</summary>
internal sealed class LengthRule() : LintRule(6)
{
    private const int MostSentences = 6;
    private const int MostNouns = 3;

    public override void Check(LintContext card)
    {
        FrozenSet<string> nouns = card.Names.Nouns;
        foreach (Sentence sentence in card.StepSentences.SelectMany(s => s.Tails.Prepend(s)))
        {
            CheckLength(card, sentence.Span, LintContext.WordsIn(sentence.Span), card.Words.MostInStep);
            foreach (Slot.Text text in sentence.WithInner().SelectMany(s => s.Slots.Values.OfType<Slot.Text>()))
            {
                CheckNouns(card, text.Span, nouns);
            }
        }

        foreach (CardElement.Notice notice in card.Notices)
        {
            CheckNotice(card, notice, nouns);
        }
    }

    private static void CheckNotice(LintContext card, CardElement.Notice notice, FrozenSet<string> nouns)
    {
        Span span = notice.Sentence.TextAt("text")?.Span ?? Span.None;
        ImmutableArray<ImmutableArray<Word>> sentences = NoticeSentences.Of(card.Language, span);
        foreach (ImmutableArray<Word> sentence in sentences)
        {
            CheckLength(card, span, sentence, card.Words.MostInNotice);
        }

        if (sentences.Length > MostSentences)
        {
            card.Found.Add(LintMessages.TooManySentences(span, sentences.Length, MostSentences));
        }

        CheckNouns(card, span, nouns);
    }

    private static void CheckLength(LintContext card, Span span, ImmutableArray<Word> words, int most)
    {
        int count = words.Count(w => !w.IsMark);
        if (count > most)
        {
            card.Found.Add(LintMessages.TooLong(span, count, most));
        }
    }

    /// <summary>A row of words that are all parts of names in the book.</summary>
    private static void CheckNouns(LintContext card, Span span, FrozenSet<string> nouns)
    {
        List<string> row = [];
        foreach (Word word in LintContext.WordsIn(span).Append(new Word(".", 0, 0)))
        {
            if (nouns.Contains(word.Text))
            {
                row.Add(word.Text);
                continue;
            }

            string text = string.Join(' ', row);
            if (row.Count > MostNouns && WithoutNames(card, text).Split(' ').Length > MostNouns)
            {
                card.Found.Add(LintMessages.NounRow(span, text));
            }

            row.Clear();
        }
    }

    /// <summary>A name of the book counts as one noun.</summary>
    private static string WithoutNames(LintContext card, string text) =>
        card.Book.Items.Keys.Aggregate(text, (t, name) => t.Replace(name, "_", StringComparison.OrdinalIgnoreCase));
}
