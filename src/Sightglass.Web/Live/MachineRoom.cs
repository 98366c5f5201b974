using Sightglass.Basics.Diagnostics;
using Sightglass.Plant.Plans;
using Sightglass.World.Records;

namespace Sightglass.Web.Live;

/// <summary>The one machine that everybody sees: its session, its record on disk and the clock that drives it.</summary>
public sealed class MachineRoom : IDisposable
{
    private const string CurrentName = "current.jsonl";
    private static readonly TimeSpan s_beat = TimeSpan.FromMilliseconds(100);

    private readonly Lock _gate = new();
    private readonly TimeProvider _clock;
    private readonly string? _records;
    private readonly ITimer _timer;
    private string _begunBy;
    private int _looking;

    /// <param name="shelf">The book.</param>
    /// <param name="records">Folder for records, or null where nothing is kept.</param>
    /// <param name="clock">The clock on the wall.</param>
    public MachineRoom(BookShelf shelf, string? records, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(clock);
        (Shelf, _records, _clock) = (shelf, records, clock);
        ServedBook book = shelf.Now;
        Session = Restored(book) ?? BeginFirst(book);
        _begunBy = book.Hash;
        Session.Changed += Tell;
        _timer = clock.CreateTimer(_ => Beat(), null, s_beat, s_beat);
    }

    public BookShelf Shelf { get; }

    public LiveSession Session { get; private set; }

    /// <summary>Whether the session was taken up again from a record.</summary>
    public bool WasRestored { get; private set; }

    /// <summary>Whether the book has become another one since the session began, which goes on by the one it began with.</summary>
    public bool IsByAnEarlierBook => _begunBy != Shelf.Hash;

    /// <summary>Raised when the session has changed, or when there is a new one.</summary>
    public event Action? Changed;

    /// <summary>Ends the session for everybody and begins another.</summary>
    /// <returns>Null, or why it could not be begun.</returns>
    public string? Begin(SessionStart start)
    {
        lock (_gate)
        {
            DiagnosticList found = new();
            LiveSession old = Session;
            ServedBook book = Shelf.Now;
            if (LiveSession.Begin(book.PlanOf(start), start, _clock, null, found) is not { } tried)
            {
                return string.Join("; ", found.Select(d => d.Told));
            }

            tried.Dispose();
            old.Changed -= Tell;
            old.Close();
            old.Dispose();
            Session = LiveSession.Begin(book.PlanOf(start), start, _clock, NewRecord(start, book), found)!;
            _begunBy = book.Hash;
            Session.Changed += Tell;
            WasRestored = false;
        }

        Changed?.Invoke();
        return null;
    }

    public void Dispose()
    {
        _timer.Dispose();
        Session.Dispose();
    }

    private LiveSession BeginFirst(ServedBook book)
    {
        DiagnosticList found = new();
        // What a bet is run on is no welcome: those come last.
        foreach (Book.Model.Situation situation in book.Situations.OrderBy(s => book.Book.Bets.Values.Any(b => b.Situation == s.Name)))
        {
            SessionStart start = new(situation.RoadNumbers.FirstOrDefault() ?? book.RoadNumbers[0], situation.Name, 1, 0);
            using LiveSession? tried = LiveSession.Begin(book.PlanOf(start), start, _clock, null, found);
            if (tried is not null)
            {
                return LiveSession.Begin(tried.Plan, start, _clock, NewRecord(start, book), found)!;
            }
        }

        SessionStart bare = new(book.RoadNumbers[0], null, 1, 0);
        return LiveSession.Begin(book.PlanOf(bare), bare, _clock, NewRecord(bare, book), found)!;
    }

    private LiveSession? Restored(ServedBook book)
    {
        if (_records is null || RecordFile.Open(Path.Combine(_records, CurrentName), out SessionRecord? record) is not { } file)
        {
            return null;
        }

        DiagnosticList found = new();
        bool fits = record!.Header.BookHash == book.Hash && record.Lines.All(l => l.Hash is null);
        LiveSession? session = fits ? LiveSession.Restore(book.PlanOf(record.Header.Start), record, _clock, file, found) : null;
        if (session is null)
        {
            file.Dispose();
        }

        WasRestored = session is not null;
        return session;
    }

    /// <summary>A fresh record; the one before is kept under a number.</summary>
    private RecordFile? NewRecord(SessionStart start, ServedBook book)
    {
        if (_records is null)
        {
            return null;
        }

        Directory.CreateDirectory(_records);
        string current = Path.Combine(_records, CurrentName);
        if (File.Exists(current))
        {
            int number = 1;
            while (File.Exists(Path.Combine(_records, $"run-{number}.jsonl")))
            {
                number++;
            }

            File.Move(current, Path.Combine(_records, $"run-{number}.jsonl"));
        }

        return RecordFile.Create(current, new(RecordHeader.CurrentFormat, book.Book.Title, book.Hash, start));
    }

    /// <summary>A beat that comes while the last one still works is left out.</summary>
    private void Beat()
    {
        if (Interlocked.Exchange(ref _looking, 1) == 0)
        {
            try
            {
                Session.Look();
            }
            catch (ObjectDisposedException)
            {
                // The session was changed in between; the next beat looks at the new one.
            }
            finally
            {
                Volatile.Write(ref _looking, 0);
            }
        }
    }

    private void Tell() => Changed?.Invoke();
}
