using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Signals;
using Sightglass.World;
using Sightglass.World.People;

namespace Sightglass.Training.Drills;

/// <summary>
/// A drill under way in a world: watches what it judges by, lets happen what is to happen on the way, and notes it. What it notes follows from the start and the trainee's actions alone.
/// </summary>
public sealed class DrillRun : Overseer
{
    private const int TimeOver = 0;
    private const int StaysOver = 1;
    private const int FirstEvent = 10;

    private readonly List<DrillNote> _notes = [];
    private readonly List<Action<bool>> _watches = [];
    private readonly bool[] _waits;
    private readonly bool[] _happened;
    private readonly bool[] _held;
    private bool _cued;
    private bool _known;

    public DrillRun(BoundDrill drill)
    {
        ArgumentNullException.ThrowIfNull(drill);
        Drill = drill;
        (_waits, _happened, _held) = (new bool[drill.Events.Length], new bool[drill.Events.Length], new bool[drill.Objectives.Length]);
    }

    public BoundDrill Drill { get; }

    /// <summary>What came about so far, in the order of time.</summary>
    public IReadOnlyList<DrillNote> Notes => _notes;

    /// <summary>The trainee has said that they are done, or the time is over.</summary>
    public bool IsOver { get; private set; }

    /// <summary>Over, and what must stay so has had its time.</summary>
    public bool IsJudged { get; private set; }

    /// <summary>Told, as something comes about that is worth a look, of the moment from which it shows; whoever listens changes nothing.</summary>
    public Action<SimTime>? CameAbout { get; set; }

    /// <summary>What came of it so far. Only with the machine in view, or when it is judged.</summary>
    public DrillOutcome Outcome => new([.. _notes], [.. _held], IsOver, NotGivenBack());

    protected override void Begin()
    {
        CallAt(SimTime.FromSeconds(Drill.Drill.TimeLimit), TimeOver);
        foreach ((int i, Signal margin) in Drill.Objectives.Index())
        {
            Both(margin, holds => Objective(i, holds));
        }

        foreach ((int i, Signal margin) in Drill.MustNever.Index())
        {
            Each(margin, () => Note(DrillNoteKind.Never, i));
        }

        foreach ((int i, (Signal first, Signal then)) in Drill.Orders.Index())
        {
            Once(first, () => Note(DrillNoteKind.First, i));
            Once(then, () => Note(DrillNoteKind.Then, i));
        }

        foreach (KnownFrom known in Drill.Known.Where(k => k.Margin is not null))
        {
            Once(known.Margin!, SeeCue);
        }

        foreach ((int i, BoundEvent e) in Drill.Events.Index())
        {
            if (e.When is { } when)
            {
                Once(when, () => Ready(i));
            }
            else
            {
                Ready(i);
            }
        }

        if (Drill.Cue is { } cue)
        {
            Once(cue, ComeCue);
        }
        else
        {
            ComeCue();
        }
    }

    protected override void CameTrue(int watch) => _watches[watch / 2](watch % 2 == 0);

    protected override void TimeHasCome(int call)
    {
        if (call >= FirstEvent)
        {
            Happen(call - FirstEvent);
        }
        else if (call == StaysOver)
        {
            IsJudged = true;
            Rest();
        }
        else if (!IsOver)
        {
            Note(DrillNoteKind.TimeOver);
            End(0);
        }
    }

    protected override void Arrived(Person person)
    {
        CameAbout?.Invoke(World.Now);
        if (person.Id == Drill.Person)
        {
            SeeCue();
            Trigger(e => e.At == World.PlaceOf(person));
        }
    }

    protected override void Touched(Person person, Item item)
    {
        CameAbout?.Invoke(World.Now + SimTime.FromSeconds(item.OperateSeconds));
        if (person.Id == Drill.Person)
        {
            Note(DrillNoteKind.Touched, -1, item.Name);
            Trigger(e => e.Operated == item.Name);
        }
    }

    protected override void Breached(Person person, Breach breach, string what)
    {
        if (person.Id == Drill.Person)
        {
            Note(DrillNoteKind.Breach, (int)breach, what);
        }
    }

    protected override void Injured(Person person, string mechanism) => Note(DrillNoteKind.Injured, person.Id, mechanism);

    protected override void Told(Person person, string role, string text)
    {
        // Of a card that is worked in the trainee's stead everybody's words are theirs.
        if (person.Id != Drill.Person && World.Run is null)
        {
            return;
        }

        if (role.Length > 0)
        {
            Note(DrillNoteKind.Told, -1, role);
        }

        foreach (DrillReport report in Drill.Drill.Reports.Where(r => r.ToldAs.Contains(text)))
        {
            Report(report.Name);
        }
    }

    protected override void Reported(Person person, string finding)
    {
        if (person.Id == Drill.Person)
        {
            Report(finding);
        }
    }

    protected override void Stopped(Person person)
    {
        if (person.Id == Drill.Person)
        {
            Note(DrillNoteKind.Stopped);
        }
    }

    protected override void TakenOver(Person person, bool isTaken)
    {
        if (person.Id == Drill.Person && !IsOver)
        {
            Note(isTaken ? DrillNoteKind.TakenOver : DrillNoteKind.HandedBack);
        }
    }

    protected override void Interfered(WorldAction action)
    {
        string? what = action switch
        {
            _ when Drill.Events.Any(e => ReferenceEquals(e.Does, action)) => null, // an event of the drill itself
            WorldAction.Operate o => o.Item,
            WorldAction.PutIn p => p.Item,
            WorldAction.TakeOut t => t.Item,
            WorldAction.SetInput i => i.Name,
            _ => null,
        };
        if (what is not null)
        {
            Note(DrillNoteKind.Interfered, -1, what);
        }
    }

    private void Report(string finding)
    {
        int number = Drill.Drill.Reports.Select(r => r.Name).ToList().IndexOf(finding);
        if (number >= 0 && !IsOver)
        {
            Note(World.Value(Drill.Reports[number]) >= 0 ? DrillNoteKind.ReportedRight : DrillNoteKind.ReportedWrong, number);
        }
    }

    protected override void Hinted(Person person)
    {
        int next = _notes.Count(n => n.Kind == DrillNoteKind.Hint);
        if (person.Id == Drill.Person && !IsOver && next < Drill.Drill.Hints.Length)
        {
            Note(DrillNoteKind.Hint, next);
        }
    }

    protected override void Declared(Person person)
    {
        if (person.Id == Drill.Person && !IsOver)
        {
            Note(DrillNoteKind.Declared);
            End(Drill.Drill.Objectives.Select(o => o.Stays).DefaultIfEmpty().Max());
        }
    }

    private void End(double stays)
    {
        IsOver = true;
        CallAt(World.Now + SimTime.FromSeconds(stays), StaysOver);
    }

    /// <summary>Told when it comes true and when it comes untrue.</summary>
    private void Both(Signal margin, Action<bool> told)
    {
        _watches.Add(told);
        int watch = 2 * (_watches.Count - 1);
        bool holds = Watch(watch, margin);
        Watch(watch + 1, new NotSignal(margin));
        if (holds)
        {
            told(true);
        }
    }

    /// <summary>Told when it comes true for the first time.</summary>
    private void Once(Signal margin, Action told)
    {
        bool done = false;
        Each(margin, First);

        void First()
        {
            if (!done)
            {
                done = true;
                told();
            }
        }
    }

    /// <summary>Told whenever it comes true, or at once.</summary>
    private void Each(Signal margin, Action told)
    {
        _watches.Add(_ => told());
        if (Watch(2 * (_watches.Count - 1), margin))
        {
            told();
        }
    }

    private void Objective(int number, bool holds)
    {
        if (_held[number] != holds)
        {
            _held[number] = holds;
            Note(holds ? DrillNoteKind.Reached : DrillNoteKind.Lost, number);
        }
    }

    private void ComeCue()
    {
        _cued = true;
        Note(DrillNoteKind.Cue);
        SeeCue();
    }

    /// <summary>Whether the trainee could know by now what there is to do: from here on their time counts.</summary>
    private void SeeCue()
    {
        if (!_cued || _known)
        {
            return;
        }

        string? here = World.PlaceOf(World.People[Drill.Person]);
        KnownFrom? known = Drill.Known.FirstOrDefault(k => (k.Places.IsDefaultOrEmpty || (here is not null && k.Places.Contains(here))) && (k.Margin is null || World.Value(k.Margin) >= 0));
        if (known is not null || Drill.Known.IsEmpty)
        {
            _known = true;
            Note(DrillNoteKind.Known, -1, known?.Name ?? "");
        }
    }

    /// <summary>What an event waits for but a place or a hand has come.</summary>
    private void Ready(int number)
    {
        _waits[number] = true;
        DrillEvent e = Drill.Events[number].Event;
        if (e.At is null && e.Operated is null)
        {
            CallAt(World.Now + SimTime.FromSeconds(e.After), FirstEvent + number);
        }
    }

    private void Trigger(Predicate<DrillEvent> wanted)
    {
        foreach ((int i, BoundEvent e) in Drill.Events.Index())
        {
            if (_waits[i] && wanted(e.Event))
            {
                _waits[i] = false;
                CallAt(World.Now + SimTime.FromSeconds(e.Event.After), FirstEvent + i);
            }
        }
    }

    private void Happen(int number)
    {
        if (_happened[number] || IsOver)
        {
            return;
        }

        _happened[number] = true;
        Note(DrillNoteKind.Event, number);
        BoundEvent e = Drill.Events[number];
        if (e.Does is { } does)
        {
            Put(does);
        }
        else
        {
            Put(new WorldAction.Speak(e.Event.By ?? "", e.Event.Says));
        }
    }

    private ImmutableArray<string> NotGivenBack() =>
        [.. World.Plan.Book.Protections.Values.Where(p => p.Sort == ProtectionSort.Asked && World.IsProtected(World.People[Drill.Person], p)).Select(p => p.Name)];

    private void Note(DrillNoteKind kind, int number = -1, string what = "")
    {
        _notes.Add(new(World.Now, kind, number, what, World.PlaceOf(World.People[Drill.Person]) ?? ""));
        CameAbout?.Invoke(World.Now);
    }
}
