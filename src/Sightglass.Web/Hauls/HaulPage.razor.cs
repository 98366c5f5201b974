using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Paper.Papers;
using Sightglass.Web.Live;
using Sightglass.World.Hauls;

namespace Sightglass.Web.Hauls;

/// <summary>A train over a route: what is said of it, and what comes out once it is run. Its address holds what was said.</summary>
public sealed partial class HaulPage
{
    private static readonly HaulAsk s_nothing = new(new Dictionary<HaulInput, string>(), true);

    private HaulAsk _ask = s_nothing;

    /// <summary>What the address said when it was read. Fields are filled with that alone.</summary>
    private HaulAsk _read = s_nothing;

    /// <summary>The address that this page wrote itself: nothing new is in it.</summary>
    private string? _written;

    private IReadOnlyList<HaulRefusal> _refused = [];
    private HaulResult? _run;
    private HaulTold? _told;
    private bool _busy;
    private string _said = "";

    /// <summary>Part of the address that says which.</summary>
    [Parameter]
    public string Name { get; set; } = "";

    [Inject]
    private MachineRoom Room { get; set; } = null!;

    [Inject]
    private HaulDesk Desk { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private Route? Route { get; set; }

    private static (HaulInput Input, string Label, string Usual, string Says)[] Fields =>
    [
        (HaulInput.Dead, Say.It("Dead machine"), Say.It("none"), Say.It("Counted from the head, such as 2: hauled with its weight, its brakes work.")),
        (HaulInput.HeadEnd, Say.It("For the cars"), Say.It("their loads"), Say.It("A power such as 240 kW, or off; else the loads by the book.")),
        (HaulInput.Fill, Say.It("Fuel"), Say.It("as built"), Say.It("How full every compartment is at the start, such as 70 %.")),
        (HaulInput.Sets, Say.It("Otherwise"), Say.It("as usual"), Say.It("NAME = VALUE in the names of the book, such as aft supply valve = closed; several between semicolons.")),
        (HaulInput.Margin, Say.It("Margin"), "20 %", Say.It("Share of the fuel at the start that is kept back.")),
        (HaulInput.StopsAt, Say.It("Stopped at"), Say.It("nowhere"), Say.It("Mileposts such as 12 mi, or places; several between semicolons.")),
    ];

    protected override async Task OnParametersSetAsync()
    {
        Route = Desk.All.FirstOrDefault(r => r.Name == Name);
        if (Route is null || Navigation.Uri == _written)
        {
            return;
        }

        HaulAsk? asked = HaulAsk.Of(new(Navigation.Uri));
        _ask = _read = asked ?? s_nothing with { Typed = Start(Room.Shelf.Book) };
        (_run, _told, _refused, _said) = (null, null, [], asked is null ? Say.It("Say what runs, and run it.") : Say.It("One moment …"));
        if (asked is not null && RendererInfo.IsInteractive)
        {
            await Run();
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

    /// <summary>The first train of the book, so that there is something to run at once.</summary>
    private static Dictionary<HaulInput, string> Start(ClassBook book) =>
        book.Trains.Values.OrderBy(t => t.Span).FirstOrDefault() is { } train ? new() { [HaulInput.Train] = train.Name } : [];

    private async Task Run()
    {
        if (_busy || Route is not { } route)
        {
            return;
        }

        (_busy, _run, _told, _refused, _said) = (true, null, null, [], Say.It("It is run: the train, its air, its fuel …"));
        HaulAsk ask = _ask;
        _written = Navigation.ToAbsoluteUri(ask.Address(route)).AbsoluteUri;
        Navigation.NavigateTo(_written, replace: true);
        StateHasChanged();
        try
        {
            (_run, _refused) = await Desk.Of(route, ask);
        }
        finally
        {
            _busy = false;
        }

        _told = _run is { } run ? new(run) : null;
        _said = _run is not null ? "" : _refused.All(r => r.Input is null) ? Say.It("It cannot be run:") : Say.It("Something that was said cannot be run; it stands at its field.");
    }

    private void Put(HaulInput input, ChangeEventArgs change) =>
        _ask = _ask with { Typed = new Dictionary<HaulInput, string>(_ask.Typed) { [input] = change.Value?.ToString() ?? "" } };

    private string Typed(HaulInput input, string usual = "") => _ask.Typed.GetValueOrDefault(input) is { Length: > 0 } typed ? typed : usual;

    private string? Wrong(HaulInput input) => _refused.Any(r => r.Input == input) ? "wrong" : null;
}
