using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.Training.Drills;
using Sightglass.Training.Evaluation;
using Sightglass.World.People;
using Sightglass.World.Records;

namespace Sightglass.Training.Debrief;

/// <summary>A drill run without pages while moments of it are kept. Looking changes nothing: its hash and sheet are those of a run that nobody looks at.</summary>
internal sealed class DebriefStage : IDisposable
{
    /// <summary>Simulated seconds between questions whether it is still wanted.</summary>
    private const double Slice = 20;

    private readonly BoundDrill _drill;
    private readonly LaneBank _bank;
    private readonly DrillRun _run;
    private readonly ImmutableArray<DebriefSignal> _signals;
    private readonly (string Item, string Fault, Slot Slot)[] _faults;
    private readonly List<DebriefMoment> _moments = [];
    private readonly string[] _stood;
    private SimTime _asked = new(-1);
    private int _spare;

    /// <param name="drill">On the machine of the record.</param>
    /// <param name="start">Where it starts.</param>
    /// <exception cref="ArgumentException">The start is of another drill, or does not fit the plan.</exception>
    public DebriefStage(BoundDrill drill, SessionStart start)
    {
        if (start.Drill != drill.Drill.Name)
        {
            throw new ArgumentException($"The record is of the drill '{start.Drill}', not of '{drill.Drill.Name}'.", nameof(start));
        }

        (_drill, _signals, _bank) = (drill, DebriefSignals.Of(drill), new(drill.Plan));
        _faults = [.. drill.Plan.Items.Values.SelectMany(i => i.Faults.Select(f => (i.Item.Name, f.Key, f.Value[0].Slot)))];
        World = new(_bank, 0);
        DiagnosticList found = [];
        if (DrillReplay.Begin(World, drill, start, found) is not { } run)
        {
            _bank.Dispose();
            throw new ArgumentException(string.Join('\n', found), nameof(start));
        }

        _run = run;
        _run.CameAbout = at => AskAt(new(at.Ticks + 1)); // just after: what follows from it is there then
        World.OnSample = _ => Keep();
        _stood = new string[World.People.Count];
        Array.Fill(_stood, "");
    }

    public World.World World { get; }

    /// <summary>Told now and then how far it has come; null where nobody waits for it.</summary>
    public IProgress<SimTime>? Told { get; init; }

    /// <summary>Runs on to a moment and keeps some on the way.</summary>
    /// <param name="to">The latest; less where the world rests before.</param>
    /// <param name="moments">So many evenly from here to there.</param>
    /// <param name="spare">So many more at most where something comes about.</param>
    /// <param name="cancel">Ends it.</param>
    public void Run(SimTime to, int moments, int spare, CancellationToken cancel)
    {
        _spare += spare;
        SimTime from = World.Now;
        double step = (to.Seconds - from.Seconds) / Math.Max(moments, 1);
        for (int i = 1; i <= moments && Goes(to); i++)
        {
            SimTime next = i == moments ? to : SimTime.Min(to, from + SimTime.FromSeconds(i * step));
            World.SampleAt(next);
            RunTo(next, cancel);
        }

        RunTo(to, cancel);
    }

    /// <summary>Runs on to a moment without keeping anything evenly.</summary>
    public void RunTo(SimTime to, CancellationToken cancel)
    {
        while (Goes(to))
        {
            cancel.ThrowIfCancellationRequested();
            World.RunTo(SimTime.Min(to, World.Now + SimTime.FromSeconds(Slice)));
            Told?.Report(World.Now);
        }
    }

    /// <summary>Keeps the present moment, however many there are.</summary>
    public DebriefMoment Look()
    {
        World.SampleAt(World.Now);
        World.RunTo(World.Now);
        return _moments[^1];
    }

    /// <summary>What came of it. Nothing more is run afterwards.</summary>
    public DebriefFilm End(World.Runs.CardRun? card = null)
    {
        DrillOutcome outcome = _run.Outcome;
        if (World.Trouble is null && (_moments.Count == 0 || _moments[^1].At < World.Now))
        {
            Look();
        }

        World.CutHere();
        DrillResult result = new(outcome, Evaluator.Evaluate(_drill, outcome), card?.Outcome, [.. World.Journal!], World.Trouble, World.Hash, World.Steps);
        return new(_drill, _signals, [.. _moments], result, World.Now);
    }

    public void Dispose() => _bank.Dispose();

    private void AskAt(SimTime at)
    {
        if (_spare > 0 && at != _asked)
        {
            (_spare, _asked) = (_spare - 1, at);
            World.SampleAt(at);
        }
    }

    private bool Goes(SimTime to) => World.Now < to && World.Trouble is null && !World.Rests;

    private void Keep()
    {
        if (_moments.Count > 0 && _moments[^1].At == World.Now)
        {
            return;
        }

        foreach (Person person in World.People)
        {
            _stood[person.Id] = World.PlaceOf(person) ?? _stood[person.Id];
        }

        _moments.Add(new(
            World.Now,
            [.. World.People.Select(p => new DebriefStand(p.Role.Name, _stood[p.Id], p.Towards < 0 ? null : _drill.Plan.Ways.Places[p.Towards].Name))],
            Sight.Of(World, World.People[_drill.Person]),
            [.. _signals.Select(s => World.Value(s.Truth))],
            [.. _faults.Where(f => World.GetSlot(f.Slot) != 0).Select(f => (f.Item, f.Fault))]));
    }
}
