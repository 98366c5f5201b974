using System.Collections.Concurrent;
using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Language;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Training.Bets;
using Sightglass.Training.Drills;
using Sightglass.World.Records;
using Sightglass.World.Situations;

namespace Sightglass.Web.Live;

/// <summary>One state of a book's files, read and compiled: one plan for each road number. It never changes; whoever runs on it goes on with it.</summary>
public sealed class ServedBook
{
    private readonly ConcurrentDictionary<(string RoadNumber, string Train), ClassBook> _books = new();
    private readonly ConcurrentDictionary<string, DrillVariants> _drills = new(StringComparer.Ordinal);

    private ServedBook(ClassBook book, Fleet fleet, string hash, ImmutableArray<Diagnostic> unsaid) => (Book, Fleet, Hash, Unsaid) = (book, fleet, hash, unsaid);

    public ClassBook Book { get; }

    /// <summary>The plans of all its road numbers and trains.</summary>
    public Fleet Fleet { get; }

    /// <summary>Of the names and bytes of its files, hexadecimal.</summary>
    public string Hash { get; }

    /// <summary>Errors of its languages: what it says in one that has some is left out.</summary>
    public ImmutableArray<Diagnostic> Unsaid { get; }

    /// <summary>Road numbers, in order; one empty name for a book without.</summary>
    public ImmutableArray<string> RoadNumbers => Book.RoadNumbers.IsEmpty ? [""] : [.. Book.RoadNumbers.Keys];

    /// <summary>Situations in the order of the author's files.</summary>
    public ImmutableArray<Situation> Situations => [.. Book.Situations.Values.OrderBy(s => s.Span)];

    /// <summary>Reads a book. Null where it has errors; all of them are in <paramref name="found"/>.</summary>
    public static ServedBook? Read(string folder, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(found);
        string hash = Directory.Exists(folder) ? BookHash.Of(folder) : "";
        if (BookReader.Read(folder, KindLibrary.Catalog, found) is not { } read || found.HasErrors)
        {
            return null;
        }

        // A language with an error is left out; the book is served all the same.
        DiagnosticList unsaid = [];
        ClassBook book = WordsReader.Into(read, folder, unsaid);
        return Fleet.Compile(book, found) is { } fleet ? new(book, fleet, hash, [.. unsaid.Where(d => d.Severity == Severity.Error)]) : null;
    }

    /// <summary>A bet on the plant of its situation; null where it does not fit, with the reasons in <paramref name="found"/>.</summary>
    public BoundBet? Bind(Bet bet, DiagnosticList found) => BetBinder.Bind(Fleet, bet, found);

    /// <summary>A drill of the book on the machine of a case, shared by all who work it; null where it does not fit, with the reasons in <paramref name="found"/>.</summary>
    public BoundDrill? Bind(Drill drill, CaseDraws draws, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(drill);
        return _drills.GetOrAdd(drill.Name, (_, of) => new(Fleet, of), drill).For(draws, found);
    }

    /// <summary>The plan of a road number alone, or of the first where it is unknown.</summary>
    public Plan PlanOf(string? roadNumber) => PlanOf(roadNumber, null);

    /// <summary>The plan of a start: of its road number, in the train of its situation.</summary>
    public Plan PlanOf(SessionStart start)
    {
        ArgumentNullException.ThrowIfNull(start);
        return PlanOf(start.RoadNumber, start.Situation is { } name ? Book.Situations.GetValueOrDefault(name)?.Train : null);
    }

    /// <summary>What a road number is in a train, or alone where the train is null or unknown: to look at, nothing runs.</summary>
    public ClassBook BookOf(string? roadNumber, string? train) => _books.GetOrAdd(
        (Book.RoadNumbers.ContainsKey(roadNumber ?? "") ? roadNumber! : RoadNumbers[0], train is not null && Book.Trains.ContainsKey(train) ? train : ""),
        key =>
        {
            ClassBook machine = key.RoadNumber.Length > 0 ? Book.For(key.RoadNumber) : Book;
            return key.Train.Length > 0 ? machine.Coupled(key.Train) : machine;
        });

    private Plan PlanOf(string? roadNumber, string? train) => (Book.RoadNumbers.IsEmpty
        ? Fleet.For(null, train)
        : Fleet.For(roadNumber is { Length: > 0 } ? roadNumber : RoadNumbers[0], train) ?? Fleet.For(RoadNumbers[0], train))!;
}
