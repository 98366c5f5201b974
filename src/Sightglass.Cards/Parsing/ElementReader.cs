using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Parsing;

/// <summary>Reads one line of a card (or several wrapped ones) as an element of its tree.</summary>
internal sealed class ElementReader(CardContext context)
{
    /// <summary>Words in one line beyond which it is not read.</summary>
    public const int MostWords = 400;

    private const int LongestPerson = 4;

    private readonly SentenceReader _sentences = new(context);

    /// <summary>The names of list lines: those of a round where the step above goes through something.</summary>
    private Scope? _list;

    public CardElement Read(RawLine line, DiagnosticList found)
    {
        context.Tries = 0;
        Span span = context.Source.Between(line.Start, line.End);
        switch (line.Kind)
        {
            case LineKind.Blank:
                return new CardElement.Blank(span);
            case LineKind.Comment:
                string comment = context.Source.Text[(line.BodyStart + context.Language.Small.Comment.Length)..line.End];
                return new CardElement.Comment(comment.Trim(), span);
        }

        ImmutableArray<Word> words = context.Language.WordsOf(context.Source.Text, line.BodyStart, line.End);
        if (words.Length > MostWords)
        {
            found.Add(CardMessages.TooLarge(span, line.End - line.Start));
            return UnreadLine(span);
        }

        return line.Kind switch
        {
            LineKind.Labelled => Labelled(words, span, found),
            LineKind.Step => Step(line, words, span, found),
            LineKind.ListItem => ListItem(words, span, found),
            _ => Other(words, span, found),
        };
    }

    /// <summary>Whether a line of the head begins like one of some forms.</summary>
    public bool Begins(RawLine line, params ReadOnlySpan<Operation> forms)
    {
        if (line.Kind != LineKind.Labelled)
        {
            return false;
        }

        ImmutableArray<Word> words = context.Language.WordsOf(context.Source.Text, line.BodyStart, line.End);
        foreach (SentenceForm form in context.Language.At(FormPlace.Head))
        {
            if (forms.Contains(form.Operation) && form.Pattern.Leading.Length > 0 && words[0].Is(form.Pattern.Leading[0]))
            {
                return true;
            }
        }

        return false;
    }

    private CardElement.Unread UnreadLine(Span span) => new(span.Text, span);

    private CardElement.Unread Other(ImmutableArray<Word> words, Span span, DiagnosticList found)
    {
        found.Add(CardMessages.LineNotUnderstood(span, SentenceHelp.LabelFor(context.Language, words)));
        return UnreadLine(span);
    }

    private CardElement Labelled(ImmutableArray<Word> words, Span span, DiagnosticList found)
    {
        int to = Stop(words, words.Length);
        if (_sentences.Best(words, 0, to, FormPlace.Notice) is { } notice)
        {
            return new CardElement.Notice(notice.Sentence, span);
        }

        ImmutableArray<Sentence> head = HeadSentences(words, found);
        if (head.IsEmpty)
        {
            SentenceForm? form = context.Language.At(FormPlace.Head).FirstOrDefault(f => f.Pattern.Leading.Length > 0 && words[0].Is(f.Pattern.Leading[0]));
            found.Add(CardMessages.SentenceNotUnderstood(span, WordList.Join(words), form is null ? null : $"write `{form.Pattern.Readable()}.`"));
            return UnreadLine(span);
        }

        return new CardElement.Head(head, span);
    }

    private ImmutableArray<Sentence> HeadSentences(ImmutableArray<Word> words, DiagnosticList found)
    {
        int end = StepSentences.SentenceEnd(context.Language, words, 0, words.Length);
        Attempt? first = _sentences.Best(words, 0, end, FormPlace.Head);
        if (first is { IsOpen: true })
        {
            end = words.Length;
            first = _sentences.Best(words, 0, Stop(words, end), FormPlace.Head);
        }

        if (first is null)
        {
            return [];
        }

        found.AddRange(first.Found);
        Sentence sentence = first.Sentence;
        while (end < words.Length - 1)
        {
            int start = end + 1;
            end = StepSentences.SentenceEnd(context.Language, words, start, words.Length);
            if (end == start)
            {
                continue;
            }

            Attempt? tail = _sentences.Best(words, start, end, FormPlace.Tail);
            found.AddRange(tail?.Found ?? []);
            sentence = sentence with { Tails = sentence.Tails.Add(tail?.Sentence ?? StepSentences.Unread(context, words, start, end, found)) };
        }

        return [sentence];
    }

    private CardElement.Step Step(RawLine line, ImmutableArray<Word> words, Span span, DiagnosticList found)
    {
        (Phrase? person, ImmutableArray<Sentence> sentences) = PersonAndSentences(words, found);
        if (sentences.IsEmpty)
        {
            found.Add(CardMessages.SentenceNotUnderstood(span, span.Text.Trim(), "write what to do"));
        }

        _list = sentences.Where(s => s.ActionsAt("actions").IsEmpty).Select(context.ScopeIn).LastOrDefault();
        return new(line.Number, person, sentences, span);
    }

    private CardElement.ListItem ListItem(ImmutableArray<Word> words, Span span, DiagnosticList found)
    {
        Scope around = context.Scope;
        context.Scope = _list ?? around;
        (Phrase? person, ImmutableArray<Sentence> sentences) = PersonAndSentences(words, found);
        context.Scope = around;
        return new(person, sentences, span);
    }

    private (Phrase? Person, ImmutableArray<Sentence> Sentences) PersonAndSentences(ImmutableArray<Word> words, DiagnosticList found)
    {
        int from = 0;
        Phrase? person = null;
        for (int i = 1; i < Math.Min(words.Length, LongestPerson + 1); i++)
        {
            if (!words[i].Is(":"))
            {
                continue;
            }

            Phrase phrase = new(WordList.Join(words[..i]), context.Source.Between(words[0].Start, words[i - 1].End));
            if (context.Names.Roles(phrase, context.Scope) is { IsFound: true, IsLoose: false })
            {
                (person, from) = (phrase, i + 1);
            }

            break;
        }

        return (person, new StepSentences(context, _sentences).Read(words, from, words.Length, found));
    }

    private static int Stop(ImmutableArray<Word> words, int to)
    {
        while (to > 1 && words[to - 1].Is("."))
        {
            to--;
        }

        return to;
    }
}
