using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Parsing;

/// <summary>Reads what fills a gap, and counts what is wrong with it.</summary>
internal sealed class SlotReader(CardContext context, SentenceReader sentences)
{
    private readonly ConditionReader _conditions = new(context, sentences);

    public Filled Read(SlotKind kind, ImmutableArray<Word> words, int from, int to, DiagnosticList found, int depth) => kind switch
    {
        SlotKind.Text => new(new Slot.Text(Squeezed(words, from, to), SpanOf(words, from, to)), 0, IsOpen: true),
        SlotKind.Words => Named(words, from, to, _ => true),
        SlotKind.Noun => Named(words, from, to, p => Rounds.AreKnown(p, context.Names, context.Scope)),
        SlotKind.Name => new(new Slot.Named(PhraseOf(words, from, to)), to - from == 1 && IsName(words[from].Text) ? 0 : 2),
        SlotKind.Item => Named(words, from, to, p => context.Names.Items(p, context.Scope) is { IsFound: true, IsLoose: false }),
        SlotKind.Place => Named(words, from, to, p => context.Names.Places(p, context.Scope).IsFound),
        SlotKind.Role => Named(words, from, to, p => context.Names.Roles(p, context.Scope).IsFound),
        SlotKind.Sign => Named(words, from, to, p => context.Names.Signs(p, context.Scope) is { IsFound: true, IsLoose: false }),
        SlotKind.Fact => Named(words, from, to, p => context.Names.Facts(p, context.Scope).IsFound),
        SlotKind.Protection => Named(words, from, to, p => context.Names.IsProtectionHeld(p) || context.Names.Protections(p, context.Scope).IsFound),
        SlotKind.Position => Named(words, from, to, p => context.Names.IsPosition(p.Text) || context.Names.IsScaleWord(p.Text)),
        SlotKind.ScaleWord => Named(words, from, to, p => context.Names.IsScaleWord(p.Text)),
        SlotKind.Roles => List(words, from, to, p => context.Names.IsNobody(p) || context.Names.Roles(p, context.Scope).IsFound, context.Language.Small.BeforeEachRole),
        SlotKind.Texts => List(words, from, to, _ => true),
        SlotKind.Time => Amount(words, from, to, Dimension.Second, found),
        SlotKind.Value => Amount(words, from, to, null, found),
        SlotKind.Count or SlotKind.Step => Whole(kind, words, from, to),
        SlotKind.Calculation => Calculation(words, from, to),
        SlotKind.Condition => Seen(_conditions.Read(words, from, to, FormPlace.Condition, found, depth + 1)),
        SlotKind.Facts => Seen(_conditions.Read(words, from, to, FormPlace.Fact, found, depth + 1)),
        SlotKind.Action => Action(words, from, to, found, depth),
        _ => Actions(words, from, to, found, depth),
    };

    public Phrase PhraseOf(ImmutableArray<Word> words, int from, int to) => new(WordList.Join(words[from..to]), SpanOf(words, from, to));

    private static bool IsName(string text) => char.IsLetter(text[0]) && text.All(char.IsLetterOrDigit);

    private Span SpanOf(ImmutableArray<Word> words, int from, int to) => context.Source.Between(words[from].Start, words[to - 1].End);

    private string Squeezed(ImmutableArray<Word> words, int from, int to) =>
        WordList.Squeeze(context.Source.Text[words[from].Start..words[to - 1].End]);

    private Filled Named(ImmutableArray<Word> words, int from, int to, Func<Phrase, bool> isKnown)
    {
        Phrase phrase = PhraseOf(words, from, to);
        return new(new Slot.Named(phrase), isKnown(phrase) ? 0 : 1);
    }

    private Filled List(ImmutableArray<Word> words, int from, int to, Func<Phrase, bool> isKnown, string before = "")
    {
        SmallWords small = context.Language.Small;
        ImmutableArray<Phrase>.Builder phrases = ImmutableArray.CreateBuilder<Phrase>();
        int start = from;
        for (int i = from; i <= to; i++)
        {
            bool parts = i == to || words[i].Is(",") || words[i].Is(small.And) || words[i].Is(small.Or);
            if (before.Length > 0 && start > from && start < i && words[start].Is(before))
            {
                start++;
            }

            if (parts && i > start)
            {
                phrases.Add(PhraseOf(words, start, i));
            }

            start = parts ? i + 1 : start;
        }

        int issues = phrases.Count == 0 ? 1 : phrases.Count(p => !isKnown(p));
        return new(new Slot.NamedList(phrases.ToImmutable(), SpanOf(words, from, to)), issues);
    }

    private Filled Amount(ImmutableArray<Word> words, int from, int to, Dimension? dimension, DiagnosticList found)
    {
        Span span = SpanOf(words, from, to);
        string text = Squeezed(words, from, to);
        Quantity quantity;
        bool read = dimension is { } wanted
            ? QuantityText.TryParse(text, span, wanted, found, out quantity)
            : QuantityText.TryParseAny(text, span, found, out quantity);
        return new(new Slot.Amount(quantity, Spaced(text), span), read ? 0 : 1);
    }

    /// <summary>With a space between the number and its unit.</summary>
    private static string Spaced(string text)
    {
        int last = text.AsSpan().LastIndexOfAnyInRange('0', '9');
        int at = text.AsSpan().IndexOfAnyInRange('0', '9');
        while (at >= 0 && at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] is '.' or ','))
        {
            at++;
        }

        return at > 0 && at < text.Length && (char.IsLetter(text[at]) || text[at] == '%') && last < at ? text[..at] + " " + text[at..] : text;
    }

    private Filled Whole(SlotKind kind, ImmutableArray<Word> words, int from, int to)
    {
        Span span = SpanOf(words, from, to);
        bool read = int.TryParse(words[from].Text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && to - from == 1 && number is > 0 and < 100_000;
        Slot slot = kind == SlotKind.Step ? new Slot.StepNumber(number, span) : new Slot.Count(number, span);
        return read ? new(slot, 0) : new(new Slot.Text(Squeezed(words, from, to), span), 2);
    }

    private Filled Calculation(ImmutableArray<Word> words, int from, int to)
    {
        string text = Squeezed(words, from, to);
        ImmutableArray<string> names = CalculationReader.NamesIn(text);
        bool read = names.All(context.Written.Contains);
        return new(new Slot.Calculation(text, SpanOf(words, from, to)), read ? 0 : names.All(LooksWrittenDown) ? 1 : 2);
    }

    /// <summary>A name that was never given is still told from a thing of the book: a capital, or a digit, in one word.</summary>
    private static bool LooksWrittenDown(string name) => name.Length > 0 && !name.Contains(' ', StringComparison.Ordinal) && (char.IsUpper(name[0]) || name.Any(char.IsAsciiDigit));

    private static Filled Seen((ConditionPhrase Phrase, int Issues) read) => new(new Slot.Seen(read.Phrase), read.Issues);

    private Filled Action(ImmutableArray<Word> words, int from, int to, DiagnosticList found, int depth)
    {
        Attempt? attempt = sentences.Best(words, from, to, FormPlace.Step, depth + 1);
        if (attempt is null)
        {
            Sentence unread = StepSentences.Unread(context, words, from, to, found);
            return new(new Slot.Done([unread], unread.Span), 3);
        }

        found.AddRange(attempt.Found);
        return new(new Slot.Done([attempt.Sentence], attempt.Sentence.Span), attempt.Issues, attempt.IsOpen);
    }

    private Filled Actions(ImmutableArray<Word> words, int from, int to, DiagnosticList found, int depth)
    {
        StepSentences reader = new(context, sentences);
        ImmutableArray<Sentence> read = depth > 1 ? [] : reader.Read(words, from, to, found);
        return new(new Slot.Done(read, SpanOf(words, from, to)), read.Count(s => !s.IsRead), IsOpen: true);
    }
}
