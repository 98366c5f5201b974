using System.Collections.Immutable;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Overview;
using Sightglass.Drawing.Plan;
using Sightglass.Drawing.Strip;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Walk;
using Sightglass.Web.Host;
using Sightglass.Web.Live;
using Sightglass.Web.Machine;

namespace Sightglass.Web.Walk;

/// <summary>The walk round the machine: the strip, what stands where the person is, and the ways on.</summary>
public sealed partial class WalkPage : IAsyncDisposable
{
    private static readonly string[] s_keys = ["ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown", "Home", "/", "?"];

    /// <summary>Drawn as large as it is shown, so that labels keep their 13 px.</summary>
    private static readonly StripOptions s_strip = new() { Scale = 38, MostTiers = 3, You = "" };

    /// <summary>The small picture of a train is as wide as this, pixels; that of a machine as it is.</summary>
    private const double OverviewWidth = 1100;

    private readonly HashSet<string> _been = [];

    // Stands for what is printed: a new one for another train.
    private object _sheet = new();
    private (string? Train, string? Vehicle, string? At)? _asked;
    private ImmutableHashSet<string> _visited = [];
    private int _at;
    private string? _item;
    private string _depth = "know";
    private string _strip = "";
    private string _natural = "";
    private ImmutableArray<string> _unnamed = [];
    private string _overview = "";
    private string _plan = "";
    private string _rows = "";
    private bool _moved;
    private IJSObjectReference? _script;
    private IJSObjectReference? _listening;
    private DotNetObjectReference<WalkPage>? _self;

    [Inject]
    private MachineRoom Room { get; set; } = null!;

    [Inject]
    private DataDesk Data { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    /// <summary>The place or item to begin at.</summary>
    [SupplyParameterFromQuery(Name = "at")]
    private string? StartAt { get; set; }

    /// <summary>The train to walk along; without one that of the running session, with another name the machine alone.</summary>
    [SupplyParameterFromQuery(Name = "train")]
    private string? AskedTrain { get; set; }

    /// <summary>The vehicle of the train to begin at.</summary>
    [SupplyParameterFromQuery(Name = "vehicle")]
    private string? AskedVehicle { get; set; }

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    private ClassBook Book { get; set; } = null!;

    private WalkRoute Route { get; set; } = null!;

    private bool RunsLeft { get; set; }

    private WalkStop Stop => Route.Stops[_at];

    private Item? Item => _item is null ? null : Book.Items[_item];

    private string Title => Item is { } item ? LabelOf(item.Name) : Words.Capital(Stop.Place.Name);

    private bool IsTrain => Book.Vehicles.Length > 1;

    private string VehicleHere => MachineChoice.NameOf(Book.Vehicles.FirstOrDefault(v => v.Index == Stop.Place.Vehicle.Index) ?? Book.Vehicles[0]);

    private string Lead => Say.Book(Item?.Purpose ?? Stop.Place.Text);

    private string How => (IsTrain, RunsLeft) switch
    {
        (true, true) => Say.It("The train is at your right hand, so the walk runs right to left, as your eyes see it."),
        (true, false) => Say.It("The train is at your left hand, so the walk runs left to right, as your eyes see it."),
        (false, true) => Say.It("The machine is at your right hand, so the walk runs right to left, as your eyes see it."),
        _ => Say.It("The machine is at your left hand, so the walk runs left to right, as your eyes see it."),
    };

    private string Progress
    {
        get
        {
            string[] order = [.. Route.Stops.SelectMany(s => s.Items)];
            return _item is null
                ? Say.With($"stop {_at + 1} of {Route.Stops.Length}")
                : Say.With($"stop {_at + 1} of {Route.Stops.Length}, item {Array.IndexOf(order, _item) + 1} of {order.Length}");
        }
    }

    private string Where
    {
        get
        {
            string from = Words.Capital(Stop.Place.Name);
            return Item?.Position is not { } p ? Say.With($"Seen from: {from}")
                : IsTrain ? Say.With($"Seen from: {from}. {p.X - Book.Front:0.0} m from the head of the train, {p.Z:0.0} m above rail")
                : Say.With($"Seen from: {from}. {p.X - Book.Front:0.0} m from the front, {p.Z:0.0} m above rail");
        }
    }

    /// <summary>The item's own, then those of the place, the gravest first; none twice.</summary>
    private ImmutableArray<Caution> Cautions =>
        [.. (Item?.Cautions ?? []).Concat(Book.Hazards.Values.Where(h => h.Places.Contains(Stop.Place.Name) || (Item is { } item && h.Items.Contains(item.Name))).Select(h => h.Caution))
            .GravestFirst()];

    /// <summary>Of the item; else of the place.</summary>
    private ImmutableArray<Picture> Pictures => [.. (Item is { } item ? Book.PicturesOf(item) : []).Concat(Book.PicturesAt(Stop.Place.Name)).DistinctBy(p => p.File)];

    private IEnumerable<(string Medium, string Words)> Legend => MediumMark.Legend.Where(m => Book.Systems.Values.Any(s => s.Medium == m.Medium));

    private ImmutableArray<(string Key, string Words)> AllKeys =>
    [
        (RunsLeft ? "←" : "→", Say.It("onward to the next stop")),
        (RunsLeft ? "→" : "←", Say.It("back to the stop before")),
        ("↓", Say.It("next item, then the next stop")),
        ("↑", Say.It("item before")),
        (Say.As("key", "Home"), Say.It("to the start of the walk")),
        ("/", Say.It("find a place or an item by name")),
        (Say.As("key", "Tab"), Say.It("into the strip, to buttons and links")),
        ("?", Say.It("this list")),
    ];

    protected override void OnParametersSet()
    {
        (string?, string?, string?) asked = (AskedTrain, AskedVehicle, StartAt);
        if (asked == _asked)
        {
            return;
        }

        bool another = _asked is null || _asked.Value.Train != AskedTrain;
        _asked = asked;
        if (another)
        {
            Arrive();
        }

        if (StartAt is { } name && (Book.Items.ContainsKey(name) || Route.Find(name) is not null))
        {
            _ = Book.Items.ContainsKey(name) ? PutItem(name) : PutStop(Index(name));
        }
        else if (another || AskedVehicle is not null)
        {
            PutStop(FirstOf(AskedVehicle));
        }
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            _script = await Js.InvokeAsync<IJSObjectReference>("import", "./assets/pages.js");
            _self = DotNetObjectReference.Create(this);
            _listening = await _script.InvokeAsync<IJSObjectReference>("listen", _self, "strip-frame", s_keys);
        }
        else if (_moved && _script is not null)
        {
            _moved = false;
            await _script.InvokeVoidAsync("follow", true);
        }
    }

    /// <summary>A key that the page listens to.</summary>
    [JSInvokable]
    public async Task PressKey(string key)
    {
        switch (key)
        {
            case "ArrowLeft":
                Hop(RunsLeft ? 1 : -1);
                break;
            case "ArrowRight":
                Hop(RunsLeft ? -1 : 1);
                break;
            case "ArrowDown":
                StepItem(1);
                break;
            case "ArrowUp":
                StepItem(-1);
                break;
            case "Home":
                PutStop(0);
                break;
            case "/":
                await Call("open", "find");
                return;
            case "?":
                await Call("open", "keys");
                return;
        }

        StateHasChanged();
    }

    /// <summary>An item of the strip was touched.</summary>
    [JSInvokable]
    public void TouchItem(string name) => GoToItem(name);

    /// <summary>A stop of the strip was touched.</summary>
    [JSInvokable]
    public void TouchPlace(string name) => GoToPlace(name);

    public async ValueTask DisposeAsync()
    {
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

    private static ImmutableArray<string> DepthsOf(Item item) => [.. s_depthOrder.Where(d => TextOf(item, d).Length > 0)];

    private static readonly string[] s_depthOrder = ["know", "operate", "repair"];

    private static string TextOf(Item item, string depth) => depth switch
    {
        "know" => item.Texts.Know,
        "operate" => item.Texts.Operate,
        _ => item.Texts.Repair,
    };

    private string DepthOf(Item item) => TextOf(item, _depth).Length > 0 ? _depth : DepthsOf(item)[0];

    private string LabelOf(string item) => Words.Capital(Book.Items.TryGetValue(item, out Item? known) && known.Label.Length > 0 ? known.Label : item);

    // At another train, or at the first.
    private void Arrive()
    {
        Book = PhotoShelf.With(Room.Shelf.BookOf(Room.Session.Start.RoadNumber, AskedTrain ?? Room.Session.Plan.Book.TrainInUse), Data);
        Route = WalkRoute.Of(Book);
        RunsLeft = new WalkSides(Book).RunsLeft;
        _rows = WalkRows.Of(Book, Room.Shelf.BookOf(Room.Session.Start.RoadNumber, null));
        _sheet = new();
        _been.Clear();
        _at = 0;
        _item = null;
    }

    private int FirstOf(string? vehicle) => Math.Max(0, Route.Stops.ToList().FindIndex(s => Book.Vehicles.Any(v => v.Index == s.Place.Vehicle.Index && MachineChoice.NameOf(v) == vehicle)));

    /// <summary>Another train or vehicle: by its address, so that it can be sent to somebody.</summary>
    private void Choose((string? Train, string? Vehicle) chosen)
    {
        string train = chosen.Train ?? MachineChoice.TheMachine;
        if (train == (Book.TrainInUse ?? MachineChoice.TheMachine))
        {
            PutStop(FirstOf(chosen.Vehicle));
        }

        Navigation.NavigateTo(Navigation.GetUriWithQueryParameters(new Dictionary<string, object?> { ["train"] = train, ["vehicle"] = chosen.Vehicle, ["at"] = null }), replace: true);
    }

    private void Onward() => Hop(1);

    private void Back() => Hop(-1);

    private void Hop(int by)
    {
        int to = Math.Clamp(_at + by, 0, Route.Stops.Length - 1);
        if (to != _at)
        {
            PutStop(to);
        }
    }

    private void StepItem(int by)
    {
        ImmutableArray<string> here = Stop.Items;
        int next = (_item is null ? -1 : here.IndexOf(_item)) + by;
        if (next >= 0 && next < here.Length)
        {
            Select(here[next]);
        }
        else if (by > 0 && _at + 1 < Route.Stops.Length)
        {
            PutStop(_at + 1);
        }
        else if (by < 0 && _at > 0)
        {
            PutStop(_at - 1);
            Select(Stop.Items.LastOrDefault() ?? _item);
        }
    }

    private void GoToPlace(string name)
    {
        PutStop(Index(name));
        StateHasChanged();
    }

    private void GoToItem(string name)
    {
        PutItem(name);
        StateHasChanged();
    }

    private int Index(string place) => Math.Max(0, Route.Stops.ToList().FindIndex(s => s.Place.Name == place));

    private bool PutItem(string name)
    {
        if (!Book.Items.TryGetValue(name, out Item? item))
        {
            return false;
        }

        if (!item.Places.Contains(Stop.Place.Name) && !item.Places.IsEmpty)
        {
            PutStop(Index(item.Places[0]));
        }

        Select(name);
        return true;
    }

    private bool PutStop(int stop)
    {
        _at = stop;
        _been.Add(Stop.Place.Name);
        _visited = [.. _been];
        Select(Stop.Items.FirstOrDefault());
        return true;
    }

    private void Select(string? item)
    {
        _item = item;
        _moved = true;
        StripOptions options = s_strip with { CurrentPlace = Stop.Place.Name, SelectedItem = item, Visited = _visited };
        StripLayout layout = StripLayout.Of(Book, options);
        _natural = FormattableString.Invariant($"--natural:{layout.Sheet.Height:0}px");
        _strip = StripDrawing.Render(layout, options);
        _unnamed = [.. layout.Unnamed.Where(i => i != item)];
        _overview = OverviewDrawing.Render(Book, new OverviewOptions { CurrentPlace = Stop.Place.Name, Visited = _visited, Scale = Math.Min(14, IsTrain ? OverviewWidth / (2 * (Book.Length + Book.Width)) : 14) });
        _plan = PlanDrawing.Render(Book, new PlanOptions { CurrentPlace = Stop.Place.Name, Visited = _visited });
    }

    private async Task Call(string what, string id)
    {
        if (_script is not null)
        {
            await _script.InvokeVoidAsync(what, id);
        }
    }
}
