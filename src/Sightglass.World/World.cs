using Sightglass.Basics.Draws;
using Sightglass.Basics.Time;
using Sightglass.Network.Groups;
using Sightglass.Network.Step;
using Sightglass.Plant.Plans;
using Sightglass.World.Agenda;
using Sightglass.World.Hazards;
using Sightglass.World.Journal;
using Sightglass.World.People;
using Sightglass.World.Runs;

namespace Sightglass.World;

/// <summary>
/// One lane of a plan with people, an agenda and a clock. Nothing ticks: the world goes from event to event, and looking changes
/// nothing. <see cref="Advance"/> says what it wants of its networks; whoever drives it iterates their groups until they are done.
/// </summary>
public sealed partial class World
{
    /// <summary>More firings of one switch than this within a second make a run undecided. Of different ones there may be as many as there are: a train has hundreds.</summary>
    public const int MostFiringsASecond = 50;

    /// <summary>More rounds of solving at one moment than this make a run undecided: relays that undo each other by way of what they switch.</summary>
    public const int MostSolvingsAtOnce = 100;

    /// <summary>The same for numbers told from one network to another, which move often while something moves fast.</summary>
    public const int MostTellingsASecond = 1000;

    private readonly LaneBank _bank;
    private readonly int _lane;
    private readonly double[] _slots;
    private readonly double[] _applied;
    private readonly List<Sentinel> _sentinels = [];

    // As many as most runs wait for at once: a lane whose hundredth case is the first to wait for one more takes no memory for it then.
    private readonly Stack<Sentinel> _idle = new(Enumerable.Range(0, 16).Select(_ => new Sentinel()));
    private readonly ResolverRoom[] _rooms;
    private readonly SimTime[] _viewAt;
    private readonly List<Person> _people = [];
    private readonly List<Person> _known = [];
    private readonly List<WorldAction> _actions = [];
    // Room for what a situation may draw: a lane that first has a fault in its hundredth case takes no memory for it then.
    private readonly List<(Situations.FaultSlots Slots, int First)> _faults = new(16);
    private readonly List<double> _faultValues = new(32);
    private Phase _phase;

    /// <summary>The nearest end of a pending step of what may be asked for.</summary>
    private SimTime _horizon;

    /// <summary>The nearest end of any pending step.</summary>
    private SimTime _end;

    /// <summary>Whether sentinels are to be judged when all steps are proposed: not where only what stands aside has gone on.</summary>
    private bool _judges;
    private SimTime _fireAt = SimTime.Never;
    private Bracket _bracket;
    private SimTime _bracketBase;
    private SimTime _judgedFrom;
    private SimTime _firingsSince;
    private long _tried;
    private bool _pendingFirings;
    private bool _cutting;
    private bool _slotsMoved;
    private bool _unseen;
    private bool _blind;
    private bool _hasBegun;
    private Snapshots.WorldSnapshot? _restored;

    /// <summary>How often each switch has fired in the second that began then.</summary>
    private readonly int[] _fired;
    private readonly bool _tells;
    private readonly SlotUses _uses;
    private readonly int[] _seen;
    private readonly int[] _aside;
    private readonly bool[] _isAside;
    private readonly bool[] _isCut;

    /// <summary>Bindings that follow from slots which have moved since they were applied.</summary>
    private readonly Marks _bindingsMoved;

    /// <summary>Switches that follow from slots which have moved since they were armed or not, and looked at.</summary>
    private readonly Marks _switchesMoved;

    /// <param name="bank">Eight lanes of a plan.</param>
    /// <param name="lane">0…7.</param>
    /// <param name="times">How long people take.</param>
    public World(LaneBank bank, int lane, HumanTimes? times = null)
    {
        ArgumentNullException.ThrowIfNull(bank);
        (_bank, _lane) = (bank, lane);
        HumanTimes = times ?? new();
        _hazards = HazardTable.Of(bank.Plan);
        _protections = [.. bank.Plan.Book.Protections.Values];
        _slots = new double[bank.Plan.Slots.Length];
        _applied = new double[bank.Plan.Bindings.Length];
        _fired = new int[bank.Plan.Switches.Length];
        _viewAt = new SimTime[bank.Plan.Networks.Length];
        _rooms = [.. bank.Plan.Resolvers.Select(r => r.NewRoom())];
        _uses = bank.Plan.Uses;
        (_seen, _aside) = ([.. bank.Plan.Seen], [.. bank.Plan.Aside]);
        _isAside = [.. bank.Plan.NetworkNames.Select((_, n) => _aside.Contains(n))];
        _isCut = new bool[_isAside.Length];
        (_bindingsMoved, _switchesMoved, _roomsMoved) = (new(_applied.Length), new(bank.Plan.Switches.Length), new(_rooms.Length));
        _tells = bank.Plan.Switches.Any(s => s.FiresAtEvents) || _rooms.Length > 0;
        Reset();
    }

    public Plan Plan => _bank.Plan;

    public HumanTimes HumanTimes { get; }

    /// <summary>The clock.</summary>
    public SimTime Now { get; private set; }

    /// <summary>The world does not pass this moment; it may be raised at any time, until whoever follows it lets it rest for good.</summary>
    public SimTime Limit
    {
        get;
        set => field = Rests ? field : value;
    }

    /// <summary>Whoever follows it asks nothing more of it: it stands for good.</summary>
    public bool Rests { get; private set; }

    public IReadOnlyList<Person> People => _people;

    public EventAgenda Agenda { get; } = new();

    /// <summary>What happened, or null where nobody will read it.</summary>
    public List<JournalEntry>? Journal { get; set; }

    /// <summary>The card being worked, or null.</summary>
    public CardRun? Run { get; private set; }

    /// <summary>Who follows it, or null.</summary>
    public Overseer? Overseer { get; private set; }

    /// <summary>Set when the numbers could not go on: the run is undecided for this reason.</summary>
    public string? Trouble { get; private set; }

    /// <summary>Called when a recording moment has come, with everything in view.</summary>
    public Action<World>? OnSample { get; set; }

    /// <summary>Accepted steps of all networks.</summary>
    public long Steps
    {
        get
        {
            long steps = 0;
            foreach (int i in Plan.Stepped)
            {
                steps += _bank.Group(i).Steps(_lane);
            }

            return steps;
        }
    }

    internal LaneBank Bank => _bank;

    /// <summary>Which lane of its bank it is.</summary>
    public int Lane => _lane;

    /// <summary>Back to the plan's start: time zero, nobody there, nothing on the agenda.</summary>
    public void Reset()
    {
        foreach (int i in Plan.Stepped)
        {
            _bank.Group(i).Load(_lane);
        }

        for (int i = 0; i < _slots.Length; i++)
        {
            _slots[i] = Plan.Slots[i].Start;
            _bank.SetSlot(_lane, new(i), _slots[i]);
        }

        foreach (ResolverRoom room in _rooms)
        {
            room.Forget();
        }

        Array.Fill(_applied, double.NaN);
        Array.Fill(_viewAt, Nowhere);
        Agenda.Clear();
        StopWatchingAll();
        _people.Clear();
        _actions.Clear();
        _faults.Clear();
        _faultValues.Clear();
        _guards.Clear();
        _answers = null;
        _shuts = false;
        Journal?.Clear();
        Run = null;
        Overseer = null;
        Trouble = null;
        Rests = false;
        Now = Limit = SimTime.Zero;
        _fireAt = SimTime.Never;
        _judgedFrom = SimTime.Zero;
        _pendingFirings = _cutting = _unseen = _blind = _hasBegun = false;
        _judges = true;
        Array.Clear(_isCut);
        _slotsMoved = true;
        _bindingsMoved.AddAll();
        _switchesMoved.AddAll();
        _roomsMoved.AddAll();
        InView = false;
        _restored = null;
        Array.Clear(_fired);
        _firingsSince = SimTime.Zero;
        _trajectory = TrajectoryHash.Start;
        _phase = Phase.Change;
    }

    /// <summary>Puts somebody at a place.</summary>
    public Person AddPerson(Book.Model.Role role, string place) => AddPerson(role, Plan.Ways.IndexOf(place));

    /// <summary>Puts somebody at a place by its number in the plan's way table.</summary>
    public Person AddPerson(Book.Model.Role role, int at)
    {
        if (_people.Count == _known.Count)
        {
            _known.Add(new(_people.Count, role, at, Plan.Ways));
        }

        Person person = _known[_people.Count];
        person.Take(_people.Count, role, at, Plan.Ways);
        _people.Add(person);
        return person;
    }

    /// <summary>Something done from outside, now or later.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The moment has passed.</exception>
    public void Do(WorldAction action, SimTime at)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(at, Now);
        _actions.Add(action);
        Agenda.Add(new(at, AgendaKind.Action, _actions.Count - 1));
    }

    /// <summary>Asks for <see cref="OnSample"/> at a moment.</summary>
    public void SampleAt(SimTime at) => Agenda.Add(new(at, AgendaKind.Sample, 0));

    /// <summary>Begins a card: judged against its must-nevers from now on.</summary>
    public void Begin(CardRun run)
    {
        Run = run;
        run.Attach(this);
    }

    /// <summary>Lets somebody follow it. Only before its first moment.</summary>
    /// <exception cref="InvalidOperationException">It has begun.</exception>
    public void Follow(Overseer overseer)
    {
        ArgumentNullException.ThrowIfNull(overseer);
        if (_hasBegun)
        {
            throw new InvalidOperationException("Who follows a world does so from its first moment.");
        }

        Overseer = overseer;
        overseer.Join(this);
    }

    internal void Rest()
    {
        Limit = Now;
        Rests = true;
    }

    /// <summary>A line of the journal. Whoever makes a sentence for it looks first whether one is kept: in a trial nothing is built.</summary>
    internal void Note(JournalKind kind, FormattableString sentence, int step = 0, int depth = 0) => Journal?.Add(new(Now, kind, sentence, step, depth));
}
