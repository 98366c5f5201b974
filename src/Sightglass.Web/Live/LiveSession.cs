using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World;
using Sightglass.World.Records;

namespace Sightglass.Web.Live;

/// <summary>The machine alive in a situation, as everybody sees it who looks.</summary>
public sealed class LiveSession : LiveWorld
{
    /// <summary>Simulated seconds between the points of a trace.</summary>
    private const double TraceStep = 5;

    /// <summary>Looks along a train between two looks at the whole.</summary>
    private const int MostAlong = 16;

    private readonly Sampler _sampler;

    private LiveSession(Plan plan, SessionStart start, TimeProvider clock, RecordFile? record)
        : base(plan, start, clock, record)
    {
        _sampler = new(plan);
        Current = _sampler.Empty;
    }

    /// <summary>The scales that stand at the side of the machine.</summary>
    public ImmutableArray<LiveGauge> Gauges => _sampler.Gauges;

    /// <summary>Lines that go through the train.</summary>
    public ImmutableArray<AlongTrain> Along => _sampler.Along;

    /// <summary>What was seen last: the same for everybody who looks.</summary>
    public MachineSnapshot Current { get; private set; }

    /// <summary>Begins anew.</summary>
    /// <param name="plan">Of the start's road number.</param>
    /// <param name="start">Situation and case.</param>
    /// <param name="clock">The clock on the wall.</param>
    /// <param name="record">Takes what is done, or null where nothing is kept.</param>
    /// <param name="found">Says why not.</param>
    public static LiveSession? Begin(Plan plan, SessionStart start, TimeProvider clock, RecordFile? record, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(clock);
        LiveSession session = new(plan, start, clock, record);
        if (!Replay.Begin(session.World, start, found))
        {
            session.Dispose();
            return null;
        }

        session.See(SimTime.Zero);
        return session;
    }

    /// <summary>Goes on where a record ends: its actions are done again, without waiting. Held.</summary>
    public static LiveSession? Restore(Plan plan, SessionRecord record, TimeProvider clock, RecordFile? file, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(record);
        LiveSession session = new(plan, record.Header.Start, clock, file);
        if (!Replay.Begin(session.World, record.Header.Start, found)
            || record.Lines.Any(l => l.Do is { } action && ActionCheck.Fault(plan, action) is not null))
        {
            session.Dispose();
            return null;
        }

        Replay.Schedule(session.World, record);
        SimTime end = new(record.End);
        for (SimTime t = SimTime.FromSeconds(Math.Max(0, end.Seconds - Sampler.TraceSeconds)); t < end; t += SimTime.FromSeconds(TraceStep))
        {
            session.See(t);
        }

        session.See(end);
        session.Noted = end.Ticks;
        return session;
    }

    /// <summary>Goes on as a record says: to its moment, with what was done there.</summary>
    internal void Repeat(RecordLine line)
    {
        lock (Gate)
        {
            if (line.Do is { } action)
            {
                Append(line);
                World.Do(action, new(line.At));
            }

            See(new(line.At));
            GoOnFromHere();
        }
    }

    protected override string? Fault(WorldAction action) => ActionCheck.Fault(Plan, action);

    protected override void PaceChanged() => Current = Current with { Pace = Pace, Number = Current.Number + 1 };

    /// <summary>Looks along the train on the way to a moment: what runs through it is over in seconds, however fast the clock goes.</summary>
    protected override void SeeOnTheWay(SimTime to)
    {
        double step = Math.Max(AlongTrain.LookStep, (to - World.Now).Seconds / MostAlong);
        World.OnSample = w => Current = _sampler.LookAlong(w, Current);
        for (SimTime at = World.Now + SimTime.FromSeconds(step); !_sampler.Along.IsEmpty && at < to; at += SimTime.FromSeconds(step))
        {
            World.SampleAt(at);
            World.RunTo(at);
        }
    }

    protected override void Seen(World.World world, bool inView) => Current = world.Trouble is { } trouble
        ? Current with { Trouble = trouble, Number = Current.Number + 1 }
        : _sampler.Look(world, Current) with { Pace = Pace };
}
