using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Training.Debrief;
using Sightglass.Web.Live;
using Sightglass.Web.Room;

namespace Sightglass.Web.Debrief;

/// <summary>A drill after it is over: how it came out and where that was decided, what happened when, what could be known and what was so, and what would have been.</summary>
public sealed partial class DebriefPage : IDisposable
{
    private readonly CancellationTokenSource _gone = new();
    private RoomDrill? _drill;
    private DebriefFilm? _film;
    private string? _why;
    private SimTime _at;
    private DebriefMoment? _exact;
    private WhatIfResult? _what;
    private string _whatSaid = "";

    /// <summary>Of the drill in the room.</summary>
    [Parameter]
    public int Number { get; set; }

    /// <summary>Whether somebody marks what they see, without what others found.</summary>
    [SupplyParameterFromQuery(Name = "mark")]
    private string? Mark { get; set; }

    [Inject]
    private MachineRoom Machine { get; set; } = null!;

    [Inject]
    private TrainingRoom Room { get; set; } = null!;

    [Inject]
    private DebriefDesk Desk { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private bool IsBlind => Mark is not null;

    private string Blind => $"room/debrief/{Number}?mark=yes";

    private DebriefFilm? Shown => _what?.Film ?? _film;

    private DebriefMoment Moment => _exact ?? Shown!.At(_at);

    private string Who => _drill?.Worked.GetValueOrDefault(_film!.Drill.Person) is { } name ? $"{name}, {Say.Book(_film.Drill.Drill.Role)}" : Say.Book(_film!.Drill.Drill.Role);

    /// <summary>What two assessors come to in this drill, and over all of the room.</summary>
    private IEnumerable<string> Agreements
    {
        get
        {
            string[] names = [.. _drill!.Marks.Keys];
            return names.Length < 2
                ? [names.Length == 0 ? Say.It("Nobody has marked it yet.") : Say.With($"{names[0]} has marked it; one more is needed.")]
                : AgreementWords.Of(_drill).Append(AgreementWords.Over(Room.Drills, names[0], names[1]) ?? "").Where(s => s.Length > 0);
        }
    }

    public void Dispose()
    {
        Room.Changed -= Tell;
        _gone.Cancel();
        _gone.Dispose();
    }

    protected override void OnInitialized() => Room.Changed += Tell;

    protected override async Task OnParametersSetAsync()
    {
        if (_drill?.Number == Number && (_film is not null || _why is not null))
        {
            return;
        }

        (_film, _why, _what, _exact) = (null, null, null, null);
        _drill = Desk.Find(Number);
        if (_drill is null || !RendererInfo.IsInteractive)
        {
            return;
        }

        try
        {
            (_film, _why) = await Desk.Of(_drill, _gone.Token);
            _at = IsBlind ? SimTime.Zero : _film?.Turning.At ?? SimTime.Zero;
        }
        catch (ArgumentException e)
        {
            _why = Say.With($"Its record cannot be run again: {e.Message}");
        }
        catch (OperationCanceledException)
        {
            // The page is gone.
        }
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            try
            {
                await using IJSObjectReference script = await Js.InvokeAsync<IJSObjectReference>("import", "./assets/pages.js");
                await script.InvokeVoidAsync("alive");
            }
            catch (JSDisconnectedException)
            {
                // The browser has left in the meantime.
            }
        }
    }

    private string Print(string size) => $"room/debrief/{Number}/sheet.pdf?size={size}";

    private void Go(SimTime at) => (_at, _exact) = (at, null);

    private async Task LookExactly(SimTime at)
    {
        try
        {
            if (await Desk.At(_drill!, at, _gone.Token) is { } moment)
            {
                (_at, _exact) = (moment.At, moment);
            }
        }
        catch (OperationCanceledException)
        {
            // The page is gone.
        }
    }

    private void Show((WhatIfResult Result, string Said) came)
    {
        (_what, _whatSaid, _exact) = (came.Result, came.Said, null);
        _at = came.Result.Parts;
    }

    private void BackToWhatWas() => (_what, _exact) = (null, null);

    private void Tell() => _ = InvokeAsync(StateHasChanged);
}
