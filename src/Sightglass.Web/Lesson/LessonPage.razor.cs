using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Paper.Papers;
using Sightglass.Storage.Lessons;
using Sightglass.Storage.Notes;
using Sightglass.Training.Lessons;
using Sightglass.Training.Routes;
using Sightglass.Web.Host;
using Sightglass.Web.Live;
using Sightglass.Web.Share;

namespace Sightglass.Web.Lesson;

/// <summary>A lesson round the machine that is served, planned anew with every change of what is asked; its address can be sent to somebody, and its print is the paper.</summary>
public sealed partial class LessonPage : IAsyncDisposable
{
    private string _asked = "";
    private string _name = "";
    private bool _editing;
    private bool _dropping;
    private bool _keepAsks;
    private string? _refused;
    private string _audienceSaid = "";
    private string? _audienceBefore;
    private IJSObjectReference? _script;
    private LessonPlan? _spoken;

    [Inject]
    private MachineRoom Room { get; set; } = null!;

    [Inject]
    private DataDesk Data { get; set; } = null!;

    [Inject]
    private ShareDesk Share { get; set; } = null!;

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

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

    [SupplyParameterFromQuery(Name = "words")]
    private int? AskedWords { get; set; }

    [SupplyParameterFromQuery(Name = "depth")]
    private string? AskedDepth { get; set; }

    [SupplyParameterFromQuery(Name = "audience")]
    private string? AskedAudience { get; set; }

    private ClassBook Book => Room.Shelf.BookOf(Room.Session.Start.RoadNumber, null);

    private LessonAsk Ask => new(Book, AskedPurpose, AskedPeople, AskedStations, AskedMinutes, AskedWords, AskedDepth, AskedAudience);

    private string Purpose => Ask.Purpose;

    private int People => Ask.People;

    private int Stations => Ask.Stations;

    private int Minutes => Ask.Minutes;

    private int WordsAMinute => Ask.Words;

    private Depth Depth => Ask.Depth;

    private string Audience => Ask.Audience;

    private string? Paper { get; set; }

    [SupplyParameterFromQuery(Name = "kept")]
    private Guid? AskedKept { get; set; }

    private LessonDesk Desk => new(Data.Folder, Clock);

    private SavedLesson? Kept { get; set; }

    private ImmutableArray<LessonEdit> Edits { get; set; } = [];

    private ImmutableArray<EditMisfit> Misfits { get; set; } = [];

    private LessonPlan? Planned { get; set; }

    /// <summary>The lesson as the book has it; planned only where its words are edited.</summary>
    private LessonPlan? BookPlan => LessonPlanner.Plan(Book, Request() with { Edits = [] });

    protected override void OnParametersSet()
    {
        if (AskedKept != Kept?.Id)
        {
            Kept = AskedKept is { } id && Desk.Find(id) is { } kept && kept.Book == Book.Title ? kept : null;
            (_editing, _dropping, _asked) = (_editing && Kept is not null, false, "");
        }

        string asked = string.Join('|', Book.RoadNumberInUse, Purpose, People, Stations, Minutes, WordsAMinute, Depth, Audience);
        if (asked != _asked)
        {
            _asked = asked;
            Plan();
        }

        if (_audienceBefore is { } before)
        {
            (_audienceBefore, _audienceSaid) = (null, AudienceAfter(before));
        }

        if (_keepAsks && Kept is { } kept_)
        {
            _keepAsks = false;
            Desk.Ask(kept_.Id, Query(null));
        }
    }

    private void Plan()
    {
        Edits = Kept is { } kept ? [.. Desk.EditsOf(kept.Id)] : [];
        Planned = LessonPlanner.Plan(Book, Request());
        Misfits = Planned?.Misfits ?? [];
        Paper = Planned is { } plan ? LessonPaper.Write(plan, PhotoShelf.Album(Room.Shelf, Book, Data)) : null;
    }

    private LessonRequest Request() => Ask.Request(Edits, new DefectDesk(Data.Folder, Clock), DateOnly.FromDateTime(Clock.GetLocalNow().Date));

    /// <summary>What another walk did to the audience; empty where nothing is to be told.</summary>
    private string AudienceAfter(string before) =>
        Audience != before ? Ask.AudienceOfWalk is null
            ? Say.With($"The audience is now “{Named(Audience)}”: the book does not say whom “{Say.Word(Purpose)}” is for. What you choose there stays.")
            : Say.With($"The audience is now “{Named(Audience)}”, as the walk “{Purpose}” says. What you choose there stays.")
        : Ask.IsAudienceChosen && Ask.AudienceOfWalk is { } own && own != Audience ? Say.With($"The audience stays “{Named(Audience)}”, as you chose; the walk “{Purpose}” says “{own}”.")
        : "";

    private static string Named(string audience) => audience.Length > 0 ? Say.Book(audience) : Say.It("anybody");

    private static string Told(LessonEdit edit) => edit.Sort == LessonEditSort.Item ? Say.It("you pass it by.")
        : edit.Was.Length == 0 ? Say.With($"you add “{edit.Becomes}”.")
        : edit.Becomes.Length == 0 ? Say.With($"you leave out “{edit.Was}”.")
        : Say.With($"you say “{edit.Becomes}” instead of “{edit.Was}”.");

    private void Keep()
    {
        (Guid? id, _refused) = Desk.Keep(Book.Title, _name, "", "");
        if (id is { } kept)
        {
            _name = "";
            Desk.Ask(kept, Query(null));
            Navigation.NavigateTo($"lesson?{Query(kept)}", replace: true);
        }
    }

    private void Open(ChangeEventArgs change)
    {
        SavedLesson? kept = Guid.TryParse(change.Value?.ToString(), out Guid id) ? Desk.Find(id) : null;
        Navigation.NavigateTo(kept is null ? $"lesson?{Query(null)}" : $"lesson?{kept.Asks}&kept={kept.Id}", replace: true);
    }

    /// <summary>Asked twice: what is forgotten does not come back.</summary>
    private void Drop()
    {
        if (!_dropping)
        {
            _dropping = true;
            return;
        }

        Desk.Drop(Kept!.Id);
        Navigation.NavigateTo($"lesson?{Query(null)}", replace: true);
    }

    private void Edit(LessonEditSort sort, string item, string was, string becomes)
    {
        Desk.Edit(Kept!.Id, sort, item, was, becomes, Kept.By);
        Again();
    }

    private void Undo(LessonEdit edit)
    {
        Desk.Undo(edit.Id);
        Again();
    }

    private void PutOn(EditMisfit misfit)
    {
        Desk.PutOn(misfit.Edit.Id, misfit.Now!);
        Again();
    }

    private void Again()
    {
        Plan();
        StateHasChanged();
    }

    private string Query(Guid? kept) => Ask.Query(kept);

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        try
        {
            if (firstRender)
            {
                await using IJSObjectReference script = await Js.InvokeAsync<IJSObjectReference>("import", "./assets/pages.js");
                _script = await Js.InvokeAsync<IJSObjectReference>("import", "./assets/aloud.js");
                await script.InvokeVoidAsync("alive");
            }

            if (_script is not null && Planned is { } plan && plan != _spoken)
            {
                _spoken = plan;
                await _script.InvokeVoidAsync("lines", (object)Narration.Of(plan).Select(l => l.Text).ToArray());
            }
        }
        catch (JSDisconnectedException)
        {
            // The browser has left in the meantime.
        }
    }

    public async ValueTask DisposeAsync()
    {
        try
        {
            if (_script is not null)
            {
                await _script.InvokeVoidAsync("lines", (object)Array.Empty<string>());
                await _script.DisposeAsync();
            }
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and its voice with it.
        }
    }

    /// <summary>Another purpose brings its own audience only where nobody has chosen one.</summary>
    private void Go(ChangeEventArgs change, string what)
    {
        string value = change.Value?.ToString() ?? "";
        (_audienceBefore, _audienceSaid) = (what == nameof(Purpose) ? Audience : null, "");
        _keepAsks = Kept is not null;
        Navigation.NavigateTo(
            Navigation.GetUriWithQueryParameters(new Dictionary<string, object?>
            {
                ["shows"] = what == nameof(Purpose) ? value : Purpose,
                ["people"] = Number(what == nameof(People), value, People),
                ["stations"] = Number(what == nameof(Stations), value, Stations),
                ["minutes"] = Number(what == nameof(Minutes), value, Minutes),
                ["words"] = Number(what == nameof(WordsAMinute), value, WordsAMinute),
                ["depth"] = (what == nameof(Depth) ? value : Depth.ToString()).ToLowerInvariant(),
                ["audience"] = what == nameof(Audience) ? value : AskedAudience,
                ["kept"] = Kept?.Id,
            }),
            replace: true);
    }

    private static int Number(bool isThis, string typed, int now) => isThis && int.TryParse(typed, NumberStyles.Integer, CultureInfo.InvariantCulture, out int number) ? number : now;
}
