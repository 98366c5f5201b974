using System.Collections.Immutable;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Web.Host;
using Sightglass.Web.Live;
using Sightglass.Web.Parts;
using Sightglass.World;
using Sightglass.World.Journal;
using Sightglass.World.Records;

namespace Sightglass.Web.Machine;

/// <summary>The machine alive. The drawing is written once; afterwards only what has changed is sent to it.</summary>
public sealed partial class MachinePage : IAsyncDisposable
{
    private static readonly string[] s_keys = [" ", "t", "T", "f", "F", "s", "S", "y", "Y", "v", "V", "?"];

    /// <summary>More vehicles than this are chosen from a list.</summary>
    internal const int MostButtons = 12;

    private MachineChoice _choice = new(null, null);
    private ImmutableArray<LiveGauge> _gauges = [];
    private LiveGauge? _trend;
    private string _laid = "";

    // Stands for the drawing on the page and what is sent to it: a new one for a new drawing.
    private object _picture = new();
    private object _paper = new();
    private MachineDrawing _drawing = null!;
    private LoadFigure? _loads;
    private ClassBook _pictured = null!;
    private MachineView _view = null!;
    private string _drawn = "";
    private string _pieces = "";
    private bool _truth = true;
    private Courier _courier = null!;
    private Item? _turning;
    private string? _refused;
    private Shown _shown = new(-1, default, null, 0, "");
    private IJSObjectReference? _script;
    private IJSObjectReference? _listening;
    private DotNetObjectReference<MachinePage>? _self;

    [Inject]
    private MachineRoom Room { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    [Inject]
    private DataDesk Data { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    /// <summary>The system whose diagram is shown; without one that which the situation is about.</summary>
    [SupplyParameterFromQuery(Name = "system")]
    private string? AskedSystem { get; set; }

    /// <summary>The vehicle of a train, or the whole of it; without one the machine itself.</summary>
    [SupplyParameterFromQuery(Name = "vehicle")]
    private string? AskedVehicle { get; set; }

    private LiveSession Session { get; set; } = null!;

    private string[] Systems => MachineChoice.Systems(Session.Plan.Book);

    private ImmutableArray<Vehicle> Vehicles => MachineChoice.Vehicles(Session.Plan.Book);

    private string VehicleName => _choice.VehicleName(Session.Plan.Book);

    private AlongTrain? AlongLine => Session.Along.FirstOrDefault(a => a.System == _choice.System);

    private MachineSnapshot Seen => Session.Current;

    private string Heading => _choice.System is { } system ? Say.With($"{Words.Capital(system)}, alive") : Say.With($"{Session.Plan.Book.Title}, alive");

    private string Situation
    {
        get
        {
            SessionStart start = Session.Start;
            string road = string.IsNullOrEmpty(start.RoadNumber) ? "" : $"{start.RoadNumber}: ";
            return road + (start.Situation is null ? Say.It("as built") : Say.With($"{start.Situation}, case {start.Case}"));
        }
    }

    private string Around
    {
        get
        {
            IEnumerable<string> said = WorldInput.All.Where(i => !i.Name.StartsWith("ambient", StringComparison.Ordinal) && Seen.Inputs.TryGetValue(i.Name, out double value) && (Math.Abs(value) > 1e-9 || i.Name == "grade"))
                .Select(i => i.Name == "grade" && Math.Abs(Seen.Inputs[i.Name]) < 1e-9 ? Say.It("level track") : $"{Say.Word(i.Name)} {Show(i, Seen.Inputs[i.Name])}");
            return string.Join(", ", said);
        }
    }

    private string Caption => string.Join(' ', new[]
    {
        Drawn, _drawing.Key, Glasses, _choice.Vehicle is null ? Say.It("Cars that are alike and stand alike are drawn once.") : "",
    }.Where(s => s.Length > 0));

    private string Drawn => (_choice.System, _drawing.IsLine, Vehicles.Length > 1) switch
    {
        (null, _, false) => Say.It("The machine."),
        (null, _, true) => Say.With($"The machine of {_choice.VehicleWords(Session.Plan.Book)}."),
        ({ } system, true, false) => Say.With($"The {system}."),
        ({ } system, true, true) => Say.With($"The {system} of {_choice.VehicleWords(Session.Plan.Book)}."),
        ({ } system, false, false) => Say.With($"The {system} system."),
        ({ } system, false, true) => Say.With($"The {system} system of {_choice.VehicleWords(Session.Plan.Book)}."),
    };

    private string Glasses
    {
        get
        {
            string[] units = [.. Session.Plan.Book.Items.Values.Where(i => i.System == _choice.System && i.Reading is not null && i.Kind.Symbol.Contains("glass", StringComparison.Ordinal)).Select(i => QuantityFormat.Symbol(i.Reading!.Unit)).Distinct()];
            return units.Length == 1 ? Say.With($"Glasses in {units[0]}.") : "";
        }
    }

    private IEnumerable<JournalEntry> Happened => Seen.Journal.Where(j => j.Text.Length > 0 && (_truth || j.Kind != JournalKind.Truth)).Reverse().Take(40);

    private ImmutableArray<(string Key, string Words)> AllKeys =>
    [
        (Say.As("key", "Space"), Say.It("hold, and go on as fast as before")), ("T", Say.It("truth on and off, on this screen only")), ("F", Say.It("put in a fault")), ("S", Say.It("another situation, surroundings")), ("Y", Say.It("the next system")), ("V", Say.It("the next vehicle of the train")),
        (Say.As("key", "Tab"), Say.It("to a valve or another control; Enter turns it")), ("?", Say.It("this list")),
    ];

    private Pace LastPace { get; set; } = Pace.Four;

    protected override void OnInitialized()
    {
        Session = Room.Session;
        _courier = new(InvokeAsync, Send);
        Room.Changed += OnChanged;
    }

    protected override async Task OnParametersSetAsync()
    {
        if (_drawing is null)
        {
            Draw();
        }
        else if (Asked() != _choice)
        {
            await DrawAgain();
        }
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            _script = await Js.InvokeAsync<IJSObjectReference>("import", "./assets/pages.js");
            _self = DotNetObjectReference.Create(this);
            _listening = await _script.InvokeAsync<IJSObjectReference>("listen", _self, "diagram", s_keys);
            OnChanged();
        }
    }

    /// <summary>A control of the drawing was operated.</summary>
    [JSInvokable]
    public async Task TouchItem(string name)
    {
        if (!Session.Plan.Items.TryGetValue(name, out Plant.Plans.ItemPlan? known) || known.Position is null)
        {
            return;
        }

        Item item = known.Item;
        if (item.Positions.Length == 2)
        {
            int now = item.Positions.IndexOf(Seen.Positions[name]);
            Do(new WorldAction.Operate(-1, name, item.Positions[1 - now]));
            return;
        }

        _turning = item;
        StateHasChanged();
        await Call("open", "positions");
    }

    /// <summary>Places are not in this drawing.</summary>
    [JSInvokable]
    public Task TouchPlace(string name) => TouchItem(name);

    /// <summary>A key that the page listens to.</summary>
    [JSInvokable]
    public async Task PressKey(string key)
    {
        switch (key)
        {
            case " ":
                LastPace = Seen.Pace == Pace.Hold ? LastPace : Seen.Pace;
                Session.SetPace(Seen.Pace == Pace.Hold ? LastPace : Pace.Hold);
                break;
            case "t" or "T":
                TurnTruth();
                StateHasChanged();
                break;
            case "f" or "F":
                await Call("focus", "fault-what");
                break;
            case "s" or "S":
                await Call("open", "start");
                break;
            case "y" or "Y":
                Show(MachineChoice.Next(Systems, _choice.System), VehicleName);
                break;
            case "v" or "V":
                Show(_choice.System, MachineChoice.Next([.. Vehicles.Select(MachineChoice.NameOf), MachineChoice.WholeTrain], VehicleName));
                break;
            case "?":
                await Call("open", "keys");
                break;
        }
    }

    public async ValueTask DisposeAsync()
    {
        Room.Changed -= OnChanged;
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
    }

    internal static string Show(WorldInput input, double value) =>
        QuantityFormat.Text(value, UnitTable.Get(input.Unit), UnitTable.Get(input.Unit).Factor / (input.Unit == "%" && Math.Abs(value) < 0.1 ? 10 : 1));

    private static string Told(string text) => text.StartsWith(Say.It("Truth"), StringComparison.Ordinal) ? text : Say.With($"Truth. {text}");

    private MachineChoice Asked() => MachineChoice.Of(Session.Plan.Book, Session.Start.Situation, AskedSystem, AskedVehicle);

    /// <summary>Another system or vehicle: by its address, so that it can be sent to somebody.</summary>
    private void Show(string? system, string? vehicle) => Navigation.NavigateTo(
        Navigation.GetUriWithQueryParameters(new Dictionary<string, object?> { ["system"] = system, ["vehicle"] = Vehicles.Length > 1 && vehicle != MachineChoice.TheMachine ? vehicle : null }), replace: true);

    private void Draw()
    {
        Session = Room.Session;
        _choice = Asked();
        MachineSnapshot seen = Seen;
        _pictured = PhotoShelf.With(Room.Shelf.BookOf(Session.Start.RoadNumber, null), Data);
        _laid = MachineDrawing.KeyOf(Session.Plan, _choice, seen, _truth);
        _drawing = MachineDrawing.Of(Session.Plan, _choice, seen, _truth);
        _loads = LoadFigure.Of(Session.Plan.Book, _choice);
        int gauged = _choice.Vehicle ?? Vehicles.First(v => v.IsTheMachine).Index;
        _gauges = [.. Session.Gauges.Where(g => g.System == _choice.System && g.Vehicle == gauged)];
        _trend = _gauges.FirstOrDefault();
        _view = ViewOf(seen);
        _drawn = _drawing.Render(seen, _truth);
        _pieces = _drawing.Goes ? _drawing.RenderPieces() : "";
        (_picture, _paper) = (new(), new());
    }

    // What is written anew with a new drawing: changes are sent to it. The rest of the page stays, with what has the focus there.
    private (object Picture, int Part) Part(int number) => (_picture, number);

    private MachineView ViewOf(MachineSnapshot seen) => MachineView.Of(_drawing, _gauges, _trend, AlongLine is { } line ? s => Along(line, s) : null, _loads, seen, _truth);

    private string Along(AlongTrain line, MachineSnapshot seen)
    {
        int at = Session.Along.IndexOf(line);
        Unit unit = Session.Plan.Book.ShownIn.GetValueOrDefault(Dimension.Pressure) ?? UnitTable.Get("psi");
        return LiveChart.Along(line, at < seen.Along.Length ? seen.Along[at] : [], Session.Plan.Book.Vehicles, unit);
    }

    private async Task DrawAgain()
    {
        Draw();
        StateHasChanged();
        await Task.Yield();
    }

    private void OnChanged()
    {
        if (_script is null)
        {
            // Nothing can be sent yet, and nothing may count as sent; asked for again as soon as the script is there.
            return;
        }

        _courier.Want();
    }

    private async Task Send()
    {
        if (Room.Session != Session || MachineDrawing.KeyOf(Session.Plan, _choice, Seen, _truth) != _laid)
        {
            await DrawAgain();
        }

        MachineSnapshot seen = Seen;
        MachineView next = ViewOf(seen);
        string[] changes = MachineView.Changes(_view, next);
        _view = next;
        if (changes.Length > 0)
        {
            await _script!.InvokeVoidAsync("apply", (object)changes);
        }

        Shown shown = new(seen.Journal.Length == 0 ? 0 : seen.Journal[^1].Time.Ticks + seen.Journal.Length, seen.Pace, seen.Trouble, seen.Faults.Length, Around);
        if (shown != _shown)
        {
            _shown = shown;
            StateHasChanged();
        }
    }

    private void TurnTruth()
    {
        _truth = !_truth;
        OnChanged();
    }

    private void ChooseTrend(LiveGauge gauge)
    {
        _trend = gauge;
        StateHasChanged();
        OnChanged();
    }

    private void Do(WorldAction action) => Refuse(Session.Do(action));

    private void Refuse(string? why)
    {
        _refused = why is null ? null : Say.With($"Not done: {why}.");
        StateHasChanged();
    }

    private async Task Turn(string position)
    {
        await Call("close", "positions");
        if (_turning is { } item)
        {
            Do(new WorldAction.Operate(-1, item.Name, position));
        }
    }

    private async Task Call(string what, string id)
    {
        if (_script is not null)
        {
            await _script.InvokeVoidAsync(what, id);
        }
    }

    /// <summary>What the page itself was last written for.</summary>
    private sealed record Shown(long Journal, Pace Pace, string? Trouble, int Faults, string Around);
}
