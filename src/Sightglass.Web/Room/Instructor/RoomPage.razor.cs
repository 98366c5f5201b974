using System.Collections.Immutable;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Basics.Language;
using Sightglass.Web.Live;
using Sightglass.Web.Parts;

namespace Sightglass.Web.Room.Instructor;

/// <summary>The training room as the instructor has it: everybody at a glance, one of them in depth, and the clock. It is drawn anew four times a second at most, and only where something changed.</summary>
public sealed partial class RoomPage : IAsyncDisposable
{
    private static readonly string[] s_keys = [" ", "b", "B", "?", .. Enumerable.Range(1, 9).Select(n => $"{n}")];
    private static readonly TimeSpan s_beat = TimeSpan.FromMilliseconds(250);

    private readonly CancellationTokenSource _gone = new();
    private readonly Dictionary<int, RunOn> _runs = [];
    private ImmutableArray<SeatRow> _working = [];
    private ImmutableArray<Seat> _waiting = [];
    private ImmutableArray<RoomDrill> _done = [];
    private int? _chosen;
    private string? _refused;
    private Courier _courier = null!;
    private int _changes;
    private Seen _seen = new(-1, 0, []);
    private IJSObjectReference? _script;
    private IJSObjectReference? _listening;
    private DotNetObjectReference<RoomPage>? _self;

    /// <summary>The drill that is to be set up, where another page leads here for that.</summary>
    [SupplyParameterFromQuery(Name = "drill")]
    private string? Named { get; set; }

    [Inject]
    private TrainingRoom Room { get; set; } = null!;

    [Inject]
    private MachineRoom Machines { get; set; } = null!;

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    [Inject]
    private RoomKey Key { get; set; } = null!;

    private static ImmutableArray<Pace> Paces { get; } = [.. Enum.GetValues<Pace>().Where(p => p != Pace.Hold)];

    private BookShelf Shelf => Machines.Shelf;

    private SeatRow? Deep => _working.FirstOrDefault(r => r.Seat.Number == _chosen);

    /// <summary>Whoever works alone has their own clock.</summary>
    private ImmutableArray<DrillSession> Living => [.. Room.Drills.Where(d => !d.IsAlone).Select(d => d.Session).OfType<DrillSession>()];

    private ImmutableArray<DrillSession> Unbegun => [.. Living.Where(s => s.Held.HasFlag(HoldReason.Brief))];

    private string Heading
    {
        get
        {
            string[] drills = [.. _working.Select(r => r.Drill!.Start.Drill).OfType<string>().Distinct()];
            return drills is [var only] ? Words.Capital(only) : Say.It("The training room");
        }
    }

    private string Lead
    {
        get
        {
            string here = Say.Of(_working.Length + _waiting.Length, $"One person here.", $"{_working.Length + _waiting.Length} people here.");
            RoomDrill[] drills = [.. _working.Select(r => r.Drill!).Distinct()];
            string? use = drills is [{ Drill: { } bound } only, ..] && drills.All(d => d.Start.Drill == only.Start.Drill)
                ? string.Join(", ", new[] { bound.Drill.IsQualifying ? Say.It("qualifying") : Say.It("practice"), Say.With($"at most {bound.Drill.TimeLimit / 60:0} min"), drills.All(d => d.Start == only.Start) ? Say.With($"seed {only.Start.Seed}, case {only.Start.Case}") : "" }.Where(s => s.Length > 0)) + ". "
                : "";
            return Say.Begin(use + here);
        }
    }

    private ImmutableArray<(string Key, string Words)> AllKeys =>
    [
        ("1–9", Say.It("one of those who work in a drill, in depth")), (Say.As("key", "Space"), Say.It("hold everybody, and let everybody go")), ("B", Say.It("bookmark this moment of the one in depth")), ("F", Say.It("put in a fault")),
        ("M", Say.It("a message by radio")), ("N", Say.It("advice, kept apart from what counts")), ("?", Say.It("this list")),
    ];

    protected override void OnInitialized()
    {
        _courier = new(InvokeAsync, Send);
        Room.Changed += OnChanged;
        Take();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
        {
            return;
        }

        try
        {
            _script = await Js.InvokeAsync<IJSObjectReference>("import", "./assets/room.js");
            _self = DotNetObjectReference.Create(this);
            _listening = await _script.InvokeAsync<IJSObjectReference>("listen", _self, s_keys);
        }
        catch (JSDisconnectedException)
        {
            return; // the browser has left in the meantime
        }

        _ = Beat();
        if (Named is { Length: > 0 })
        {
            await Call("open", "setup");
        }
    }

    /// <summary>A key was pressed while nothing is typed.</summary>
    [JSInvokable]
    public async Task PressKey(string key)
    {
        switch (key)
        {
            case " ":
                TurnHold();
                break;
            case "b" or "B" when Deep is { Drill: { } drill }:
                Refuse(Room.Bookmark(drill, ""));
                break;
            case "?":
                await Call("open", "keys");
                break;
            case [>= '1' and <= '9'] when key[0] - '1' < _working.Length:
                Choose(_working[key[0] - '1'].Seat.Number);
                break;
        }
    }

    public async ValueTask DisposeAsync()
    {
        Room.Changed -= OnChanged;
        await _gone.CancelAsync();
        foreach (RunOn run in _runs.Values)
        {
            run.Dispose();
        }

        try
        {
            if (_listening is not null)
            {
                await _listening.InvokeVoidAsync("stop");
                await _listening.DisposeAsync();
            }

            if (_script is not null)
            {
                await _script.DisposeAsync();
            }
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and its listeners with it.
        }

        _self?.Dispose();
        _gone.Dispose();
    }

    /// <summary>Asks four times a second whether something is to be shown.</summary>
    private async Task Beat()
    {
        try
        {
            using PeriodicTimer timer = new(s_beat, Clock);
            while (await timer.WaitForNextTickAsync(_gone.Token))
            {
                if (Looked() is var now && !now.IsSame(_seen))
                {
                    _seen = now;
                    _courier.Want();
                }
            }
        }
        catch (OperationCanceledException)
        {
            // The page is gone.
        }
        catch (ObjectDisposedException)
        {
            // The page is gone.
        }
    }

    private void OnChanged() => Interlocked.Increment(ref _changes);

    private Seen Looked()
    {
        ImmutableArray<Seat> seats = Room.Seats;
        long away = seats.Any(s => s.LostAt is not null && SeatRows.IsWorking(s)) ? Clock.GetUtcNow().ToUnixTimeSeconds() : 0;
        return new(Volatile.Read(ref _changes), away, [.. Room.Drills.Where(d => d.Ended is null).SelectMany(d => new object?[] { d.Last, d.Session?.Held, d.Session?.Wanted })]);
    }

    private Task Send()
    {
        Take();
        StateHasChanged();
        return Task.CompletedTask;
    }

    private void Take()
    {
        (_working, _waiting) = SeatRows.Of(Room.Seats, Clock.GetUtcNow());
        _done = [.. Room.Drills.Where(d => d.Ended is not null).Reverse().Take(20)];
        _chosen = _working.Any(r => r.Seat.Number == _chosen) ? _chosen : _working.FirstOrDefault()?.Seat.Number;
    }

    /// <summary>Read aloud in two halves: <c>123 456</c>.</summary>
    private static string Spaced(string code) => code.Length == 6 ? $"{code[..3]} {code[3..]}" : code;

    private void Choose(int seat)
    {
        _chosen = seat;
        StateHasChanged();
        _ = Call("reveal", "deep");
    }

    private void SendAway(Seat seat) => Refuse(Room.Leave(seat));

    private void JoinLate(Seat seat, RoomDrill drill, int person) => Refuse(Room.JoinLate(seat, drill, person));

    private void TurnHold()
    {
        Room.HoldAll(!Room.IsHeld);
        StateHasChanged();
    }

    private void LetBegin()
    {
        foreach (DrillSession session in Unbegun)
        {
            session.Release(HoldReason.Brief);
        }

        OnChanged();
    }

    /// <summary>One of them runs on, off the page.</summary>
    private void RunsOn(RoomDrill drill, RunOn run)
    {
        _runs.GetValueOrDefault(drill.Number)?.Dispose();
        _runs[drill.Number] = run;
        _ = run.Ended.ContinueWith(_ => OnChanged(), TaskScheduler.Default);
        OnChanged();
    }

    private void SetPace(Pace pace)
    {
        foreach (DrillSession session in Living)
        {
            session.Wanted = pace;
        }

        OnChanged();
    }

    private void Refuse(string? why)
    {
        _refused = why is null ? null : Say.With($"Not done: {why}");
        StateHasChanged();
    }

    private async Task Call(string what, string id)
    {
        if (_script is not null)
        {
            await _script.InvokeVoidAsync(what, id);
        }
    }

    /// <summary>What the page was last drawn for.</summary>
    private sealed record Seen(int Changes, long Away, ImmutableArray<object?> Looks)
    {
        public bool IsSame(Seen other) => Changes == other.Changes && Away == other.Away && Looks.Length == other.Looks.Length && Looks.Zip(other.Looks).All(p => ReferenceEquals(p.First, p.Second) || (p.First is Enum && p.First.Equals(p.Second)));
    }
}
