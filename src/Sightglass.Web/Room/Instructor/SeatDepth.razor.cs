using Microsoft.AspNetCore.Components;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Web.Live;
using Sightglass.World;

namespace Sightglass.Web.Room.Instructor;

/// <summary>One of those who work in a drill, in depth: what they went through, what is true, how the evaluation falls, and what the instructor may do.</summary>
public sealed partial class SeatDepth
{
    private string _advice = "";

    [Parameter]
    [EditorRequired]
    public SeatRow Row { get; set; } = null!;

    [Parameter]
    [EditorRequired]
    public TrainingRoom Room { get; set; } = null!;

    /// <summary>Shows why something was not done; null: nothing is wrong.</summary>
    [Parameter]
    [EditorRequired]
    public Action<string?> Refuse { get; set; } = null!;

    /// <summary>Opens, closes or focuses something of the page by its id.</summary>
    [Parameter]
    [EditorRequired]
    public Func<string, string, Task> Call { get; set; } = null!;

    /// <summary>What runs on of this drill, or did last; null: nothing.</summary>
    [Parameter]
    public RunOn? Run { get; set; }

    /// <summary>Lets this drill run on.</summary>
    [Parameter]
    [EditorRequired]
    public Action<RunOn> RunsOn { get; set; } = null!;

    private RoomDrill Drill => Row.Drill!;

    private DrillSession Session => Row.Session!;

    private DrillLook Look => Session.Current;

    private DrillTrace Trace { get; set; } = DrillTrace.Empty;

    private Drill Asked => Session.Drill.Drill;

    private bool IsJudged => Row.Seat.Person == Session.Drill.Person;

    private bool IsHeld => (Session.Held & (HoldReason.One | HoldReason.Alone)) != 0;

    private PersonLook? Person => Row.Seat.Person < Look.People.Length ? Look.People[Row.Seat.Person] : null;

    private string Where => Person is not { } person ? ""
        : Say.Begin(person.Place is { } place ? Say.With($"{person.Role}, at {place}, since {SeatRows.ClockOf(person.Since)}")
            : Say.With($"{person.Role}, on the way to {person.Towards ?? person.From}, since {SeatRows.ClockOf(person.Since)}"));

    private string[] Unplayed
    {
        get
        {
            HashSet<string> played = [.. Room.Seats.Where(s => s.Drill == Drill && s.Person < Look.People.Length).Select(s => Look.People[s.Person].Role)];
            return [.. Session.Plan.Book.Roles.Keys.Where(r => !played.Contains(r))];
        }
    }

    protected override void OnParametersSet() => Trace = Session.Trace;

    private void TurnHold()
    {
        if (IsHeld)
        {
            Session.Release(HoldReason.One);
            Session.Release(HoldReason.Alone);
        }
        else
        {
            Session.Hold(HoldReason.One);
        }
    }

    private void Release(HoldReason reason) => Session.Release(reason);

    private void SetPace(Pace pace) => Session.Wanted = pace;

    private void TurnOver() => Do(Look.IsTakenOver ? new WorldAction.HandBack(Row.Seat.Person) : new WorldAction.TakeOver(Row.Seat.Person));

    private void Do(WorldAction action) => Refuse(Session.Do(action));

    private void Observe(string item, Verdict verdict) => Refuse(Room.Observe(Drill, item, verdict));

    private void Coach()
    {
        string? why = Room.Coach(Drill, _advice);
        Refuse(why);
        _advice = why is null ? "" : _advice;
    }

    private void Begin(double seconds, Func<World.World, bool>? until) => RunsOn(RunOn.Begin(Session, seconds, until));

    /// <summary>Repeats the record up to a moment, off the page: a long one takes a while.</summary>
    private async Task<string?> GoBack(SimTime at)
    {
        Tongue tongue = Tongue.Spoken;
        return await Task.Run(() =>
        {
            using (tongue.Speak())
            {
                return Room.GoBack(Drill, at);
            }
        });
    }

    private async Task End()
    {
        await Call("close", "end");
        Refuse(Room.End(Drill));
    }
}
