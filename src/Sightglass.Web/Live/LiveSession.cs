using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World;
using Sightglass.World.Records;

namespace Sightglass.Web.Live;

/// <summary>
/// One running world. The clock on the wall only raises how far it may go; what happens in it depends on its start and on the actions
/// alone. An action is on disk before it happens. All members may be called from any thread.
/// </summary>
public sealed class LiveSession : IDisposable
{
    /// <summary>Simulated seconds between the points of a trace.</summary>
    private const double TraceStep = 5;

    /// <summary>Seconds of the wall's clock that one look may make up for: after a pause of the computer the world does not race.</summary>
    private const double MostCatchUp = 1;

    /// <summary>Looks along a train between two looks at the whole.</summary>
    private const int MostAlong = 16;

    private readonly Lock _gate = new();
    private readonly TimeProvider _clock;
    private readonly LaneBank _bank;
    private readonly World.World _world;
    private readonly RecordFile? _record;
    private readonly Sampler _sampler;
    private long _lookedAt;
    private double _left;
    private long _noted;
    private bool _closed;

    private LiveSession(Plan plan, SessionStart start, TimeProvider clock, RecordFile? record)
    {
        (Start, _clock, _record) = (start, clock, record);
        _bank = new(plan);
        _world = new(_bank, 0) { Journal = [] };
        _sampler = new(plan);
        Current = _sampler.Empty;
    }

    public SessionStart Start { get; }

    public Plan Plan => _bank.Plan;

    /// <summary>The scales that stand at the side of the machine.</summary>
    public System.Collections.Immutable.ImmutableArray<LiveGauge> Gauges => _sampler.Gauges;

    /// <summary>Lines that go through the train.</summary>
    public System.Collections.Immutable.ImmutableArray<AlongTrain> Along => _sampler.Along;

    /// <summary>What was seen last: the same for everybody who looks.</summary>
    public MachineSnapshot Current { get; private set; }

    public Pace Pace { get; private set; }

    /// <summary>Raised, outside of any lock, whenever <see cref="Current"/> has changed.</summary>
    public event Action? Changed;

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
        if (!Replay.Begin(session._world, start, found))
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
        if (!Replay.Begin(session._world, record.Header.Start, found)
            || record.Lines.Any(l => l.Do is { } action && ActionCheck.Fault(plan, action) is not null))
        {
            session.Dispose();
            return null;
        }

        Replay.Schedule(session._world, record);
        SimTime end = new(record.End);
        for (SimTime t = SimTime.FromSeconds(Math.Max(0, end.Seconds - Sampler.TraceSeconds)); t < end; t += SimTime.FromSeconds(TraceStep))
        {
            session.See(t);
        }

        session.See(end);
        session._noted = end.Ticks;
        return session;
    }

    /// <summary>How fast it goes from now on.</summary>
    public void SetPace(Pace pace)
    {
        lock (_gate)
        {
            Catch();
            (Pace, _left) = (pace, 0);
            Note();
            Current = Current with { Pace = pace, Number = Current.Number + 1 };
        }

        Changed?.Invoke();
    }

    /// <summary>Lets the world go as far as the clock says.</summary>
    public void Look()
    {
        bool moved;
        lock (_gate)
        {
            moved = Catch();
        }

        if (moved)
        {
            Changed?.Invoke();
        }
    }

    /// <summary>Does something now.</summary>
    /// <returns>Null once it is on disk and has happened; else why it was not done.</returns>
    public string? Do(WorldAction action)
    {
        ArgumentNullException.ThrowIfNull(action);
        lock (_gate)
        {
            Catch();
            if ((_closed ? Say.It("this run is over") : _world.Trouble ?? ActionCheck.Fault(Plan, action)) is { } why)
            {
                return why;
            }

            // The next tick: all that was to happen until now has happened, so that a replay finds the same order.
            SimTime at = new(_world.Now.Ticks + 1);
            try
            {
                _record?.Append(new(at.Ticks, action));
            }
            catch (IOException e)
            {
                return Say.With($"it could not be written down, so it was not done: {e.Message}");
            }

            _world.Do(action, at);
            See(at);
            See(new(at.Ticks + 1));
        }

        Changed?.Invoke();
        return null;
    }

    /// <summary>Goes on as a record says: to its moment, with what was done there.</summary>
    internal void Repeat(RecordLine line)
    {
        lock (_gate)
        {
            if (line.Do is { } action)
            {
                _record?.Append(line);
                _world.Do(action, new(line.At));
            }

            See(new(line.At));
        }
    }

    /// <summary>Looks at the world as it stands, which changes nothing.</summary>
    public T Ask<T>(Func<World.World, T> look)
    {
        ArgumentNullException.ThrowIfNull(look);
        lock (_gate)
        {
            T seen = default!;
            _world.OnSample = w => seen = look(w);
            _world.SampleAt(_world.Now);
            _world.RunTo(_world.Now);
            return seen;
        }
    }

    /// <summary>Ends the session: makes the state whole and writes its hash.</summary>
    /// <returns>The hash.</returns>
    public ulong Close()
    {
        lock (_gate)
        {
            if (!_closed)
            {
                (Pace, _closed) = (Pace.Hold, true);
                _world.CutHere();
                _record?.Append(new(_world.Now.Ticks, null, $"{_world.Hash:x16}"));
            }

            return _world.Hash;
        }
    }

    public void Dispose()
    {
        _record?.Dispose();
        _bank.Dispose();
    }

    private bool Catch()
    {
        long now = _clock.GetTimestamp();
        double passed = Math.Min(_clock.GetElapsedTime(_lookedAt, now).TotalSeconds, MostCatchUp);
        _lookedAt = now;
        if (Pace == Pace.Hold || _closed)
        {
            return false;
        }

        _left += passed * (int)Pace * SimTime.TicksPerSecond;
        long ticks = (long)_left;
        if (ticks <= 0)
        {
            return false;
        }

        _left -= ticks;
        SimTime to = new(_world.Now.Ticks + ticks);
        SeeAlong(to);
        See(to);
        if (_world.Now.Ticks - _noted > 2 * (int)Pace * SimTime.TicksPerSecond)
        {
            Note();
        }

        if (_world.Trouble is not null)
        {
            Pace = Pace.Hold;
        }

        return true;
    }

    private void Note()
    {
        if (_world.Now.Ticks > _noted)
        {
            _noted = _world.Now.Ticks;
            _record?.Note(new(_noted));
        }
    }

    /// <summary>Looks along the train on the way to a moment: what runs through it is over in seconds, however fast the clock goes.</summary>
    private void SeeAlong(SimTime to)
    {
        double step = Math.Max(AlongTrain.LookStep, (to - _world.Now).Seconds / MostAlong);
        _world.OnSample = w => Current = _sampler.LookAlong(w, Current);
        for (SimTime at = _world.Now + SimTime.FromSeconds(step); !_sampler.Along.IsEmpty && at < to; at += SimTime.FromSeconds(step))
        {
            _world.SampleAt(at);
            _world.RunTo(at);
        }
    }

    /// <summary>Runs to a moment and looks there, changing nothing by looking.</summary>
    private void See(SimTime at)
    {
        _world.OnSample = w => Current = _sampler.Look(w, Current) with { Pace = Pace };
        _world.SampleAt(at);
        _world.RunTo(at);
        if (_world.Trouble is { } trouble)
        {
            Current = Current with { Trouble = trouble, Number = Current.Number + 1 };
        }
    }
}
