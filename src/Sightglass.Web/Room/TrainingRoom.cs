using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Training.Drills;
using Sightglass.Web.Live;
using Sightglass.World.Records;
using Sightglass.World.Situations;

namespace Sightglass.Web.Room;

/// <summary>
/// The training room: who is in it, the drills that they work in, and the one clock that drives them. All that it was told is on disk before it holds; after a restart everybody is back
/// at the same second, held. All members may be called from any thread.
/// </summary>
public sealed partial class TrainingRoom : IDisposable
{
    private const string LogName = "room.jsonl";
    private const int LongestName = 60;
    private const int LongestText = 500;
    private const int MostSeats = 500;
    /// <summary>So long may a page be away before the clock stands: one that is read anew is back by then.</summary>
    private static readonly TimeSpan s_away = TimeSpan.FromSeconds(2);

    private readonly Lock _gate = new();
    private readonly BookShelf _shelf;
    private readonly string? _folder;
    private readonly TimeProvider _clock;
    private readonly ITimer _timer;
    private readonly RoomLog? _log;
    private readonly SortedDictionary<int, Seat> _seats = [];
    private readonly SortedDictionary<int, RoomDrill> _drills = [];
    private ImmutableArray<RoomDrill> _living = [];
    private readonly long _origin;
    private readonly Metre[] _metres;
    private readonly Lock _beatGate = new();
    private long _beaten = -1;
    private int _nextSeat = 1;

    /// <param name="shelf">The book.</param>
    /// <param name="folder">Keeps the room's log and the records, or null where nothing is kept.</param>
    /// <param name="clock">The clock on the wall.</param>
    public TrainingRoom(BookShelf shelf, string? folder, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(clock);
        (_shelf, _folder, _clock, _origin) = (shelf, folder, clock, clock.GetTimestamp());
        _metres = [.. Enumerable.Range(0, Metre.Phases).Select(phase => new Metre(clock, _origin, phase))];
        if (folder is not null)
        {
            Directory.CreateDirectory(folder);
            _log = RoomLog.Open(Path.Combine(folder, LogName), out ImmutableArray<RoomEvent> events);
            foreach (RoomEvent line in events)
            {
                Take(line);
            }

            Revive();
        }

        _timer = clock.CreateTimer(_ => Beat(), null, Metre.Step, Metre.Step);
    }

    /// <summary>Raised, outside of any lock, when somebody came or left, or a drill began or ended.</summary>
    public event Action? Changed;

    /// <summary>Everybody in the room, by number.</summary>
    public ImmutableArray<Seat> Seats
    {
        get
        {
            lock (_gate)
            {
                return [.. _seats.Values];
            }
        }
    }

    /// <summary>All its drills, by number; those that are done with among them.</summary>
    public ImmutableArray<RoomDrill> Drills
    {
        get
        {
            lock (_gate)
            {
                return [.. _drills.Values];
            }
        }
    }

    /// <summary>Whether the instructor holds everybody.</summary>
    public bool IsHeld { get; private set; }

    /// <summary>Whether whoever waits may take up a drill for practice by themselves.</summary>
    public bool MayPractise { get; private set; } = true;

    /// <summary>The drills of the book that is served, in the author's order.</summary>
    public ImmutableArray<Drill> Offered => [.. _shelf.Book.Drills.Values.OrderBy(d => d.Span)];

    /// <summary>Somebody comes in.</summary>
    /// <param name="name">As they wrote it.</param>
    /// <param name="seat">Their seat, or null.</param>
    /// <param name="key">What their browser keeps; of it only the hash stays here.</param>
    /// <returns>Null, or why not.</returns>
    public string? Join(string name, out Seat? seat, out string key)
    {
        ArgumentNullException.ThrowIfNull(name);
        (seat, key) = (null, Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(24)));
        string plain = new([.. name.Trim().Where(c => !char.IsControl(c))]);
        if (plain.Length is 0 or > LongestName)
        {
            return plain.Length == 0 ? Say.It("Write your name, so that the instructor knows who you are.") : Say.With($"A name has at most {LongestName} letters.");
        }

        lock (_gate)
        {
            if (_seats.Count >= MostSeats)
            {
                return Say.It("The room is full.");
            }

            if (Told(new RoomEvent.Joined(_clock.GetUtcNow(), _nextSeat, plain, HashOf(key))) is { } trouble)
            {
                return trouble;
            }

            seat = _seats[_nextSeat - 1];
        }

        Changed?.Invoke();
        return null;
    }

    /// <summary>Whose browser this is, or null.</summary>
    public Seat? Find(string? key)
    {
        if (key is not { Length: > 0 and < 200 })
        {
            return null;
        }

        string hash = HashOf(key);
        lock (_gate)
        {
            return _seats.Values.FirstOrDefault(s => s.KeyHash == hash);
        }
    }

    /// <summary>Somebody leaves; what they did stays.</summary>
    public string? Leave(Seat seat)
    {
        ArgumentNullException.ThrowIfNull(seat);
        string? trouble;
        lock (_gate)
        {
            trouble = seat.Drill is { IsAlone: true } drill ? EndNow(drill) : null;
            trouble ??= Told(new RoomEvent.Left(_clock.GetUtcNow(), seat.Number));
        }

        seat.Tell();
        Changed?.Invoke();
        return trouble;
    }

    /// <summary>Somebody who is done with a drill of their own waits again; one that is under way ends.</summary>
    public void Free(Seat seat)
    {
        ArgumentNullException.ThrowIfNull(seat);
        lock (_gate)
        {
            if (seat.Drill is { } drill && EndNow(drill) is null)
            {
                _ = Told(new RoomEvent.Freed(_clock.GetUtcNow(), seat.Number));
            }
        }

        seat.Tell();
        Changed?.Invoke();
    }

    /// <summary>Sets up a drill, held until it is let go.</summary>
    /// <param name="drill">Its name in the book.</param>
    /// <param name="seed">Of the draws.</param>
    /// <param name="number">Case of the draws.</param>
    /// <param name="seats">Who works in it: the first is judged, the others are other people of it, in their order.</param>
    /// <param name="alone">Whether whoever works it also has its clock.</param>
    /// <returns>Null, or why not.</returns>
    public string? Begin(string drill, ulong seed, ulong number, IReadOnlyList<Seat> seats, bool alone = false)
    {
        ArgumentNullException.ThrowIfNull(seats);
        ServedBook book = _shelf.Now;
        if (!book.Book.Drills.TryGetValue(drill, out Drill? named))
        {
            return Say.With($"The book has no drill {drill}.");
        }

        DiagnosticList found = [];
        if (book.Bind(named, new CaseDraws(seed, number), found) is not { } bound)
        {
            return string.Join(' ', found.Select(d => d.Told));
        }

        int people = bound.Situation.People.Length;
        return seats.Count > people
            ? Say.Of(people, $"In this drill there is one person.", $"In this drill there are {people} people.")
            : Began(bound, book.Hash, DrillReplay.StartOf(bound, seed, number), seats, alone);
    }

    /// <summary>Lets somebody be another of the people of a drill that is under way.</summary>
    public string? JoinLate(Seat seat, RoomDrill drill, int person)
    {
        ArgumentNullException.ThrowIfNull(seat);
        ArgumentNullException.ThrowIfNull(drill);
        string? trouble;
        lock (_gate)
        {
            trouble = drill.Session is null || person < 0 || person >= drill.Session.Current.Sights.Length ? Say.It("There is nobody like that in it.")
                : drill.Seats.Any(s => s.Person == person && s != seat) ? Say.It("Somebody is that person already.")
                : Told(new RoomEvent.Seated(_clock.GetUtcNow(), seat.Number, drill.Number, person));
        }

        seat.Tell();
        Changed?.Invoke();
        return trouble;
    }

    /// <summary>Ends a drill before its time; its record is kept.</summary>
    public string? End(RoomDrill drill)
    {
        ArgumentNullException.ThrowIfNull(drill);
        string? trouble;
        lock (_gate)
        {
            trouble = EndNow(drill);
        }

        TellAll(drill);
        Changed?.Invoke();
        return trouble;
    }

    /// <summary>Whether whoever waits may practise by themselves.</summary>
    public void LetPractise(bool may)
    {
        MayPractise = may;
        foreach (Seat seat in Seats)
        {
            seat.Tell();
        }

        Changed?.Invoke();
    }

    public void Dispose()
    {
        _timer.Dispose();
        lock (_gate)
        {
            foreach (RoomDrill drill in _living)
            {
                drill.Session?.Dispose();
            }

            _living = [];
            _log?.Dispose();
        }
    }

    private static string HashOf(string key) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(key)));

    private string? Began(BoundDrill bound, string bookHash, SessionStart start, IReadOnlyList<Seat> seats, bool alone, SessionRecord? repeated = null, RoomDrill? from = null)
    {
        DiagnosticList found = [];
        RoomDrill begun;
        lock (_gate)
        {
            int number = _drills.Count == 0 ? 1 : _drills.Keys.Max() + 1;
            string record = FormattableString.Invariant($"drill-{number:0000}.jsonl");
            RecordHeader header = new(RecordHeader.CurrentFormat, bound.Plan.Book.Title, bookHash, start, from is null || repeated is null ? null : new(from.Record, repeated.End));
            RecordFile? file;
            try
            {
                file = _folder is null ? null : RecordFile.Create(Path.Combine(_folder, record), header, repeated?.Lines);
            }
            catch (IOException e)
            {
                return Say.With($"It could not be written down, so it was not done: {e.Message}");
            }

            DrillSession? session = repeated is null ? DrillSession.Begin(bound, start, _clock, file, found, MetreOf(number)) : DrillSession.Restore(bound, repeated, _clock, file, found, MetreOf(number));
            if (session is null)
            {
                file?.Dispose();
                return string.Join(' ', found.Select(d => d.Told));
            }

            DateTimeOffset now = _clock.GetUtcNow();
            foreach (RoomDrill left in seats.Select(s => s.Drill).OfType<RoomDrill>().Distinct().ToArray())
            {
                if (left.Ended is null && left.Seats.All(seats.Contains))
                {
                    _ = EndNow(left);
                }
            }

            IEnumerable<RoomEvent> lines = [new RoomEvent.Began(now, number, record, start, alone, from?.Number), .. seats.Select((s, i) => new RoomEvent.Seated(now, s.Number, number, PersonOf(bound, i)))];
            if (lines.Select(Told).FirstOrDefault(t => t is not null) is { } trouble)
            {
                session.Dispose();
                return trouble;
            }

            begun = _drills[number];
            (begun.Session, begun.Drill) = (session, bound);
            if (from is not null)
            {
                session.Hold(alone ? HoldReason.Alone : HoldReason.One);
                session.Release(HoldReason.Brief);
            }

            if (IsHeld)
            {
                session.Hold(HoldReason.All);
            }

            session.Changed += () => TellAll(begun);
            _living = _living.Add(begun);
            Presence(begun);
        }

        TellAll(begun);
        Changed?.Invoke();
        return null;
    }

    /// <summary>The first is whom the drill is for; the others are the other people of its situation, in their order.</summary>
    private static int PersonOf(BoundDrill bound, int place) => place == 0 ? bound.Person : Enumerable.Range(0, bound.Situation.People.Length).Where(p => p != bound.Person).ElementAt(place - 1);

    private void TellAll(RoomDrill drill)
    {
        foreach (Seat seat in drill.Seats)
        {
            seat.Tell();
        }
    }
}
