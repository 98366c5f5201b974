using Sightglass.Basics.Numbers;
using Sightglass.Network.Step;

namespace Sightglass.Network.Groups;

public sealed unsafe partial class LaneGroup
{
    /// <summary>How often in a row a step is shortened to look at a peak.</summary>
    private const int MostPeaks = 3;

    private readonly List<Guard?> _guards = [];
    private readonly List<bool> _moves = [];
    private GuardSheet? _sheet;
    private readonly GuardSet[] _armed = [.. Enumerable.Range(0, Lanes.Count).Select(_ => new GuardSet())];
    private readonly GuardSet _armedAny = new();
    private readonly GuardSet _crossed = new();

    /// <summary>The lanes in which each switch is armed, a bit each.</summary>
    private uint[] _armedIn = [];
    private LaneMemory _guardMemory = new(0);
    private Lanes* _guardAtStart;
    private Lanes* _guardAtMiddle;
    private Lanes* _guardAtEnd;
    private Lanes* _guardPeak;

    /// <summary>Adds a guard that lanes can arm as a switch or have located as a sentinel. As many as there are: a long train has hundreds.</summary>
    /// <param name="guard">Null for one that never changes within a step: it can be armed, and is never looked at.</param>
    /// <returns>Its number.</returns>
    public int AddGuard(Guard? guard)
    {
        _guards.Add(guard);
        return Add(guard is not null);
    }

    /// <summary>Adds guards that are worked out together. The group has no others.</summary>
    /// <param name="sheet">Works them out.</param>
    /// <param name="moves">Of each, whether it can change within a step; one that cannot is never looked at.</param>
    public void AddGuards(GuardSheet sheet, IEnumerable<bool> moves)
    {
        ArgumentNullException.ThrowIfNull(moves);
        if (_moves.Count > 0)
        {
            throw new InvalidOperationException("The group has guards already.");
        }

        _sheet = sheet;
        foreach (bool m in moves)
        {
            Add(m);
        }
    }

    /// <summary>Whether steps of a lane end on a guard's crossing from negative to not negative.</summary>
    public void Arm(int lane, int guard, bool armed)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(guard, _moves.Count);
        if (_moves[guard])
        {
            RequireNoPending(lane);
        }

        uint own = 1u << lane;
        _armedIn[guard] = armed ? _armedIn[guard] | own : _armedIn[guard] & ~own;
        if (_moves[guard])
        {
            _armed[lane][guard] = armed;
            _armedAny[guard] = _armedIn[guard] != 0;
        }
    }

    public bool IsArmed(int lane, int guard) => (_armedIn[guard] >> lane & 1) != 0;

    /// <summary>Whether any switch fires at the end of the pending step.</summary>
    public bool HasFired(int lane) => !_lanes[lane].Fired.IsEmpty;

    /// <summary>Whether this switch fires at the end of the pending step.</summary>
    public bool HasFired(int lane, int guard) => _lanes[lane].Fired[guard];

    /// <summary>The states at the end of the last attempt: of a proposal, a peek or a cut.</summary>
    public StateView End => new(this, _after, _potentials);

    private int Add(bool moves)
    {
        _moves.Add(moves);
        if (_moves.Count > _armedIn.Length)
        {
            MakeRoom(Math.Max(16, 2 * _armedIn.Length));
        }

        return _moves.Count - 1;
    }

    private void MakeRoom(int guards)
    {
        Array.Resize(ref _armedIn, guards);
        foreach (GuardSet set in _armed.Concat(_lanes.Select(s => s.Fired)).Append(_armedAny).Append(_crossed))
        {
            set.MakeRoom(guards);
        }

        _guardMemory.Dispose();
        _guardMemory = new(4 * guards);
        _guardAtStart = _guardMemory.Take(guards);
        _guardAtMiddle = _guardMemory.Take(guards);
        _guardAtEnd = _guardMemory.Take(guards);
        _guardPeak = _guardMemory.Take(guards);
    }

    private void Disarm(int lane)
    {
        for (int g = 0; g < _moves.Count; g++)
        {
            Arm(lane, g, false);
        }
    }

    private void EvaluateSwitches(StateView state, Lanes* values)
    {
        if (_sheet is not null)
        {
            _sheet.Evaluate(state, _armedAny, new(values, _moves.Count));
            return;
        }

        for (int g = _armedAny.From(0); g >= 0; g = _armedAny.From(g + 1))
        {
            values[g] = _guards[g]!.Evaluate(state);
        }
    }

    /// <summary>
    /// The switches half-way through the attempt, by the parabola through both ends whose slope at the start is 5k₁ − k₂ over the step: the rate of change there to
    /// second order, in which what decays within the step has died away.
    /// </summary>
    private void LookAtMiddle(ref Frame frame, Lanes seconds)
    {
        Stages s = frame.Stages;
        Lanes* middle = s.Third;
        Lanes quarter = Lanes.Of(0.25);
        int n = Topology.Amounts;
        for (int i = 0; i < n; i++)
        {
            Lanes before = s.Before[i];
            middle[i] = before + Lanes.Fma(quarter, Lanes.Fma(seconds, s.Carried[i], s.After[i] - before), s.Change1[i]);
        }

        EvaluatePotentials(ref frame, middle);
        EvaluateSwitches(new(this, middle, _potentials), _guardAtMiddle);
    }

    /// <summary>Looks at the armed switches of all lanes at once, from their values at the attempt's start, middle and end.</summary>
    /// <returns>The lanes in which one has crossed or seems to rise above zero in between, a bit each.</returns>
    private uint LookAtSwitches()
    {
        uint found = 0;
        for (int g = _armedAny.From(0); g >= 0; g = _armedAny.From(g + 1))
        {
            Lanes start = _guardAtStart[g];
            Lanes end = _guardAtEnd[g];
            Lanes peak = Peak.ShareOf(start, _guardAtMiddle[g], end);
            Lanes crossed = Lanes.And(Lanes.Less(start, Lanes.Of(0)), Lanes.LessOrEqual(Lanes.Of(0), end));
            _guardPeak[g] = peak;
            found |= _armedIn[g] & Lanes.BitsOf(Lanes.Or(crossed, Lanes.Less(peak, Lanes.Of(1))));
        }

        return found;
    }

    /// <summary>After an accepted attempt with something to be seen at a switch: lands on a crossing, or closes in on it. True when the step may stand as it is.</summary>
    private bool Land(int lane, LaneState s)
    {
        (int first, double atStart, double atEnd) = FirstCrossing(lane);
        if (!s.Bracket.IsOpen)
        {
            if (first < 0)
            {
                return !ShortenToPeak(lane, s);
            }

            s.AllowedSize = Math.Max(s.AllowedSize, s.Size);
            s.Guard = first;
            s.Bracket = Bracket.Open(0, atStart, s.Size, atEnd);
        }
        else
        {
            s.Bracket.Take(s.Size, first >= 0 ? atEnd : At(_guardAtEnd, s.Guard, lane));
        }

        if (s.Bracket.IsClosed && s.Bracket.High == s.Size)
        {
            s.Fired.Take(_crossed);
            return true;
        }

        s.NextSize = s.Bracket.IsClosed ? s.Bracket.High : s.Bracket.Next();
        return false;
    }

    /// <summary>
    /// Where a switch, negative at both ends, seems to rise above zero in between: has the step tried again to its first peak. If the switch is not negative there, that
    /// is a crossing like others; if it is, the step to the peak stands.
    /// </summary>
    private bool ShortenToPeak(int lane, LaneState s)
    {
        double earliest = s.Peaks < MostPeaks ? 1 : 0;
        for (int g = _armed[lane].From(0); g >= 0; g = _armed[lane].From(g + 1))
        {
            earliest = Math.Min(earliest, At(_guardPeak, g, lane));
        }

        long size = (long)(earliest * s.Size);
        if (earliest >= 1 || size < Bracket.ToleranceTicks || s.Size - size < Bracket.ToleranceTicks)
        {
            s.Peaks = 0;
            return false;
        }

        s.Peaks++;
        s.AllowedSize = Math.Max(s.AllowedSize, s.Size);
        s.NextSize = size;
        return true;
    }

    /// <summary>The crossed switch whose straight line through start and end crosses first, or −1; all that are crossed are noted.</summary>
    private (int Guard, double AtStart, double AtEnd) FirstCrossing(int lane)
    {
        _crossed.Clear();
        (int guard, double atStart, double atEnd, double earliest) = (-1, 0.0, 0.0, 2.0);
        for (int g = _armed[lane].From(0); g >= 0; g = _armed[lane].From(g + 1))
        {
            double before = At(_guardAtStart, g, lane);
            double after = At(_guardAtEnd, g, lane);
            if (before < 0 && after >= 0)
            {
                _crossed[g] = true;
                double share = before / (before - after);
                if (share < earliest)
                {
                    (guard, atStart, atEnd, earliest) = (g, before, after, share);
                }
            }
        }

        return (guard, atStart, atEnd);
    }
}
