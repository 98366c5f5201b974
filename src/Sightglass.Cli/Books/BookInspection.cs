using System.Collections.Concurrent;
using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book;
using Sightglass.Book.Language;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Training.Bets;
using Sightglass.Training.Drills;
using Sightglass.Trials;
using Sightglass.Trials.Causes;
using Sightglass.Trials.Recordings;

namespace Sightglass.Cli.Books;

/// <summary>A book read with everything in it: the plant of each road number, situations and cards.</summary>
internal sealed class BookInspection
{
    private BookInspection(string folder) => Folder = folder;

    /// <summary>Books that this process has read before; null where every call reads anew, as in a process of its own.</summary>
    public static BookMemory? Memory { get; set; }

    public string Folder { get; }

    public DiagnosticList Found { get; } = [];

    /// <summary>The plants of the class and of its road numbers.</summary>
    public Fleet Fleet { get; private init; } = new();

    /// <summary>Null where the book has errors.</summary>
    public ClassBook? Book { get; private set; }

    /// <summary>Every card that could be read, also with errors.</summary>
    public ImmutableArray<Card> Cards { get; private set; } = [];

    /// <summary>
    /// Reads a book. Cards are read beside the plants, and the situations of each train beside those of others: none asks the other, and a cold start waits for all.
    /// </summary>
    /// <param name="folder">Its folder.</param>
    /// <param name="all">Whether cards and situations are read as well.</param>
    public static BookInspection Read(string folder, bool all = true) =>
        Memory is { } memory && Tongue.Spoken.Code == Tongue.English.Code ? memory.Of(folder, all, ReadAnew) : ReadAnew(folder, all);

    /// <summary>The same, whatever was read before in this process.</summary>
    public static BookInspection ReadAnew(string folder, bool all)
    {
        BookInspection inspection = new(folder);
        Task<CardRead>[]? cards = null;
        bool isFirst = true;
        ImmutableSortedDictionary<string, BookWords>? languages = null;
        inspection.Book = BookReader.Read(folder, KindLibrary.Catalog, inspection.Found,
        [
            (read, found) =>
            {
                languages ??= LanguageOption.Read(read, folder, inspection.Found);
                ClassBook book = read with { Languages = languages };
                cards = isFirst && all && !inspection.Found.HasErrors ? ReadCards(book) : cards;
                isFirst = false; // the class comes alone, its variants beside each other
                if (all || book.TrainInUse is null)
                {
                    inspection.Fleet.Add(book, found); // a verb that runs something builds its own train when it asks for it
                }
            },
        ]);
        inspection.Book = inspection.Book is { } whole && languages is not null ? whole with { Languages = languages } : inspection.Book;
        if (inspection.Book is { } read && cards is not null)
        {
            inspection.ReadSituations(read);
            inspection.Cards = [.. cards.Select(c => inspection.With(c.GetAwaiter().GetResult())).OfType<Card>()];
            inspection.CheckTold(read);
        }

        return inspection;
    }

    /// <summary>The same under another name of its folder, to which its caller may add findings.</summary>
    public BookInspection As(string folder)
    {
        BookInspection same = new(folder) { Fleet = Fleet, Book = Book, Cards = Cards };
        same.Found.AddRange(Found);
        return same;
    }

    /// <summary>Every card by itself, in the names of its train.</summary>
    private static Task<CardRead>[] ReadCards(ClassBook book)
    {
        ConcurrentDictionary<string, Lazy<ClassBook>> trains = new(StringComparer.Ordinal);
        ConcurrentDictionary<(string Train, string Language), Lazy<CardNames>> names = new();
        return [.. book.CardTexts.Select(text => Task.Run(() => ReadCard(text, NamesFor(text))))];

        CardNames NamesFor(SourceText text)
        {
            string train = book.TrainOf(text) ?? "";
            CardLanguage language = CardLanguages.Of(text) ?? EnglishForms.Language;
            Lazy<ClassBook> coupled = trains.GetOrAdd(train, t => new(() => t.Length == 0 ? book : book.Coupled(t)));
            return names.GetOrAdd((train, language.Code), _ => new(() => new(coupled.Value, language))).Value;
        }
    }

    private static CardRead ReadCard(SourceText text, CardNames names)
    {
        DiagnosticList found = [];
        Card? card = CardReader.Read(text, names, found);
        if (card is not null)
        {
            CardLint.Check(card, names, found);
        }

        return new(card, found);
    }

    private Card? With(CardRead read)
    {
        Found.AddRange(read.Found);
        return read.Card;
    }

    private void ReadSituations(ClassBook book)
    {
        if (Found.HasErrors)
        {
            return;
        }

        Task<DiagnosticList>[] ofTrains = [.. book.Situations.Values.GroupBy(s => s.Train).Select(g => Task.Run(() => CheckSituations(g)))];
        Task<DiagnosticList>[] others =
        [
            .. book.Recordings.Values.OrderBy(r => r.Span).Select(r => Beside(found =>
            {
                if (Fleet.MachineOf(null, r.Train) is { } plan)
                {
                    BoundRecording.Bind(r, plan, found);
                }
            })),
            .. book.Bets.Values.OrderBy(b => b.Span).Select(b => Beside(found => BetBinder.Bind(Fleet, b, found))),
            .. book.Drills.Values.OrderBy(d => d.Span).Select(d => Beside(found => DrillBinder.Bind(Fleet, d, found))),
            .. book.Searches.Values.OrderBy(s => s.Span).Select(s => Beside(found => BoundSearch.Bind(Fleet, s, found))),
        ];
        foreach (Task<DiagnosticList> one in ofTrains)
        {
            Found.AddRange(one.GetAwaiter().GetResult());
        }

        foreach (Task<DiagnosticList> one in others.TakeWhile(_ => !Found.HasErrors)) // what comes after an error is often its consequence
        {
            Found.AddRange(one.GetAwaiter().GetResult());
        }
    }

    /// <summary>Whether what drills say that cards tell is told by them.</summary>
    private void CheckTold(ClassBook book)
    {
        if (Found.HasErrors)
        {
            return;
        }

        ILookup<string, Card> cards = Cards.ToLookup(c => Path.GetFileNameWithoutExtension(c.Source.Path), StringComparer.Ordinal);
        Task<DiagnosticList>[] drills = [.. book.Drills.Values.OrderBy(d => d.Span).Select(d => Beside(found =>
        {
            if (book.Situations.TryGetValue(d.Situation, out Situation? situation) && Fleet.MachineOf(null, situation.Train) is { } plan)
            {
                DrillCards.CheckTold(d, plan, d.SolvedBy.SelectMany(name => cards[name]), found);
            }
        }))];
        foreach (Task<DiagnosticList> one in drills)
        {
            Found.AddRange(one.GetAwaiter().GetResult());
        }
    }

    private static Task<DiagnosticList> Beside(Action<DiagnosticList> bind) => Task.Run(() =>
    {
        DiagnosticList found = [];
        bind(found);
        return found;
    });

    private DiagnosticList CheckSituations(IEnumerable<Situation> ofOneTrain)
    {
        DiagnosticList found = [];
        foreach (Situation situation in ofOneTrain)
        {
            TrialPreparation.Check(Fleet, situation, found);
        }

        return found;
    }

    /// <summary>What a card's text says, as far as it could be read, and what is wrong with it.</summary>
    private sealed record CardRead(Card? Card, DiagnosticList Found);
}
