using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Storage;
using Sightglass.Training.Bets;
using Sightglass.Web.Host;
using Sightglass.Web.Live;

namespace Sightglass.Web.Bets;

/// <summary>The one bet that everybody in the room looks at: what is asked, who said what, and how far it has been shown. All members may be called from any thread.</summary>
public sealed class BetTable : IDisposable
{
    /// <summary>Time on the wall from the first moment to the last.</summary>
    private const double ShowSeconds = 30;

    /// <summary>More phones than a room holds are no phones.</summary>
    private const int MostPhones = 500;

    private static readonly TimeSpan s_beat = TimeSpan.FromMilliseconds(125);

    private readonly Lock _gate = new();
    private readonly BookShelf _shelf;
    private readonly DataDesk _desk;
    private readonly TimeProvider _clock;
    private readonly ITimer _timer;
    private readonly Dictionary<Guid, int> _phones = [];
    private int[] _hands = [];
    private long _shownAt;
    private double _frame;

    public BetTable(BookShelf shelf, DataDesk desk, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(clock);
        (_shelf, _desk, _clock) = (shelf, desk, clock);
        _timer = clock.CreateTimer(_ => Beat(), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
    }

    public Bet? Bet { get; private set; }

    public BetPhase Phase { get; private set; }

    /// <summary>Null while it is worked out, and where it cannot be.</summary>
    public BetFilm? Film { get; private set; }

    /// <summary>Why it cannot be run, or null.</summary>
    public string? Refused { get; private set; }

    /// <summary>Which moment is shown.</summary>
    public int Frame => Film is { } film ? Math.Clamp((int)_frame, 0, film.Frames.Length - 1) : 0;

    /// <summary>Raised, outside of any lock, whenever something has changed.</summary>
    public event Action? Changed;

    /// <summary>How many say each answer, by hand and by phone.</summary>
    public int[] Counts
    {
        get
        {
            lock (_gate)
            {
                return [.. _hands.Select((h, i) => h + _phones.Values.Count(v => v == i))];
            }
        }
    }

    /// <summary>A bet is laid on the table; whatever was there is put away.</summary>
    /// <returns>Ends when it is worked out.</returns>
    public Task Lay(Bet bet)
    {
        ArgumentNullException.ThrowIfNull(bet);
        lock (_gate)
        {
            (Bet, Phase, Film, Refused, _frame) = (bet, BetPhase.Asking, null, null, 0);
            _hands = new int[bet.Answers.Length];
            _phones.Clear();
            Still();
        }

        Changed?.Invoke();
        return Task.Run(() => WorkOut(bet));
    }

    /// <summary>One hand more or fewer for an answer.</summary>
    public void Raise(int answer, int change)
    {
        lock (_gate)
        {
            if (Phase == BetPhase.Asking && answer >= 0 && answer < _hands.Length)
            {
                _hands[answer] = Math.Max(0, _hands[answer] + change);
            }
        }

        Changed?.Invoke();
    }

    /// <summary>A phone says what its holder thinks; a later answer takes the place of an earlier one.</summary>
    /// <returns>Whether it counts.</returns>
    public bool Say(Guid phone, string bet, int answer)
    {
        lock (_gate)
        {
            if (Phase != BetPhase.Asking || Bet?.Name != bet || answer < 0 || answer >= _hands.Length || (_phones.Count >= MostPhones && !_phones.ContainsKey(phone)))
            {
                return false;
            }

            _phones[phone] = answer;
        }

        Changed?.Invoke();
        return true;
    }

    /// <summary>What a phone has said, or null.</summary>
    public int? SaidBy(Guid phone)
    {
        lock (_gate)
        {
            return _phones.TryGetValue(phone, out int answer) ? answer : null;
        }
    }

    /// <summary>Shows it happening, from the moment that is shown now; from the beginning where it is over.</summary>
    public void Run()
    {
        lock (_gate)
        {
            if (Film is not { } film)
            {
                return;
            }

            _frame = Frame >= film.Frames.Length - 1 ? 0 : _frame;
            Phase = Phase == BetPhase.Told ? BetPhase.Told : BetPhase.Running;
            _shownAt = _clock.GetTimestamp();
            _timer.Change(s_beat, s_beat);
        }

        Changed?.Invoke();
    }

    /// <summary>Shows one moment and stays there.</summary>
    public void Show(int frame) => Go(film =>
    {
        _frame = Math.Clamp(frame, 0, film.Frames.Length - 1);
        Still();
    });

    public void Dispose() => _timer.Dispose();

    private void Still() => _timer.Change(Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);

    private void WorkOut(Bet bet)
    {
        DiagnosticList found = [];
        BetFilm? film = _shelf.Bind(bet, found) is { } bound ? BetFilm.Of(bound) : null;
        lock (_gate)
        {
            if (Bet != bet)
            {
                return; // another one was laid meanwhile
            }

            (Film, Refused) = (film, film is null ? string.Join("; ", found.Select(d => d.Told)) : film.Result.Trouble);
        }

        Changed?.Invoke();
    }

    private void Beat() => Go(film =>
    {
        long now = _clock.GetTimestamp();
        _frame += _clock.GetElapsedTime(_shownAt, now).TotalSeconds / ShowSeconds * film.Frames.Length;
        _shownAt = now;
    });

    /// <summary>To another moment. Who comes to the last one for the first time has seen how it ends.</summary>
    private void Go(Action<BetFilm> move)
    {
        bool told;
        lock (_gate)
        {
            if (Film is not { } film || Phase == BetPhase.Asking)
            {
                return;
            }

            move(film);
            bool isLast = Frame == film.Frames.Length - 1;
            told = isLast && Phase == BetPhase.Running;
            if (isLast)
            {
                Phase = BetPhase.Told;
                Still();
            }
        }

        if (told)
        {
            Keep();
        }

        Changed?.Invoke();
    }

    /// <summary>What the group said is kept without names: it shows which lesson is still needed.</summary>
    private void Keep()
    {
        DateTimeOffset now = _clock.GetUtcNow();
        using RecordsContext records = _desk.Records();
        records.BetRounds.Add(new()
        {
            Id = Guid.CreateVersion7(now),
            Book = _shelf.Book.Title,
            Bet = Bet!.Name,
            At = now,
            Counts = string.Join(',', Counts.Select(c => c.ToString(CultureInfo.InvariantCulture))),
            CameTrue = Film!.Result.CameTrue,
        });
        records.SaveChanges();
    }
}
