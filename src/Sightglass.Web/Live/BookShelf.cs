using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Training.Bets;
using Sightglass.World.Records;

namespace Sightglass.Web.Live;

/// <summary>The book that is served, read anew when its files change; with errors it is not taken, and the last good one stays. May be called from any thread.</summary>
public sealed class BookShelf
{
    private readonly Lock _gate = new();
    private string _read;
    private string _seen;
    private volatile ServedBook _now;
    private volatile ShelfTrouble? _trouble;

    private BookShelf(string folder, ServedBook now, string stamp) => (Folder, _now, _read, _seen) = (folder, now, stamp, stamp);

    /// <summary>Raised, outside of any lock, when another state is served, or one was not taken.</summary>
    public event Action? Changed;

    /// <summary>Full path of the book's folder.</summary>
    public string Folder { get; }

    /// <summary>What is served now. Whoever asks it twice of one thing keeps it.</summary>
    public ServedBook Now => _now;

    /// <summary>Why the files as they stand are not what is served; null where they are.</summary>
    public ShelfTrouble? Trouble => _trouble;

    public ClassBook Book => Now.Book;

    /// <inheritdoc cref="ServedBook.Hash"/>
    public string Hash => Now.Hash;

    /// <inheritdoc cref="ServedBook.RoadNumbers"/>
    public ImmutableArray<string> RoadNumbers => Now.RoadNumbers;

    /// <inheritdoc cref="ServedBook.Situations"/>
    public ImmutableArray<Situation> Situations => Now.Situations;

    /// <summary>Reads a book. Null where it has errors; all of them are in <paramref name="found"/>.</summary>
    public static BookShelf? Open(string folder, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(folder);
        string whole = Path.GetFullPath(folder);
        string stamp = BookStamp.Of(whole);
        return ServedBook.Read(whole, found) is { } now ? new(whole, now, stamp) : null;
    }

    /// <summary>Looks whether files have changed and come to rest: an editor writes several, or one in pieces. Reads them where they have been the same at two looks.</summary>
    public void Look()
    {
        lock (_gate)
        {
            string stamp = BookStamp.Of(Folder);
            bool rests = stamp == _seen;
            _seen = stamp;
            if (!rests || stamp == _read)
            {
                return;
            }
        }

        Reread();
    }

    /// <summary>Reads the files as they stand, if they are others than those read last: after the program itself has written them.</summary>
    public void Reread()
    {
        lock (_gate)
        {
            string stamp = BookStamp.Of(Folder);
            if (stamp == _read)
            {
                return;
            }

            DiagnosticList found = [];
            ServedBook? read = ServedBook.Read(Folder, found);
            (_read, _seen) = (stamp, stamp);
            _now = read ?? _now;
            _trouble = read is null ? ShelfTrouble.Of(found) : null;
        }

        Changed?.Invoke();
    }

    /// <inheritdoc cref="ServedBook.Bind(Bet, DiagnosticList)"/>
    public BoundBet? Bind(Bet bet, DiagnosticList found) => Now.Bind(bet, found);

    /// <inheritdoc cref="ServedBook.PlanOf(string?)"/>
    public Plan PlanOf(string? roadNumber) => Now.PlanOf(roadNumber);

    /// <inheritdoc cref="ServedBook.PlanOf(SessionStart)"/>
    public Plan PlanOf(SessionStart start) => Now.PlanOf(start);

    /// <inheritdoc cref="ServedBook.BookOf"/>
    public ClassBook BookOf(string? roadNumber, string? train) => Now.BookOf(roadNumber, train);
}
