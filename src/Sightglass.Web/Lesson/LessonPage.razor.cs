using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Book.Model;
using Sightglass.Paper;
using Sightglass.Training.Lessons;
using Sightglass.Training.Routes;
using Sightglass.Web.Live;

namespace Sightglass.Web.Lesson;

/// <summary>A lesson round the machine that is served, planned anew with every change of what is asked; its address can be sent to somebody, and its print is the paper.</summary>
public sealed partial class LessonPage
{
    private const int MostPeople = 60;
    private const int MostStations = 12;

    private string _asked = "";

    [Inject]
    private MachineRoom Room { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    [SupplyParameterFromQuery(Name = "shows")]
    private string? AskedPurpose { get; set; }

    [SupplyParameterFromQuery(Name = "people")]
    private int? AskedPeople { get; set; }

    [SupplyParameterFromQuery(Name = "stations")]
    private int? AskedStations { get; set; }

    [SupplyParameterFromQuery(Name = "minutes")]
    private int? AskedMinutes { get; set; }

    [SupplyParameterFromQuery(Name = "depth")]
    private string? AskedDepth { get; set; }

    [SupplyParameterFromQuery(Name = "audience")]
    private string? AskedAudience { get; set; }

    private ClassBook Book => Room.Shelf.BookOf(Room.Session.Start.RoadNumber, null);

    private string Purpose => RoutePurposes.Of(Book) is var all && all.Contains(AskedPurpose, StringComparer.Ordinal) ? AskedPurpose! : all.First();

    private int People => Math.Clamp(AskedPeople ?? 10, 1, MostPeople);

    private int Stations => Math.Clamp(AskedStations ?? 1, 1, MostStations);

    private int Minutes => Math.Clamp(AskedMinutes ?? 120, 1, 600);

    private Depth Depth => Enum.TryParse(AskedDepth, ignoreCase: true, out Depth depth) && Enum.IsDefined(depth) ? depth : Depth.Operate;

    private string Audience => AskedAudience is not null && Book.Roles.ContainsKey(AskedAudience) ? AskedAudience
        : AskedAudience is null && Book.Walks.TryGetValue(Purpose, out PlannedWalk? walk) ? walk.Role ?? "" : "";

    private string? Paper { get; set; }

    protected override void OnParametersSet()
    {
        string asked = string.Join('|', Book.RoadNumberInUse, Purpose, People, Stations, Minutes, Depth, Audience);
        if (asked != _asked)
        {
            _asked = asked;
            LessonRequest request = new(RoutePurposes.Find(Purpose, Book)! with { Role = Audience.Length > 0 ? Audience : null }, People, Depth)
            {
                Minutes = Minutes,
                Stations = Stations,
                Audience = Audience.Length > 0 ? Audience : null,
                Kit = Book.Walks.TryGetValue(Purpose, out PlannedWalk? walk) ? walk.Kit : [],
            };
            Paper = LessonPlanner.Plan(Book, request) is { } plan ? LessonPaper.Write(plan) : null;
        }
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
            // The browser has left in the meantime.
        }
    }

    /// <summary>Another purpose begins with its own audience.</summary>
    private void Go(ChangeEventArgs change, string what)
    {
        string value = change.Value?.ToString() ?? "";
        Navigation.NavigateTo(
            Navigation.GetUriWithQueryParameters(new Dictionary<string, object?>
            {
                ["shows"] = what == nameof(Purpose) ? value : Purpose,
                ["people"] = Number(what == nameof(People), value, People),
                ["stations"] = Number(what == nameof(Stations), value, Stations),
                ["minutes"] = Number(what == nameof(Minutes), value, Minutes),
                ["depth"] = (what == nameof(Depth) ? value : Depth.ToString()).ToLowerInvariant(),
                ["audience"] = what == nameof(Purpose) ? null : what == nameof(Audience) ? value : Audience,
            }),
            replace: true);
    }

    private static int Number(bool isThis, string typed, int now) => isThis && int.TryParse(typed, NumberStyles.Integer, CultureInfo.InvariantCulture, out int number) ? number : now;
}
