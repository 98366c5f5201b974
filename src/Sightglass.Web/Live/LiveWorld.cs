using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World;
using Sightglass.World.Records;

namespace Sightglass.Web.Live;

/// <summary>
/// One running world with its record. The clock on the wall only raises how far it may go; what happens in it depends on its start and on the actions alone. An action is on disk
/// before it happens. All members may be called from any thread.
/// </summary>
public abstract class LiveWorld : IDisposable
{
    private readonly TimeProvider _clock;
    private readonly LaneBank _bank;
    private readonly RecordFile? _record;
    private readonly Course _course;
    private bool _closed;
    private bool _gone;

    private protected LiveWorld(Plan plan, SessionStart start, TimeProvider clock, RecordFile? record)
    {
        (Start, _clock, _record, _course) = (start, clock, record, new(clock));
        _bank = new(plan);
        World = new(_bank, 0) { Journal = [] };
    }

    public SessionStart Start { get; }

    public Plan Plan => _bank.Plan;

    public Pace Pace { get; private set; }

    /// <summary>Raised, outside of any lock, whenever what is seen has changed.</summary>
    public event Action? Changed;

    /// <summary>Whoever touches the world holds it.</summary>
    protected Lock Gate { get; } = new();

    protected World.World World { get; }

    /// <summary>Whether it is over: nothing more happens in it.</summary>
    protected bool IsClosed => _closed;

    /// <summary>The last moment, ticks, that the record knows to have been reached.</summary>
    protected long Noted { get; set; }

    /// <summary>The beats by which it is looked at; null where it is looked at whenever somebody wants to.</summary>
    internal Metre? Metre { get; init; }

    /// <summary>How fast it goes from now on.</summary>
    public void SetPace(Pace pace)
    {
        lock (Gate)
        {
            Catch(_clock.GetTimestamp());
            Pace = pace;
            GoOnFromHere();
            Note();
            PaceChanged();
        }

        Tell();
    }

    /// <summary>Lets the world go as far as the clock says.</summary>
    public void Look() => Look(_clock.GetTimestamp());

    /// <summary>Lets the world go as far as the clock said at one of its readings, not later than now: what comes a little late is still what it would have been.</summary>
    public void Look(long wall)
    {
        bool moved;
        lock (Gate)
        {
            moved = Catch(wall);
        }

        if (moved)
        {
            Tell();
        }
    }

    /// <summary>Does something now.</summary>
    /// <returns>Null once it is on disk and has happened; else why it was not done.</returns>
    public string? Do(WorldAction action)
    {
        ArgumentNullException.ThrowIfNull(action);
        lock (Gate)
        {
            Catch(_clock.GetTimestamp());
            if ((_closed ? Say.It("this run is over") : World.Trouble ?? Fault(action)) is { } why)
            {
                return why;
            }

            // The next tick: all that was to happen until now has happened, so that a replay finds the same order.
            SimTime at = new(World.Now.Ticks + 1);
            try
            {
                _record?.Append(new(at.Ticks, action));
            }
            catch (IOException e)
            {
                return Say.With($"it could not be written down, so it was not done: {e.Message}");
            }

            World.Do(action, at);
            See(at);
            See(new(at.Ticks + 1));
        }

        Tell();
        return null;
    }

    /// <summary>Looks at the world as it stands, which changes nothing.</summary>
    /// <exception cref="ObjectDisposedException">It is gone.</exception>
    public T Ask<T>(Func<World.World, T> look)
    {
        ArgumentNullException.ThrowIfNull(look);
        lock (Gate)
        {
            ObjectDisposedException.ThrowIf(_gone, this);
            T seen = default!;
            World.OnSample = w => seen = look(w);
            World.SampleAt(World.Now);
            World.RunTo(World.Now);
            return seen;
        }
    }

    /// <summary>Ends the session: makes the state whole and writes its hash.</summary>
    /// <returns>The hash.</returns>
    public ulong Close()
    {
        lock (Gate)
        {
            if (!_closed)
            {
                (Pace, _closed) = (Pace.Hold, true);
                World.CutHere();
                _record?.Append(new(World.Now.Ticks, null, $"{World.Hash:x16}"));
            }

            return World.Hash;
        }
    }

    public void Dispose()
    {
        lock (Gate)
        {
            (_gone, _closed) = (true, true);
            _record?.Dispose();
            _bank.Dispose();
        }

        GC.SuppressFinalize(this);
    }

    /// <summary>Why an action is not taken, in words that end a sentence; null where it is.</summary>
    protected abstract string? Fault(WorldAction action);

    /// <summary>Keeps what is to be seen of the world as it stands, which changes nothing in it.</summary>
    /// <param name="world">This one.</param>
    /// <param name="inView">Whether its machine is in view: without it only is known what people do.</param>
    protected abstract void Seen(World.World world, bool inView);

    /// <summary>Told when the pace is another one; the world is held.</summary>
    protected abstract void PaceChanged();

    /// <summary>Whether the machine is to be looked at at a moment, or running there is enough.</summary>
    protected virtual bool NeedsLook(SimTime at) => true;

    /// <summary>Looks on the way to a moment, where something is to be seen that does not last until then.</summary>
    protected virtual void SeeOnTheWay(SimTime to)
    {
    }

    /// <summary>Runs to a moment and looks there, changing nothing by looking.</summary>
    protected void See(SimTime at)
    {
        if (!NeedsLook(at))
        {
            World.RunTo(at);
            Seen(World, inView: false);
            return;
        }

        World.OnSample = w => Seen(w, inView: true);
        World.SampleAt(at);
        World.RunTo(at);
        if (World.Trouble is not null)
        {
            Seen(World, inView: false);
        }
        else if (World.Now < at)
        {
            // It rests for good before.
            World.SampleAt(World.Now);
            World.RunTo(World.Now);
        }
    }

    /// <summary>Writes a line that was done before; for what goes on as a record says.</summary>
    private protected void Append(RecordLine line) => _record?.Append(line);

    /// <summary>Tells whoever watches; never while the world is held.</summary>
    protected void Tell() => Changed?.Invoke();

    /// <summary>Writes down how far it has come.</summary>
    protected void Note()
    {
        if (World.Now.Ticks > Noted && !_closed)
        {
            Noted = World.Now.Ticks;
            _record?.Note(new(Noted));
        }
    }

    /// <summary>The clock goes on from where the world stands; for whoever has moved it otherwise.</summary>
    protected void GoOnFromHere() => _course.Set(World.Now, Pace.Rate(), Metre);

    private bool Catch(long wall)
    {
        if (Pace == Pace.Hold || _closed)
        {
            return false;
        }

        SimTime to = _course.At(wall);
        if (to <= World.Now)
        {
            return false;
        }

        SeeOnTheWay(to);
        See(to);
        if (World.Now.Ticks - Noted > 2 * Pace.Rate() * SimTime.TicksPerSecond)
        {
            Note();
        }

        if (World.Trouble is not null)
        {
            Pace = Pace.Hold;
        }

        return true;
    }
}
