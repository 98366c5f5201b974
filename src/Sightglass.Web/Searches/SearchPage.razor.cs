using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Trials.Causes;
using Sightglass.Web.Live;

namespace Sightglass.Web.Searches;

/// <summary>One search: where to look next, what was seen, and what it may be. Every answer orders the rest anew.</summary>
public sealed partial class SearchPage
{
    /// <summary>Looks ahead that are shown: those that follow while everything is as usual.</summary>
    private const int Ahead = 6;

    /// <summary>Causes that are named.</summary>
    private const int Named = 8;

    /// <summary>Below this share a cause counts as ruled out.</summary>
    private const double Least = 0.005;

    /// <summary>Part of the address that says which.</summary>
    [Parameter]
    public string Name { get; set; } = "";

    [Inject]
    private MachineRoom Room { get; set; } = null!;

    [Inject]
    private SearchDesk Desk { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private Search? Search { get; set; }

    private CauseTable? Table { get; set; }

    private string Waiting { get; set; } = "";

    /// <summary>What was seen, in order: number of the look, and what it showed.</summary>
    private List<(int Look, int Shows)> Seen { get; } = [];

    private ImmutableArray<LookStep> Steps { get; set; } = [];

    private ImmutableArray<(Cause Cause, double Share)> Likeliest { get; set; } = [];

    /// <summary>Causes that may be and are not named.</summary>
    private int Others { get; set; }

    /// <summary>What the living machine answered, or empty.</summary>
    private string MachineSays { get; set; } = "";

    /// <summary>Number of the place of the look made last.</summary>
    private int? At { get; set; }

    /// <summary>Where a search is shown.</summary>
    public static string AddressOf(Search search)
    {
        ArgumentNullException.ThrowIfNull(search);
        return "searches/" + Uri.EscapeDataString(search.Name);
    }

    protected override async Task OnParametersSetAsync()
    {
        Search = Desk.All.FirstOrDefault(s => s.Name == Name);
        Table = null;
        Seen.Clear();
        At = null;
        if (Search is not { } search || !RendererInfo.IsInteractive)
        {
            Waiting = Say.It("One moment …");
            return;
        }

        Waiting = Say.It("Everything that bears on it is put wrong, one thing at a time …");
        StateHasChanged();
        SearchWorked worked = await Desk.Of(search);
        Table = worked.Table;
        Waiting = worked.Wrong is [var wrong, ..] ? wrong : Say.With($"It comes about in {worked.Holds} of {CauseTable.UsualCases} cases only, though nothing is wrong: its author has to name a situation in which it always does.");
        Order();
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

    private void Answer(LookStep step, int shows)
    {
        Seen.Add((step.Number, shows));
        At = Table!.Plan.Ways.IndexOf(step.Place);
        Order();
    }

    private void TakeBack(int look)
    {
        Seen.RemoveAll(s => s.Look == look);
        Order();
    }

    private void Again()
    {
        Seen.Clear();
        At = null;
        MachineSays = "";
        Order();
    }

    /// <summary>Lets the living machine answer, as whoever stands before it would: one look after the other, until nothing that can be seen tells more.</summary>
    private void AskMachine()
    {
        Again();
        LiveSession session = Room.Session;
        ImmutableDictionary<(LookKind, string), Look> looks = Look.AllOf(session.Plan).ToImmutableDictionary(l => (l.Kind, l.Name));
        MachineSays = session.Ask(world =>
        {
            if (session.Plan.Facts.TryGetValue(Search!.Wanted, out Plant.Signals.Signal? wanted) && world.Value(wanted) >= 0)
            {
                return Say.With($"On the machine as it stands it does: {Search.Wanted}.");
            }

            while (Steps.FirstOrDefault(s => looks.ContainsKey((s.Look.Kind, s.Look.Name))) is { } step)
            {
                Answer(step, Table!.Told(step.Number, looks[(step.Look.Kind, step.Look.Name)].See(world)));
            }

            return Say.With($"Answered by the machine as it stands, from what can be seen of it: {Seen.Count} looks.");
        });
    }

    private void Order()
    {
        if (Table is not { } table)
        {
            return;
        }

        Belief belief = new(table);
        foreach ((int look, int shows) in Seen)
        {
            belief.Take(look, shows);
        }

        double[] shares = belief.Shares();
        int[] left = [.. belief.Ranked().Where(c => shares[c] >= Least)];
        Likeliest = [.. left.Take(Named).Select(c => (table.Causes[c], shares[c]))];
        Others = Math.Max(0, left.Length - Named);
        Steps = [.. LookWalk.Of(table, belief, At, Seen.Select(s => s.Look)).Take(Ahead)];
    }

    /// <summary>Where it is, how far on, and what is written at it.</summary>
    private static string Where(LookStep step)
    {
        string place = step.Metres < 0.5 ? Say.Book(step.Place) : Say.With($"{step.Place}, {step.Metres.ToString("0", CultureInfo.InvariantCulture)} m on");
        return step.Look.Item is { } item && !string.Equals(item.Label, item.Name, StringComparison.OrdinalIgnoreCase) ? Say.With($"{place}, labelled “{item.Label}”") : place;
    }
}
