using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Names;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>A card under lint: its tree, its program for each word of its letter where it compiles, and helpers over both.</summary>
internal sealed class LintContext
{
    private readonly Dictionary<Sentence, string> _texts = new(ReferenceEqualityComparer.Instance);

    public LintContext(Card card, CardNames names, DiagnosticList found)
    {
        (Card, Names, Found) = (card, names, found);
        Programs = card.HasErrors ? [] : [.. ProgramsOf(card, names)];
        Flows = [.. Programs.Select(p => PlaceFlow.Of(p.Ops))];
    }

    public Card Card { get; }

    public CardNames Names { get; }

    public ClassBook Book => Names.Book;

    public CardLanguage Language => Card.Language;

    public LintWords Words => Card.Language.Lint;

    public DiagnosticList Found { get; }

    /// <summary>One for each word of the letter; none when the card has errors.</summary>
    public ImmutableArray<CardProgram> Programs { get; }

    /// <summary>Of each program.</summary>
    public ImmutableArray<PlaceFlow> Flows { get; }

    /// <summary>Every sentence of steps and lists, those inside others too.</summary>
    public IEnumerable<Sentence> StepSentences => Card.Elements.SelectMany(e => e switch
    {
        CardElement.Step step => step.Sentences,
        CardElement.ListItem item => item.Sentences,
        _ => ImmutableArray<Sentence>.Empty,
    });

    public IEnumerable<CardElement.Notice> Notices => Card.Elements.OfType<CardElement.Notice>();

    /// <summary>Every operation of every program with where its person may stand.</summary>
    /// <param name="called">Also those of cards that are called, placed at the call: those cards are checked on their own, but not where one comes to them from.</param>
    public IEnumerable<(CardProgram Program, CardOp Op, int Index, ImmutableArray<string> Places)> Ops(bool called = false)
    {
        for (int p = 0; p < Programs.Length; p++)
        {
            for (int i = 0; i < Programs[p].Ops.Length; i++)
            {
                CardOp op = Programs[p].Ops[i];
                if (Flows[p].IsReached(i) && (called || op.Called is null))
                {
                    yield return (Programs[p], op.Called is { } from ? op with { Span = from.At } : op, i, Flows[p].PlacesAt(i));
                }
            }
        }
    }

    /// <summary>The words of a sentence without what is said or explained in it, in small letters, for searching phrases.</summary>
    public string TextOf(Sentence sentence)
    {
        if (!_texts.TryGetValue(sentence, out string? text))
        {
            _texts[sentence] = text = " " + string.Join(' ', WordsOf(sentence).Select(w => w.Text.ToLowerInvariant())) + " ";
        }

        return text;
    }

    /// <summary>The words of a sentence and its tails without free text and without marks.</summary>
    public IEnumerable<Word> WordsOf(Sentence sentence)
    {
        ImmutableArray<Span> free = [.. sentence.WithInner().Where(s => s.Operation != Operation.Unread).SelectMany(s => s.Slots.Values.OfType<Slot.Text>()).Select(t => t.Span)];
        return sentence.Tails.Prepend(sentence).SelectMany(s => WordsIn(s.Span)).Where(w => !w.IsMark && !free.Any(f => w.Start >= f.Start && w.End <= f.End));
    }

    /// <summary>The words of a stretch of the text.</summary>
    public static ImmutableArray<Word> WordsIn(Span span) => span.Source is null ? [] : WordList.Of(span.Source.Text, span.Start, span.End);

    /// <summary>The phrase of a list that stands in a text as <see cref="TextOf"/> gives it, or null.</summary>
    public static string? FirstIn(string text, ImmutableArray<string> phrases) =>
        phrases.FirstOrDefault(p => text.Contains($" {p} ", StringComparison.Ordinal));

    private static IEnumerable<CardProgram> ProgramsOf(Card card, CardNames names)
    {
        ImmutableArray<Letter> letters = CardCompiler.LettersOf(card);
        IEnumerable<ImmutableDictionary<string, string>> cases = letters.IsEmpty
            ? [ImmutableDictionary<string, string>.Empty]
            : letters.SelectMany(l => l.Domain.Select(w => ImmutableDictionary<string, string>.Empty.Add(l.Name, w)));
        return cases.Select(c => CardCompiler.TryCompile(card, names, c, [])).OfType<CardProgram>();
    }
}
