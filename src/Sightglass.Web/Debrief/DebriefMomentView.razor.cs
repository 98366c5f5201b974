using Microsoft.AspNetCore.Components;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Cards.Story;
using Sightglass.Drawing.Overview;
using Sightglass.Drawing.Svg;
using Sightglass.Paper.Papers;
using Sightglass.Training.Debrief;
using Sightglass.World.Journal;

namespace Sightglass.Web.Debrief;

/// <summary>One moment of a drill: where everybody was, what could be known there, and what was so.</summary>
public sealed partial class DebriefMomentView
{
    /// <summary>Numbers that stand in the table.</summary>
    private const int MostRows = 8;

    private readonly Dictionary<string, string> _strips = new(StringComparer.Ordinal);
    private DebriefFilm? _of;
    private int[] _rows = [];
    private (SimTime At, string Words)[] _story = [];
    private string _typed = "";
    private string _said = "";
    private bool _busy;

    [Parameter]
    [EditorRequired]
    public DebriefFilm Film { get; set; } = null!;

    [Parameter]
    [EditorRequired]
    public DebriefMoment Moment { get; set; } = null!;

    /// <summary>Whether the moment was run to exactly.</summary>
    [Parameter]
    public bool Exact { get; set; }

    /// <summary>Whether what the program found is told, too.</summary>
    [Parameter]
    public bool Tells { get; set; } = true;

    [Parameter]
    public EventCallback<SimTime> Moved { get; set; }

    /// <summary>Runs to a moment exactly; null where that cannot be done.</summary>
    [Parameter]
    public Func<SimTime, Task>? Look { get; set; }

    private SimTime? Before => _story.Where(e => e.At < Moment.At).Select(e => (SimTime?)e.At).LastOrDefault();

    private SimTime? After => _story.Where(e => e.At > Moment.At).Select(e => (SimTime?)e.At).FirstOrDefault();

    /// <summary>When what was told last came about.</summary>
    private SimTime? Now => _story.Where(e => e.At <= Moment.At).Select(e => (SimTime?)e.At).LastOrDefault();

    private string Faults => string.Join("; ", Moment.Faults.Select(f => $"{Say.Book(f.Item)}: {new PositionWord(f.Item, f.Fault)}"));

    /// <summary>What was within reach beside the rows of the table.</summary>
    private (string Name, string Says)[] Others =>
    [
        .. from item in Moment.Seen.Items
           where !_rows.Any(r => Film.Signals[r].Instrument?.Name == item.Name)
           let says = DebriefWords.Seen(Film.Drill.Plan.Book, item)
           where says is not null
           select (Live.Words.Capital(item.Name), says),
    ];

    /// <summary>The small strip with the trainee where they stood last.</summary>
    private string Strip
    {
        get
        {
            string place = Moment.People[Film.Drill.Person].Place;
            return _strips.TryGetValue(place, out string? drawn)
                ? drawn
                : _strips[place] = OverviewDrawing.Render(Film.Drill.Plan.Book, new() { CurrentPlace = place, Person = true }, SvgOptions.Inline with { IdPrefix = "db-strip-" });
        }
    }

    protected override void OnParametersSet()
    {
        if (!ReferenceEquals(_of, Film))
        {
            _of = Film;
            _rows = [.. Film.Telling(MostRows)];
            _story =
            [
                .. Film.Result.Outcome.Notes.Where(n => Tells || !DebriefWords.IsFound(n.Kind)).Select(n => (n.At, Words: DebriefWords.Sentence(Film.Drill, n))).Where(n => n.Words is not null).Select(n => (n.At, n.Words!))
                    .Concat(Film.Result.Journal.Where(j => j.Kind is JournalKind.Deed or JournalKind.Said or JournalKind.Truth or JournalKind.Hazard or JournalKind.Plant or JournalKind.End).Select(j => (At: j.Time, Words: j.Text)))
                    .OrderBy(e => e.At),
            ];
        }
    }

    private async Task LookThere(Func<SimTime, Task> look)
    {
        if (MomentText.TryRead(_typed) is not { } at)
        {
            _said = Say.It("Write a moment such as 12:07 or 1:02:30.");
            return;
        }

        if (at > Film.End)
        {
            _said = Say.With($"It ends at {new ClockWords(Film.End)}.");
            return;
        }

        (_busy, _said) = (true, Say.It("It is run again up to there …"));
        StateHasChanged();
        await look(at);
        (_busy, _said) = (false, "");
    }
}
