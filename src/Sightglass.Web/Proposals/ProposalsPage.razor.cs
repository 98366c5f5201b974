using System.Collections.Immutable;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Basics.Language;
using Sightglass.Book.Changes;
using Sightglass.Book.Model;
using Sightglass.Storage.Proposals;
using Sightglass.Storage.WalkDowns;
using Sightglass.Training.Proposals;
using Sightglass.Training.WalkDowns;
using Sightglass.Web.Live;

namespace Sightglass.Web.Proposals;

/// <summary>Changes to the book that somebody proposes, one by one, each as its diff with its photograph; accepted or refused by mouse or keys.</summary>
public sealed partial class ProposalsPage : IAsyncDisposable
{
    private static readonly string[] s_keys = ["ArrowUp", "ArrowDown", "a", "A", "r", "R"];

    private DotNetObjectReference<ProposalsPage>? _self;
    private IJSObjectReference? _listening;

    [Inject]
    private MachineRoom Room { get; set; } = null!;

    [Inject]
    private ProposalDesk Desk { get; set; } = null!;

    [Inject]
    private WalkDownDesk WalkDowns { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private ClassBook Book => Room.Shelf.Book;

    private ImmutableArray<Proposal> Open { get; set; } = [];

    private ImmutableArray<Proposal> Decided { get; set; } = [];

    /// <summary>What was said instead of written: it proposes nothing by itself.</summary>
    private ImmutableArray<WalkDownEntry> Voices { get; set; } = [];

    private Proposal? Chosen { get; set; }

    private ChangePlan? Plan { get; set; }

    private string Why { get; set; } = "";

    /// <summary>What the book is to say; null where the proposal brings a file.</summary>
    private string? Text { get; set; }

    private string By { get; set; } = Environment.UserName;

    private string Said { get; set; } = "";

    private string Heading => Open.Length switch { 0 => Say.It("No proposal is open"), 1 => Say.It("One proposal for the book"), var n => Say.With($"{n} proposals for the book") };

    /// <summary>A key on the page.</summary>
    [JSInvokable]
    public async Task PressKey(string key)
    {
        int at = Chosen is null ? -1 : Open.IndexOf(Chosen);
        switch (key)
        {
            case "ArrowDown" when at + 1 < Open.Length:
                Choose(Open[at + 1]);
                break;
            case "ArrowUp" when at > 0:
                Choose(Open[at - 1]);
                break;
            case "a" or "A" when Plan?.File is not null:
                await AcceptAsync();
                break;
            case "r" or "R" when Chosen is not null:
                await using (IJSObjectReference script = await Js.InvokeAsync<IJSObjectReference>("import", "./assets/pages.js"))
                {
                    await script.InvokeVoidAsync("focus", "why");
                }

                break;
        }

        StateHasChanged();
    }

    public async ValueTask DisposeAsync()
    {
        try
        {
            if (_listening is not null)
            {
                await _listening.InvokeVoidAsync("stop");
                await _listening.DisposeAsync();
            }
        }
        catch (JSDisconnectedException)
        {
            // The browser has left in the meantime.
        }

        _self?.Dispose();
    }

    protected override void OnInitialized() => Read();

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
        {
            return;
        }

        try
        {
            await using IJSObjectReference script = await Js.InvokeAsync<IJSObjectReference>("import", "./assets/pages.js");
            _self = DotNetObjectReference.Create(this);
            _listening = await script.InvokeAsync<IJSObjectReference>("listen", _self, "no-drawing", s_keys);
        }
        catch (JSDisconnectedException)
        {
            // The browser has left in the meantime.
        }
    }

    private void Read()
    {
        IReadOnlyList<Proposal> all = Desk.All();
        int at = Chosen is null ? 0 : Math.Max(0, Open.IndexOf(Chosen));
        Open = [.. all.Where(p => p.State == ProposalState.Open)];
        Decided = [.. all.Where(p => p.State != ProposalState.Open).OrderByDescending(p => p.DecidedAt)];
        Voices = [.. WalkDowns.All(Book.Title).Where(e => e.Voice is not null)];
        Chosen = null;
        if (Open.Length > 0)
        {
            Choose(Open[Math.Min(at, Open.Length - 1)]);
        }
    }

    private void Choose(Proposal proposal)
    {
        (Chosen, Why, Text) = (proposal, "", ProposalDesk.CanBeEdited(proposal) ? proposal.Becomes : null);
        Plan = Desk.Look(proposal);
    }

    /// <summary>The diff, and whether it can be made, of what is written now.</summary>
    private void Edit(ChangeEventArgs change)
    {
        Text = change.Value?.ToString() ?? "";
        Plan = Desk.Look(Chosen!, Text.Trim());
    }

    private Task AcceptAsync() => DecideAsync(AcceptOne, one => Say.With($"{Capital(one.Target)}, {Say.Word(one.Property)}: is in the book, and the pages show it."));

    private string? AcceptOne(Proposal one)
    {
        string? why = Desk.Accept(one.Id, By, Text);
        if (why is null)
        {
            Room.Shelf.Reread();
        }

        return why;
    }

    /// <summary>The desk asks for the reason, not a button that waits for it: who types fast has pressed Enter before the page knows that something was typed.</summary>
    private Task RefuseAsync() => DecideAsync(one => Desk.Refuse(one.Id, By, Why.Trim()), one => Say.With($"{Capital(one.Target)}, {Say.Word(one.Property)}: is refused."));

    private async Task DecideAsync(Func<Proposal, string?> decide, Func<Proposal, string> done)
    {
        if (Chosen is { } one)
        {
            string? why = await Task.Run(() => decide(one));
            Said = why is null ? done(one) : $"{Capital(one.Target)}, {Say.Word(one.Property)}: {why}";
            Read();
        }
    }

    private static string DecisionOf(Proposal proposal)
    {
        string what = proposal.RoadNumber is { } number ? Say.With($"{Capital(proposal.Target)} on {number}, {Say.Word(proposal.Property)}") : $"{Capital(proposal.Target)}, {Say.Word(proposal.Property)}";
        return (proposal.State, proposal.DecidedBy) switch
        {
            (ProposalState.Accepted, { Length: > 0 } who) => Say.With($"{what}: accepted by {who}"),
            (ProposalState.Accepted, _) => Say.With($"{what}: accepted"),
            (_, { Length: > 0 } who) => Say.With($"{what}: refused by {who}"),
            _ => Say.With($"{what}: refused"),
        };
    }

    private static string[] Lines(string diff) => diff.TrimEnd('\n').Split('\n');

    private static string? Style(string line) => line.Length == 0 ? null : line.StartsWith("--- ", StringComparison.Ordinal) || line.StartsWith("+++ ", StringComparison.Ordinal) ? "where" : line[0] switch { '+' => "added", '-' => "gone", '@' => "where", _ => null };

    private static string Capital(string text) => Words.Capital(text);
}
