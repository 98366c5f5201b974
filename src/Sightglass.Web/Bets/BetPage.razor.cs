using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Diagram;
using Sightglass.Training.Bets;
using Sightglass.Web.Host;
using Sightglass.Web.Live;
using Sightglass.Web.Machine;
using Sightglass.Web.Parts;
using Sightglass.Web.Share;
using Sightglass.World.Journal;

namespace Sightglass.Web.Bets;

/// <summary>A bet on the wall: the question with its answers, who says what, and the machine as it does it. Everybody who has it open sees the same.</summary>
public sealed partial class BetPage : IAsyncDisposable
{
    private const int MostTold = 8;

    private MachineDrawing? _drawing;
    private DiagramValues? _values;
    private object _picture = new();
    private string? _drawn;
    private string _charts = "";
    private BetFilm? _film;
    private Courier _courier = null!;
    private IJSObjectReference? _script;

    [Inject]
    private MachineRoom Room { get; set; } = null!;

    [Inject]
    private BetTable Table { get; set; } = null!;

    [Inject]
    private TonguesOffered Tongues { get; set; } = null!;

    [Inject]
    private ShareDesk Share { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    [SupplyParameterFromQuery(Name = "of")]
    private string? Name { get; set; }

    private Bet? Asked => Table.Bet is { } bet && bet.Name == Name ? bet : null;

    private bool IsTold => Table.Phase == BetPhase.Told;

    private string Situation => Asked is { } bet ? Room.Shelf.Book.Situations.GetValueOrDefault(bet.Situation)?.Text is { } text ? Say.Book(text) : "" : "";

    private int[] Counts => Table.Counts;

    private double Moment => Table.Film is { } film ? film.Result.Moments[Table.Frame].Seconds : 0;

    private string Phones => Counts.Sum() == 0 ? Say.It("Count hands with + and −, or let people answer on screens of their own: the page at /answer.") : Say.Of(Counts.Sum(), $"{Counts.Sum()} answer.", $"{Counts.Sum()} answers.");

    private IEnumerable<(JournalEntry First, int Times)> Story =>
        BetStory.Of(Table.Film!.Result.Journal.Where(j => j.Time.Seconds <= Moment)).Where(s => s.First.Time.Seconds > 0 || s.First.Kind == JournalKind.Truth).TakeLast(MostTold);

    protected override void OnInitialized()
    {
        _courier = new(InvokeAsync, Send);
        Table.Changed += OnChanged;
    }

    protected override void OnParametersSet()
    {
        // One that people are answering stays as it was asked, also when the book is read anew meanwhile.
        if (Room.Shelf.Book.Bets.GetValueOrDefault(Name ?? "") is { } bet && (Table.Bet?.Name != bet.Name || (Table.Bet != bet && IsTold)))
        {
            _ = Table.Lay(bet);
        }

        Draw();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            _script = await Js.InvokeAsync<IJSObjectReference>("import", "./assets/pages.js");
            await _script.InvokeVoidAsync("alive");
            OnChanged();
        }
    }

    public async ValueTask DisposeAsync()
    {
        Table.Changed -= OnChanged;
        try
        {
            if (_script is not null)
            {
                await _script.DisposeAsync();
            }
        }
        catch (JSDisconnectedException)
        {
            // The page is gone.
        }
    }

    private static char Letter(int answer) => (char)('A' + answer);

    private string Percent(int answer) => (100.0 * Counts[answer] / Math.Max(1, Counts.Sum())).ToString("0.#", CultureInfo.InvariantCulture);

    private void Again()
    {
        if (Asked is { } bet)
        {
            _ = Table.Lay(bet);
        }
    }

    private void Scrub(ChangeEventArgs change)
    {
        if (int.TryParse(change.Value?.ToString(), NumberStyles.Integer, CultureInfo.InvariantCulture, out int frame))
        {
            Table.Show(frame);
        }
    }

    private void OnChanged()
    {
        if (_script is not null)
        {
            _courier.Want();
        }
    }

    /// <summary>The drawing is written once for each film; afterwards only changes are sent.</summary>
    private void Draw()
    {
        if (Table.Film == _film)
        {
            return;
        }

        _film = Table.Film;
        _picture = new();
        (_drawing, _values, _drawn) = (null, null, null);
        if (_film is { } film && film.Frames.Length > 0)
        {
            MachineSnapshot seen = film.Frames[Table.Frame];
            ClassBook book = film.Bet.Plan.Book;
            MachineChoice choice = MachineChoice.Of(book, film.Bet.Bet.Situation, film.Bet.Bet.System, null);
            _drawing = MachineDrawing.Of(film.Bet.Plan, choice, seen, truth: true);
            (_drawn, _values, _charts) = (_drawing.Render(seen, truth: true), _drawing.Values(seen, truth: true), BetCharts.Svg(film, Table.Frame));
        }
    }

    private async Task Send()
    {
        Draw();
        StateHasChanged();
        await Task.Yield();
        if (_drawing is { } drawing && _film is { } film)
        {
            DiagramValues next = drawing.Values(film.Frames[Table.Frame], truth: true);
            string[] changes =
            [
                .. DiagramValues.Between(_values!, next).SelectMany(d => new[] { d.Id, d.Attribute, d.Value }),
                "bet-clock", DiagramDelta.Text, Words.Clock(Moment),
                "bet-charts", "#html", BetCharts.Svg(film, Table.Frame),
            ];
            _values = next;
            await _script!.InvokeVoidAsync("apply", (object)changes);
        }
    }
}
