using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Programs;

/// <summary>A card that calls another: the other's steps are put down in place, with names and letters of their own.</summary>
internal sealed partial class StepCompiler
{
    /// <summary>Operations after which no further card and no further round is put down: cards that call cards that call cards grow beyond all measure.</summary>
    private const int MostOperations = 3_000;

    private void DoCard(Sentence sentence)
    {
        if (Called(sentence) is not { } called || LettersFor(sentence, called) is not { } words)
        {
            return;
        }

        if (_ops.Count > MostOperations)
        {
            Found.Add(CardMessages.TooManySteps(sentence.Span, MostOperations));
            return;
        }

        DiagnosticList found = [.. called.Found];
        NameResolver resolver = new(Resolver.Names, new Scope(CardCompiler.LettersOf(called.Card), words), found);
        CheckRoles(sentence, called.Card, resolver);
        CheckNeeds(sentence, called.Card);
        Binding? binding = words.Select(w => new Binding(w.Key, w.Value)).FirstOrDefault();
        _ops.Add(new CardOp.Call(called.Card.Title, binding) { Step = _step, Span = sentence.Span, Person = _person });
        int from = _ops.Count;
        WrittenNames written = _written.OfCalled();
        StepCompiler inner = new(called.Card, resolver, written, _ops, _titles.Add(called.Card.Title));
        inner.CompileInPlace();
        _ops.MarkCalled(from, called.Card.Title, _step, sentence.Span, _person);
        _mustNevers.AddRange(MustNevers(called.Card, resolver, written));
        _mustNevers.AddRange(inner._mustNevers);
        Report(sentence, called.Card, found);
    }

    /// <summary>The steps, then what is done 'if not', then on behind both.</summary>
    private void CompileInPlace()
    {
        CompileSteps();
        _ops.Place(_endLabel);
        if (_asides.Count == 0)
        {
            return;
        }

        int after = _ops.NewLabel();
        _ops.Add(new CardOp.Jump(after) { Step = _step, Span = _card.Source.Between(0, 0) });
        CompileAsides();
        _ops.Place(after);
    }

    /// <summary>Of a call that was left out: what it must never let happen stays forbidden.</summary>
    private void Inherit(Sentence sentence)
    {
        if (Called(sentence) is { } called && LettersFor(sentence, called) is { } words)
        {
            _mustNevers.AddRange(MustNevers(called.Card, new(Resolver.Names, new Scope(CardCompiler.LettersOf(called.Card), words), []), new()));
        }
    }

    private static IEnumerable<FactCondition> MustNevers(Card card, NameResolver resolver, WrittenNames written) =>
        card.HeadSentences.Where(s => s.Operation == Operation.MustNever).SelectMany(s => new FactCompiler(resolver, written).List(s.ConditionAt("facts")));

    private CalledCard? Called(Sentence sentence)
    {
        if (sentence.PhraseAt("title") is not { } title)
        {
            return null;
        }

        if (_titles.Any(t => Resolver.Names.Key.Of(t) == Resolver.Names.Key.Of(title.Text)))
        {
            Found.Add(CardMessages.CallsItself(sentence.Span, [.. _titles, title.Text]));
            return null;
        }

        CalledCard? called = Resolver.Names.Library.Find(title.Text);
        if (called is null)
        {
            Found.Add(CardMessages.NoSuchCard(title.Span, title.Text, Nearest.Find(title.Text, Resolver.Names.Library.Titles)));
        }

        return called;
    }

    /// <summary>What the called card's letter stands for: a word, or what a letter of this card stands for. Null after an error.</summary>
    private ImmutableDictionary<string, string>? LettersFor(Sentence sentence, CalledCard called)
    {
        ImmutableArray<Letter> letters = CardCompiler.LettersOf(called.Card);
        Phrase? given = sentence.PhraseAt("letter");
        bool only = given is null && sentence.PhraseAt("word") is not null && letters.Length == 1;
        Letter? set = only ? letters[0] : given is null ? null : letters.FirstOrDefault(l => l.Name == given.Text);
        if (given is not null && set is null)
        {
            Found.Add(CardMessages.NoSuchLetter(given.Span, called.Card.Title, given.Text, letters.Select(l => l.Name)));
            return null;
        }

        if (given is null && letters.IsEmpty && sentence.PhraseAt("word") is { } none)
        {
            Found.Add(CardMessages.NoSuchLetter(none.Span, called.Card.Title, none.Text, []));
            return null;
        }

        if (letters.FirstOrDefault(l => l != set) is { } open)
        {
            Found.Add(CardMessages.LetterNotSet(sentence.Span, called.Card.Title, open.Name, open.Domain));
            return null;
        }

        if (set is null || sentence.PhraseAt("word") is not { } word)
        {
            return ImmutableDictionary<string, string>.Empty;
        }

        string value = Resolver.Scope.Find(Resolver.Names.Key.Bare(word.Words) is [{ } letter] ? letter : word.Text) is { } own ? Resolver.Scope.WordOf(own) : word.Text;
        string? known = set.Domain.FirstOrDefault(d => Resolver.Names.Key.Of(d) == Resolver.Names.Key.Of(value));
        if (known is null)
        {
            Found.Add(CardMessages.NotOfLetter(word.Span, called.Card.Title, set.Name, value, set.Domain));
            return null;
        }

        return ImmutableDictionary<string, string>.Empty.Add(set.Name, known);
    }

    private void CheckRoles(Sentence sentence, Card called, NameResolver resolver)
    {
        ImmutableArray<Role> mayWork = resolver.Roles(called.Head(Operation.For)?.PhrasesAt("roles") ?? []);
        ImmutableArray<Role> work = _person is { } one ? [one] : Resolver.Roles(_card.Head(Operation.For)?.PhrasesAt("roles") ?? []);
        string[] others = [.. work.Where(r => !mayWork.Contains(r)).Select(r => r.Name)];
        if (others.Length > 0)
        {
            Found.Add(CardMessages.CalledForOthers(sentence.Span, called.Title, mayWork.Select(r => r.Name), others));
        }
    }

    private void CheckNeeds(Sentence sentence, Card called)
    {
        string[] missing = [.. Needs(called).Where(n => !Needs(_card).Contains(n, StringComparer.OrdinalIgnoreCase))];
        if (missing.Length > 0)
        {
            Found.Add(CardMessages.CalledNeeds(sentence.Span, called.Title, missing));
        }
    }

    private static IEnumerable<string> Needs(Card card) => (card.Head(Operation.Needs)?.PhrasesAt("needs") ?? []).Select(p => p.Text);

    /// <summary>What is wrong in the called card is told where it is called; a circle as what it is.</summary>
    private void Report(Sentence sentence, Card called, DiagnosticList found)
    {
        if (found.FirstOrDefault(d => d.Severity == Severity.Error) is { } first)
        {
            Found.Add(first.Code == CardMessages.CircleCode ? first with { Span = sentence.Span } : CardMessages.CalledHasErrors(sentence.Span, called.Title, first));
        }
    }
}
