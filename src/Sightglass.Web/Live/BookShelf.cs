using System.Collections.Concurrent;
using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Language;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Training.Bets;
using Sightglass.World.Records;

namespace Sightglass.Web.Live;

/// <summary>The book that is served: read once, one plan for each road number.</summary>
public sealed class BookShelf
{
    private readonly Fleet _fleet;
    private readonly ConcurrentDictionary<(string RoadNumber, string Train), ClassBook> _books = new();

    private BookShelf(string folder, ClassBook book, Fleet fleet, string hash) => (Folder, Book, _fleet, Hash) = (folder, book, fleet, hash);

    /// <summary>Full path of the book's folder.</summary>
    public string Folder { get; }

    public ClassBook Book { get; }

    /// <summary>Of the names and bytes of its files, hexadecimal.</summary>
    public string Hash { get; }

    /// <summary>Road numbers, in order; one empty name for a book without.</summary>
    public ImmutableArray<string> RoadNumbers => Book.RoadNumbers.IsEmpty ? [""] : [.. Book.RoadNumbers.Keys];

    /// <summary>Situations in the order of the author's files.</summary>
    public ImmutableArray<Situation> Situations =>
        [.. Book.Situations.Values.OrderBy(s => s.Span)];

    /// <summary>Reads a book. Null where it has errors; all of them are in <paramref name="found"/>.</summary>
    public static BookShelf? Open(string folder, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(folder);
        if (BookReader.Read(folder, KindLibrary.Catalog, found) is not { } read || found.HasErrors)
        {
            return null;
        }

        // A language with an error is left out; the book is served all the same.
        ClassBook book = WordsReader.Into(read, folder, []);
        return Fleet.Compile(book, found) is { } fleet ? new(Path.GetFullPath(folder), book, fleet, BookHash.Of(folder)) : null;
    }

    /// <summary>The plans of all its road numbers and trains.</summary>
    public Fleet Fleet => _fleet;

    /// <summary>A bet on the plant of its situation; null where it does not fit, with the reasons in <paramref name="found"/>.</summary>
    public BoundBet? Bind(Bet bet, DiagnosticList found) => BetBinder.Bind(_fleet, bet, found);

    /// <summary>The plan of a road number alone, or of the first where it is unknown.</summary>
    public Plan PlanOf(string? roadNumber) => PlanOf(roadNumber, null);

    /// <summary>The plan of a start: of its road number, in the train of its situation.</summary>
    public Plan PlanOf(SessionStart start) => PlanOf(start.RoadNumber, start.Situation is { } name ? Book.Situations.GetValueOrDefault(name)?.Train : null);

    /// <summary>What a road number is in a train, or alone where the train is null or unknown: to look at, nothing runs.</summary>
    public ClassBook BookOf(string? roadNumber, string? train) => _books.GetOrAdd(
        (Book.RoadNumbers.ContainsKey(roadNumber ?? "") ? roadNumber! : RoadNumbers[0], train is not null && Book.Trains.ContainsKey(train) ? train : ""),
        key =>
        {
            ClassBook machine = key.RoadNumber.Length > 0 ? Book.For(key.RoadNumber) : Book;
            return key.Train.Length > 0 ? machine.Coupled(key.Train) : machine;
        });

    private Plan PlanOf(string? roadNumber, string? train) => (Book.RoadNumbers.IsEmpty
        ? _fleet.For(null, train)
        : _fleet.For(roadNumber is { Length: > 0 } ? roadNumber : RoadNumbers[0], train) ?? _fleet.For(RoadNumbers[0], train))!;
}
