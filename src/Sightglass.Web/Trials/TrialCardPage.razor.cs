using System.Collections.Immutable;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Basics.Language;
using Sightglass.Training.Drills;
using Sightglass.Web.Live;

namespace Sightglass.Web.Trials;

/// <summary>One card: where it is tried, how far that is, what came of it; a failure is made into a drill.</summary>
public sealed partial class TrialCardPage
{
    private static readonly int[] s_cases = [64, 256, 1024, 4096];

    private static readonly TimeSpan s_look = TimeSpan.FromMilliseconds(300);

    /// <summary>Part of the address that says which: the card's file without its ending.</summary>
    [Parameter]
    public string Name { get; set; } = "";

    [Inject]
    private MachineRoom Room { get; set; } = null!;

    [Inject]
    private TrialDesk Desk { get; set; } = null!;

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private TrialCard? Card { get; set; }

    /// <summary>Where it may be tried: those that are for it, or all.</summary>
    private ImmutableArray<string> Situations { get; set; } = [];

    private string Situation { get; set; } = "";

    private int Cases { get; set; } = s_cases[1];

    private TrialWork? Work { get; set; }

    private bool IsRunning => Work is { IsOver: false };

    private bool IsMaking { get; set; }

    /// <summary>By the place of the failure.</summary>
    private Dictionary<int, MadeDrill> Made { get; } = [];

    /// <summary>Where a card's trial is shown.</summary>
    public static string AddressOf(TrialCard card)
    {
        ArgumentNullException.ThrowIfNull(card);
        return "trials/" + Uri.EscapeDataString(card.Name);
    }

    protected override void OnParametersSet()
    {
        Card = Desk.All().FirstOrDefault(c => c.Name == Name);
        Made.Clear();
        Situations = Card is { Situations.IsEmpty: false } own ? [.. own.Situations.Select(s => s.Name)] : [.. Room.Shelf.Situations.Where(s => s.Train is null).Select(s => s.Name)];
        Work = Card is null ? null : Desk.Last(Card.Name);
        Situation = Work is { } last && Situations.Contains(last.Situation) ? last.Situation : Situations.FirstOrDefault() ?? "";
        Cases = Work is { } tried && s_cases.Contains(tried.Cases) ? tried.Cases : Cases;
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
        {
            return;
        }

        try
        {
            await using IJSObjectReference script = await Js.InvokeAsync<IJSObjectReference>("import", "./assets/pages.js");
            await script.InvokeVoidAsync("alive");
        }
        catch (JSDisconnectedException)
        {
            return; // the browser has left in the meantime
        }

        await WatchAsync();
    }

    private async Task Try()
    {
        if (Card is { } card && Situation.Length > 0 && !IsRunning)
        {
            Made.Clear();
            Work = Desk.Begin(card, Situation, Cases);
            await WatchAsync();
        }
    }

    private async Task WatchAsync()
    {
        while (IsRunning)
        {
            StateHasChanged();
            await Task.Delay(s_look, Clock);
        }

        StateHasChanged();
    }

    private async Task MakeAsync(int failure)
    {
        TrialWork work = Work!;
        IsMaking = true;
        StateHasChanged();
        try
        {
            (CaseDrillDraft draft, string? refused) = await Task.Run(() => Desk.MakeDrill(work, failure));
            string says = refused is null ? Say.With($"The drill “{draft.Drill.Name}” is in the book, in {draft.File.Path}.") : Say.With($"It is not in the book: {refused}.");
            Made[failure] = new(draft.Drill.Name, says, draft.File.Source.Text, refused is null);
        }
        finally
        {
            IsMaking = false;
        }
    }

    private static string RoomOf(MadeDrill made) => "room?drill=" + Uri.EscapeDataString(made.Name);

    private static string ReportOf(TrialCard card) => AddressOf(card) + "/report";
}
