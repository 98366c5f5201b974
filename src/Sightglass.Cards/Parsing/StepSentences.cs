using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Parsing;

/// <summary>Reads the sentences of a step: what is done, and what completes it. A sentence that fails does not stop the next.</summary>
internal sealed class StepSentences(CardContext context, SentenceReader sentences)
{
    public ImmutableArray<Sentence> Read(ImmutableArray<Word> words, int from, int to, DiagnosticList found)
    {
        List<Sentence> read = [];
        int at = from;
        while (at < to)
        {
            if (words[at].Is("."))
            {
                at++;
                continue;
            }

            int end = SentenceEnd(context.Language, words, at, to);
            if (TryTail(words, at, end, to, found) is { } tail)
            {
                Attach(read, tail.Sentence, found);
                at = tail.End;
            }
            else
            {
                (ImmutableArray<Sentence> actions, at) = Actions(words, at, end, to, found);
                read.AddRange(actions);
            }
        }

        return [.. read];
    }

    /// <summary>A sentence kept as written, with its error.</summary>
    public static Sentence Unread(CardContext context, ImmutableArray<Word> words, int from, int to, DiagnosticList found)
    {
        Span span = context.Source.Between(words[from].Start, words[to - 1].End);
        string text = WordList.Squeeze(context.Source.Text[span.Start..span.End]);
        found.Add(CardMessages.SentenceNotUnderstood(span, text, SentenceHelp.For(context.Language, words, from, to)));
        return Sentence.Of(Operation.Unread, ("text", new Slot.Text(text, span))) with { Span = span };
    }

    /// <summary>Where the sentence ends: at a full stop before a capital letter or before the words of a tail, or with the step.</summary>
    public static int SentenceEnd(CardLanguage language, ImmutableArray<Word> words, int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            bool ends = words[i].Is(".") && (i + 1 >= to || char.IsUpper(words[i + 1].Text[0]) || words[i + 1].Is(".") || StartsTail(language, words, i + 1, to));
            if (ends)
            {
                return i;
            }
        }

        return to;
    }

    private static bool StartsTail(CardLanguage language, ImmutableArray<Word> words, int at, int to) =>
        language.At(FormPlace.Tail).Any(f => f.Pattern.Leading.Length <= to - at && f.Pattern.Leading.Index().All(l => words[at + l.Index].Is(l.Item)));

    private static int WithoutStop(ImmutableArray<Word> words, int from, int to)
    {
        while (to - 1 > from && words[to - 1].Is("."))
        {
            to--;
        }

        return to;
    }

    private (Sentence Sentence, int End)? TryTail(ImmutableArray<Word> words, int at, int end, int to, DiagnosticList found)
    {
        Attempt? tail = sentences.Best(words, at, end, FormPlace.Tail);
        if (tail is null)
        {
            return null;
        }

        if (tail.IsOpen && end < to)
        {
            end = to;
            tail = sentences.Best(words, at, WithoutStop(words, at, to), FormPlace.Tail)!;
        }

        found.AddRange(tail.Found);
        return (tail.Sentence, end);
    }

    private static void Attach(List<Sentence> read, Sentence tail, DiagnosticList found)
    {
        if (read.Count == 0)
        {
            found.Add(CardMessages.StrayTail(tail.Span));
            read.Add(tail);
            return;
        }

        read[^1] = read[^1] with { Tails = read[^1].Tails.Add(tail) };
    }

    private (ImmutableArray<Sentence> Sentences, int End) Actions(ImmutableArray<Word> words, int at, int end, int to, DiagnosticList found)
    {
        Attempt? best = sentences.Best(words, at, end, FormPlace.Step);
        if (best is { IsOpen: true } && end < to)
        {
            end = to;
            best = sentences.Best(words, at, WithoutStop(words, at, to), FormPlace.Step)!;
        }

        if (best is null || best.Issues > 0)
        {
            IReadOnlyList<Attempt>? mended = Joined(words, at, end) ?? LateCondition(words, at, end);
            if (mended is not null && (best is null || mended.Sum(a => a.Issues) < best.Issues))
            {
                found.AddRange(mended.SelectMany(a => a.Found));
                return ([.. mended.Select(a => a.Sentence)], end);
            }
        }

        if (best is null)
        {
            return ([Unread(context, words, at, end, found)], end);
        }

        found.AddRange(best.Found);
        Remember(best.Sentence);
        return ([best.Sentence], end);
    }

    private void Remember(Sentence sentence)
    {
        if (sentence.Operation == Operation.Read && sentence.PhraseAt("letter") is { } name)
        {
            context.Written.Add(name.Text);
        }
    }

    /// <summary>Two actions hung together: 'Close A and open B', 'Close A; then open B'.</summary>
    private List<Attempt>? Joined(ImmutableArray<Word> words, int from, int to)
    {
        for (int i = from + 1; i < to - 1; i++)
        {
            int next = AfterJoint(words, i, to);
            if (next <= i || next >= to || !StartsSentence(words[next]))
            {
                continue;
            }

            int stop = words[i - 1].Is(",") ? i - 1 : i;
            Attempt? first = stop > from ? sentences.Best(words, from, stop, FormPlace.Step) : null;
            if (first is null || first.Issues > 0)
            {
                continue;
            }

            List<Attempt>? more = Joined(words, next, to);
            Attempt? second = more is null ? sentences.Best(words, next, to, FormPlace.Step) : null;
            if (more is not null || second is not null)
            {
                return [first, .. more ?? [second!]];
            }
        }

        return null;
    }

    private int AfterJoint(ImmutableArray<Word> words, int at, int to)
    {
        int next = words[at].Is(";") || words[at].Is(",") ? at + 1 : at;
        foreach (string then in context.Language.Small.Then)
        {
            string[] parts = then.Split(' ');
            if (next + parts.Length < to && parts.Index().All(p => words[next + p.Index].Is(p.Item)))
            {
                return next + parts.Length;
            }
        }

        return next;
    }

    private bool StartsSentence(Word word) =>
        context.Language.At(FormPlace.Step).Any(f => f.Pattern.Leading.Length > 0 && word.Is(f.Pattern.Leading[0]));

    /// <summary>'Close A if B shows low': the condition stands last; read as if it stood first.</summary>
    private List<Attempt>? LateCondition(ImmutableArray<Word> words, int from, int to)
    {
        for (int i = from + 2; i < to - 1; i++)
        {
            if (!context.Language.Small.If.Any(words[i].Is))
            {
                continue;
            }

            int stop = words[i - 1].Is(",") ? i - 1 : i;
            Attempt? action = sentences.Best(words, from, stop, FormPlace.Step);
            DiagnosticList found = [];
            (ConditionPhrase seen, int issues) = new ConditionReader(context, sentences).Read(words, i + 1, to, FormPlace.Condition, found, 1);
            if (action is null || action.Issues + issues > 0)
            {
                continue;
            }

            Span span = context.Source.Between(words[from].Start, words[to - 1].End);
            Sentence whole = Sentence.Of(Operation.If, ("condition", new Slot.Seen(seen)), ("action", new Slot.Done([action.Sentence], action.Sentence.Span)));
            return [new(whole with { Span = span }, 0, 1, [.. found, .. action.Found], false)];
        }

        return null;
    }
}
