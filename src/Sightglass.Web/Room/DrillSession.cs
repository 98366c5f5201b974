using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Training.Drills;
using Sightglass.Training.Evaluation;
using Sightglass.Web.Live;
using Sightglass.World;
using Sightglass.World.Journal;
using Sightglass.World.Records;

namespace Sightglass.Web.Room;

/// <summary>A drill under way with people in it. When it is over it is run at once for as long as what was reached must stay so, and its record is closed.</summary>
public sealed class DrillSession : LiveWorld
{
    /// <summary>Simulated seconds for which one beat runs on what is over: others wait meanwhile.</summary>
    private const double SettleSlice = 30;

    /// <summary>Simulated seconds between looks while it is run on until something is so.</summary>
    private const double ForwardStep = 1;

    /// <summary>Simulated seconds between looks while it is run on to a moment.</summary>
    private const double ForwardSlice = 10;

    /// <summary>Looks on the way to where a record ends.</summary>
    private const int RestoredLooks = 120;

    private readonly DrillTracer _tracer;
    private DrillRun _run = null!;
    private ImmutableHashSet<int>? _watched;
    private Pace _wanted = Pace.Real;

    private DrillSession(BoundDrill drill, SessionStart start, TimeProvider clock, RecordFile? record)
        : base(drill.Plan, start, clock, record)
    {
        (Drill, Topics) = (drill, DrillTopics.Of(drill));
        _tracer = new(Topics);
    }

    public BoundDrill Drill { get; }

    /// <summary>The quantities that it is about.</summary>
    public DrillTopics Topics { get; }

    /// <summary>What they have been, and where everybody was.</summary>
    public DrillTrace Trace
    {
        get
        {
            lock (Gate)
            {
                return _tracer.Trace;
            }
        }
    }

    /// <summary>What was seen last: everybody's page is made from it.</summary>
    public DrillLook Current { get; private set; } = new();

    /// <summary>What holds it.</summary>
    public HoldReason Held { get; private set; } = HoldReason.Brief;

    /// <summary>How fast it goes when nothing holds it.</summary>
    public Pace Wanted
    {
        get => _wanted;
        set => Arrange(Held, value);
    }

    /// <summary>Numbers of the people through whose eyes somebody looks now; of the others only is known where they are. Null: all, at first.</summary>
    public ImmutableHashSet<int>? Watched
    {
        get => _watched;
        set
        {
            lock (Gate)
            {
                if (IsClosed || (value is not null && _watched is not null && value.SetEquals(_watched)))
                {
                    return;
                }

                _watched = value;
                See(World.Now);
            }

            Tell();
        }
    }

    /// <summary>Of each objective how far it has come.</summary>
    public ImmutableArray<DrillProgress> Progress => _tracer.Progress;

    /// <summary>Begins anew, held until the trainee has been told what it is about.</summary>
    /// <param name="drill">On the machine of its case.</param>
    /// <param name="start">Its seed and case.</param>
    /// <param name="clock">The clock on the wall.</param>
    /// <param name="record">Takes what is done, or null where nothing is kept.</param>
    /// <param name="found">Says why not.</param>
    public static DrillSession? Begin(BoundDrill drill, SessionStart start, TimeProvider clock, RecordFile? record, DiagnosticList found) =>
        Begin(drill, start, clock, record, found, null);

    /// <summary>Begins anew, with beats of its own.</summary>
    internal static DrillSession? Begin(BoundDrill drill, SessionStart start, TimeProvider clock, RecordFile? record, DiagnosticList found, Metre? metre) =>
        Made(drill, start, null, clock, record, found, metre);

    /// <summary>Goes on where a record ends: its actions are done again, without waiting.</summary>
    public static DrillSession? Restore(BoundDrill drill, SessionRecord record, TimeProvider clock, RecordFile? file, DiagnosticList found) =>
        Restore(drill, record, clock, file, found, null);

    /// <summary>Goes on where a record ends, with beats of its own.</summary>
    internal static DrillSession? Restore(BoundDrill drill, SessionRecord record, TimeProvider clock, RecordFile? file, DiagnosticList found, Metre? metre)
    {
        ArgumentNullException.ThrowIfNull(record);
        return Made(drill, record.Header.Start, record, clock, file, found, metre);
    }

    /// <summary>Lets one more reason hold it.</summary>
    public void Hold(HoldReason reason) => Arrange(Held | reason, _wanted);

    /// <summary>Takes a reason away; it goes when none is left.</summary>
    public void Release(HoldReason reason) => Arrange(Held & ~reason, _wanted);

    /// <summary>Does what a trainee does.</summary>
    /// <returns>Null once it is on disk and begun; else why it was not done.</returns>
    public string? Act(WorldAction action)
    {
        ArgumentNullException.ThrowIfNull(action);
        DrillLook now = Current;
        bool stops = action is WorldAction.Stop;
        string? refused = now.IsOver ? Say.It("the drill is over")
            : Held != HoldReason.None && !stops ? Say.It("the clock stands; it waits until it goes")
            : now.IsTakenOver && !stops ? Say.It("the instructor has taken over")
            : Do(action);
        if (stops && refused is null)
        {
            Hold(HoldReason.Stop);
        }

        return refused;
    }

    /// <summary>One beat of the clock on the wall, now.</summary>
    /// <returns>Whether it is done with.</returns>
    public bool Beat() => Beat(null);

    /// <summary>One beat of the clock on the wall.</summary>
    /// <param name="wall">The reading of the clock for which it is due, not later than now; null: now.</param>
    /// <returns>Whether it is done with: judged, or the numbers could not go on.</returns>
    public bool Beat(long? wall)
    {
        if (Current is { IsOver: true, IsJudged: false, Trouble: null })
        {
            Forward(World.Now + SimTime.FromSeconds(SettleSlice));
        }
        else if (Current is { IsJudged: false, Trouble: null })
        {
            if (wall is { } due)
            {
                Look(due);
            }
            else
            {
                Look();
            }
        }

        return Current.IsJudged || Current.Trouble is not null;
    }

    /// <summary>Runs on at once, however the clock stands, to a moment or until something is so; no further than to where the drill is over, or judged where it is over already.</summary>
    /// <param name="to">The latest moment.</param>
    /// <param name="until">Asked each simulated second, with the machine in view; null: to the moment.</param>
    /// <param name="stop">Lets it stand where it has come to.</param>
    /// <returns>Whether it came to be so.</returns>
    public bool Forward(SimTime to, Func<World.World, bool>? until = null, CancellationToken stop = default)
    {
        bool wasOver = Current.IsOver;
        bool isSo = false;
        for (bool goes = true; goes && !isSo && !stop.IsCancellationRequested;)
        {
            lock (Gate)
            {
                goes = !IsClosed && World.Now < to && World.Trouble is null && !_run.IsJudged && _run.IsOver == wasOver;
                if (goes)
                {
                    SimTime next = SimTime.Min(to, World.Now + SimTime.FromSeconds(until is null ? ForwardSlice : ForwardStep));
                    World.OnSample = w =>
                    {
                        Seen(w, inView: true);
                        isSo = until?.Invoke(w) == true;
                    };
                    World.SampleAt(next);
                    World.RunTo(next);
                }
            }

            Tell();
        }

        lock (Gate)
        {
            if (!IsClosed)
            {
                See(World.Now);
                GoOnFromHere();
                Note();
            }
        }

        Tell();
        return isSo;
    }

    protected override bool NeedsLook(SimTime at) => _watched is not { IsEmpty: true } || _tracer.IsDue(at);

    protected override string? Fault(WorldAction action) => action switch
    {
        WorldAction.PutIn or WorldAction.TakeOut or WorldAction.SetInput or WorldAction.Operate { Person: < 0 } => ActionCheck.Fault(Plan, action),
        WorldAction.Speak s => Plan.Book.Roles.ContainsKey(s.Role) ? null : Say.It("nobody has that role"),
        _ => HindranceWords.Of(World.HindranceOf(action)),
    };

    protected override void PaceChanged()
    {
        // What is seen does not depend on how fast it goes.
    }

    protected override void Seen(World.World world, bool inView)
    {
        if (world.Trouble is { } trouble)
        {
            Current = Current with { Trouble = trouble };
            return;
        }

        DrillLook before = Current;
        bool same = before.Notes.Length == _run.Notes.Count && before.Sheet is not null && before.IsJudged == _run.IsJudged;
        ImmutableArray<DrillNote> notes = same ? before.Notes : [.. _run.Notes];
        bool quiet = world.Journal!.Count == before.Journal.Length;
        ImmutableArray<JournalEntry> journal = quiet ? before.Journal : [.. world.Journal];
        Current = before with
        {
            Now = world.Now,
            Sights = [.. world.People.Select(p => inView && _watched?.Contains(p.Id) != false ? Sight.Of(world, p) : Sight.Whereabouts(world, p))],
            People = _tracer.Look(world, inView),
            Journal = journal,
            Said = quiet ? before.Said : [.. journal.Where(j => j.Kind == JournalKind.Said)],
            Notes = notes,
            Sheet = same ? before.Sheet : Evaluator.Evaluate(Drill, _run.Outcome),
            IsOver = _run.IsOver,
            IsJudged = _run.IsJudged,
            IsTakenOver = same ? before.IsTakenOver : notes.LastOrDefault(n => n.Kind is DrillNoteKind.TakenOver or DrillNoteKind.HandedBack)?.Kind == DrillNoteKind.TakenOver,
        };
    }

    private static DrillSession? Made(BoundDrill drill, SessionStart start, SessionRecord? record, TimeProvider clock, RecordFile? file, DiagnosticList found, Metre? metre)
    {
        ArgumentNullException.ThrowIfNull(drill);
        ArgumentNullException.ThrowIfNull(clock);
        DrillSession session = new(drill, start, clock, file) { Metre = metre };
        if (DrillReplay.Begin(session.World, drill, start, found) is not { } run)
        {
            session.Dispose();
            return null;
        }

        session._run = run;
        if (record is not null)
        {
            Replay.Schedule(session.World, record);
            for (long at = 0; at < record.End; at += Math.Max(record.End / RestoredLooks, SimTime.TicksPerSecond))
            {
                session.See(new(at));
            }
        }

        session.See(new(record?.End ?? 0));
        session.Noted = record?.End ?? 0;
        return session;
    }

    private void Arrange(HoldReason held, Pace wanted)
    {
        if (held == Held && wanted == _wanted)
        {
            return;
        }

        (Held, _wanted) = (held, wanted);
        SetPace(held == HoldReason.None ? wanted : Pace.Hold);
    }
}
