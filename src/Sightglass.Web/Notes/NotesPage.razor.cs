using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Storage.Notes;
using Sightglass.Training.Defects;
using Sightglass.Training.Questions;
using Sightglass.Web.Host;
using Sightglass.Web.Live;

namespace Sightglass.Web.Notes;

/// <summary>What a lesson leaves behind: questions with an owner and a day, and what does not work on which machine.</summary>
public sealed partial class NotesPage
{
    private const int UsualDays = 14;

    private static readonly string[] s_depths = ["know", "operate", "repair"];

    private IReadOnlyList<OpenQuestion> _questions = [];
    private IReadOnlyList<Defect> _defects = [];
    private string _question = "";
    private string _item = "";
    private string _askedBy = "";
    private string _owner = "";
    private DateOnly _due;
    private string? _notAsked;
    private Guid? _answering;
    private string _answer = "";
    private string _answeredBy = "";
    private string? _notAnswered;
    private string _road = "";
    private string _defectItem = "";
    private string _defect = "";
    private string _restriction = "";
    private string _foundBy = "";
    private DateOnly _foundOn;
    private string? _notFound;
    private Guid? _mending;
    private string _mendedBy = "";
    private DateOnly _mendedOn;
    private string? _notMended;

    [Inject]
    private MachineRoom Room { get; set; } = null!;

    [Inject]
    private DataDesk Data { get; set; } = null!;

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    /// <summary>An item that a question is to be about.</summary>
    [SupplyParameterFromQuery(Name = "about")]
    private string? AskedItem { get; set; }

    private ClassBook Book => Room.Shelf.Book;

    private DateOnly Today => DateOnly.FromDateTime(Clock.GetLocalNow().Date);

    private QuestionDesk Questions => new(Data.Folder, Clock);

    private DefectDesk Defects => new(Data.Folder, Clock);

    protected override void OnInitialized()
    {
        (_due, _foundOn, _mendedOn) = (Today.AddDays(UsualDays), Today, Today);
        _road = Room.Session.Start.RoadNumber ?? "";
        _item = AskedItem ?? "";
        Read();
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

    private string AskedOf(OpenQuestion question) => (question.Item, question.AskedBy.Length > 0) switch
    {
        (null, false) => Say.With($"asked on {Day(question.AskedAt)}."),
        (null, true) => Say.With($"asked by {question.AskedBy} on {Day(question.AskedAt)}."),
        ({ } item, false) => Say.With($"{Words.Capital(item)}; asked on {Day(question.AskedAt)}."),
        ({ } item, true) => Say.With($"{Words.Capital(item)}; asked by {question.AskedBy} on {Day(question.AskedAt)}."),
    };

    private string DueOf(OpenQuestion question) => question.IsLate(Today)
        ? Say.With($"{question.Owner} finds out by {question.Due:yyyy-MM-dd}, late.")
        : Say.With($"{question.Owner} finds out by {question.Due:yyyy-MM-dd}.");

    private static string FoundOf(Defect defect) => defect.Item is { } item
        ? Say.With($"{Words.Capital(item)}; found by {defect.FoundBy} on {defect.FoundOn:yyyy-MM-dd}.")
        : Say.With($"found by {defect.FoundBy} on {defect.FoundOn:yyyy-MM-dd}.");

    private string Day(DateTimeOffset instant) => TimeZoneInfo.ConvertTime(instant, Clock.LocalTimeZone).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private void Read() => (_questions, _defects) = (Questions.All(Book), Defects.All(Book));

    private void Ask()
    {
        _notAsked = Questions.Ask(Book, _question, _item, _askedBy, _owner, _due);
        if (_notAsked is null)
        {
            (_question, _item, _askedBy) = ("", "", "");
            Read();
        }
    }

    private void Begin(OpenQuestion question) => (_answering, _answer, _answeredBy, _notAnswered) = (question.Id, "", question.Owner, null);

    private void Answer(OpenQuestion question)
    {
        _notAnswered = Questions.Answer(question.Id, _answer, _answeredBy);
        if (_notAnswered is null)
        {
            _answering = null;
        }

        Read();
    }

    private void Propose(OpenQuestion question, string depth)
    {
        _notAsked = Questions.Propose(Book, question.Id, depth);
        Read();
    }

    private void Find()
    {
        _notFound = Defects.Find(Book, _road, _defectItem, _defect, _restriction, _foundBy, _foundOn);
        if (_notFound is null)
        {
            (_defect, _defectItem, _restriction) = ("", "", "");
            Read();
        }
    }

    private void Begin(Defect defect) => (_mending, _mendedBy, _mendedOn, _notMended) = (defect.Id, "", Today, null);

    private void Mend(Defect defect)
    {
        _notMended = Defects.Mend(defect.Id, _mendedBy, _mendedOn);
        if (_notMended is null)
        {
            _mending = null;
        }

        Read();
    }
}
