using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Names;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards;

/// <summary>Makes programs of cards that were read without errors.</summary>
public static class CardCompiler
{
    /// <summary>Findings after which no further word of a letter is tried: they would mostly say the same.</summary>
    private const int EnoughFindings = 200;

    /// <summary>The program for one binding of the card's letter.</summary>
    /// <param name="card">Read against the same book.</param>
    /// <param name="book">Whose names it uses; may be the book as changed for a road number.</param>
    /// <param name="binding">The word for the card's letter; null for a card without one (or for the first of its words).</param>
    /// <exception cref="ArgumentException">The card has errors for this book, or sentences that nothing runs yet.</exception>
    public static CardProgram Compile(Card card, ClassBook book, string? binding = null)
    {
        ArgumentNullException.ThrowIfNull(card);
        DiagnosticList found = [];
        CardProgram? program = TryCompile(card, book, binding, found);
        return program ?? throw new ArgumentException("The card cannot be compiled: " + string.Join(Environment.NewLine, found), nameof(card));
    }

    /// <summary>The program, or null with the reasons in <paramref name="found"/>.</summary>
    public static CardProgram? TryCompile(Card card, ClassBook book, string? binding, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(card);
        ArgumentNullException.ThrowIfNull(found);
        ImmutableDictionary<string, string> words = ImmutableDictionary<string, string>.Empty;
        if (binding is not null && LettersOf(card) is [{ } letter, ..])
        {
            words = words.Add(letter.Name, binding);
        }

        return TryCompile(card, new CardNames(book, card.Language), words, found);
    }

    /// <summary>The program for given words of all letters, or null with the reasons in <paramref name="found"/>.</summary>
    public static CardProgram? TryCompile(Card card, CardNames names, ImmutableDictionary<string, string> words, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(card);
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(found);
        DiagnosticList own = [];
        CardProgram program = Compile(card, names, words, own);
        found.AddRange(own);
        return card.HasErrors || own.HasErrors ? null : program;
    }

    /// <summary>
    /// What each letter of a card may stand for, in the order in which it is tried: the first word whose condition holds when the card
    /// starts is taken.
    /// </summary>
    public static ImmutableArray<BindingCase> Bindings(Card card, ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(card);
        return [.. Bindings(card, new CardNames(book, card.Language), [])];
    }

    /// <summary>Compiles for every word a letter may stand for and reports each finding once.</summary>
    internal static void CheckNames(Card card, CardNames names, DiagnosticList found)
    {
        DiagnosticList all = [];
        ImmutableArray<Letter> letters = LettersOf(card);
        CheckLetters(letters, names, all);
        IEnumerable<ImmutableDictionary<string, string>> cases = letters.IsEmpty
            ? [ImmutableDictionary<string, string>.Empty]
            : letters.SelectMany(l => l.Domain.Select(w => ImmutableDictionary<string, string>.Empty.Add(l.Name, w)));
        foreach (ImmutableDictionary<string, string> words in cases.TakeWhile(_ => all.Count < EnoughFindings))
        {
            Compile(card, names, words, all);
        }

        _ = Bindings(card, names, all);
        found.AddRange(all.DistinctBy(d => (d.Code, d.Span.Start, d.Span.Length)));
    }

    internal static ImmutableArray<Letter> LettersOf(Card card) => [.. card.HeadSentences.Select(Letter.Of).OfType<Letter>().DistinctBy(l => l.Name).Take(CardReader.MostLetters)];

    private static void CheckLetters(ImmutableArray<Letter> letters, CardNames names, DiagnosticList found)
    {
        foreach (Letter letter in letters.Where(l => names.Language.Small.Articles.Contains(l.Name, StringComparer.OrdinalIgnoreCase)))
        {
            found.Add(CardMessages.NameTaken(letter.Span, letter.Name));
        }

        foreach (Letter letter in letters.Where(l => l.Domain.Length > Letter.MostWords))
        {
            found.Add(CardMessages.TooManyWords(letter.Span, Letter.MostWords));
        }
    }

    private static List<BindingCase> Bindings(Card card, CardNames names, DiagnosticList found)
    {
        List<BindingCase> cases = [];
        ImmutableArray<Letter> letters = LettersOf(card);
        foreach (Letter letter in letters)
        {
            foreach (string word in letter.Domain)
            {
                Scope scope = new(letters, ImmutableDictionary<string, string>.Empty.Add(letter.Name, word), letter);
                ConditionCompiler conditions = new(new NameResolver(names, scope, found), new WrittenNames());
                cases.Add(new(letter.Name, word, letter.Condition is null ? null : conditions.Compile(letter.Condition)));
            }
        }

        return cases;
    }

    internal static CardProgram Compile(Card card, CardNames names, ImmutableDictionary<string, string> words, DiagnosticList found)
    {
        ImmutableArray<Letter> letters = LettersOf(card);
        Scope scope = new(letters, words);
        NameResolver resolver = new(names, scope, found);
        WrittenNames written = new();
        StepCompiler steps = new(card, resolver, written);
        ImmutableArray<CardOp> ops = PlaceSettler.Settle(steps.Compile());
        Sentence? useWhen = card.Head(Operation.UseWhen);
        FactCompiler facts = new(resolver, written);
        return new()
        {
            Title = card.Title,
            Bindings = [.. letters.Select(l => new Binding(l.Name, scope.WordOf(l)))],
            For = resolver.Roles(card.Head(Operation.For)?.PhrasesAt("roles") ?? []),
            Told = resolver.Roles([.. card.HeadSentences.SelectMany(s => s.PhrasesAt("told"))]),
            Needs = [.. (card.Head(Operation.Needs)?.PhrasesAt("needs") ?? []).Select(p => p.Text)],
            UseWhen = useWhen?.ConditionAt("condition") is { } seen ? new ConditionCompiler(resolver, new WrittenNames()).Compile(seen) : null,
            MustNever = [.. card.HeadSentences.Where(s => s.Operation == Operation.MustNever).SelectMany(s => facts.List(s.ConditionAt("facts"))).Concat(steps.InheritedMustNevers).DistinctBy(f => f.Name)],
            DoneWhen = facts.Compile(card.Head(Operation.DoneWhen)?.ConditionAt("facts")),
            StaysSoSeconds = card.Head(Operation.StaysSo)?.AmountAt("time")?.Quantity.Si ?? 0,
            Ops = ops,
            Names = written.All,
            Counters = steps.Counters,
        };
    }
}
