using Sightglass.Basics.Numbers;
using Sightglass.Network.Step;

namespace Sightglass.Network.Groups;

public sealed unsafe partial class LaneGroup
{
    /// <summary>How many guards may be armed as switches.</summary>
    private const int MostSwitches = 64;

    /// <summary>How often in a row a step is shortened to look at a peak.</summary>
    private const int MostPeaks = 3;

    private readonly List<Guard> _guards = [];
    private readonly ulong[] _armed = new ulong[Lanes.Count];

    /// <summary>The lanes in which each switch is armed, a bit each.</summary>
    private readonly uint[] _armedIn = new uint[MostSwitches];
    private ulong _armedAny;

    /// <summary>Adds a guard that lanes can arm as a switch or have located as a sentinel. At most 64 may be armed as switches.</summary>
    /// <returns>Its number.</returns>
    public int AddGuard(Guard guard)
    {
        ArgumentNullException.ThrowIfNull(guard);
        _guards.Add(guard);
        return _guards.Count - 1;
    }

    /// <summary>Whether steps of a lane end on a guard's crossing from negative to not negative.</summary>
    public void Arm(int lane, int guard, bool armed)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(guard, MostSwitches);
        RequireNoPending(lane);
        ulong bit = 1UL << guard;
        uint own = 1u << lane;
        _armed[lane] = armed ? _armed[lane] | bit : _armed[lane] & ~bit;
        _armedIn[guard] = armed ? _armedIn[guard] | own : _armedIn[guard] & ~own;
        _armedAny = _armedIn[guard] != 0 ? _armedAny | bit : _armedAny & ~bit;
    }

    public bool IsArmed(int lane, int guard) => (_armed[lane] >> guard & 1) != 0;

    /// <summary>Switches that fire at the end of the pending step, a bit each.</summary>
    public ulong Fired(int lane) => _lanes[lane].Fired;

    /// <summary>A guard's value in every lane at the end of the last attempt.</summary>
    public Lanes GuardAtEnd(int guard) => _guards[guard].Evaluate(End);

    /// <summary>The states at the end of the last attempt: of a proposal, a peek or a cut.</summary>
    public StateView End => new(this, _after, _potentials);

    private void Disarm(int lane)
    {
        for (ulong left = _armed[lane]; left != 0; left &= left - 1)
        {
            Arm(lane, System.Numerics.BitOperations.TrailingZeroCount(left), false);
        }
    }

    private void EvaluateSwitches(StateView state, Lanes* values)
    {
        for (ulong left = _armedAny; left != 0; left &= left - 1)
        {
            int g = System.Numerics.BitOperations.TrailingZeroCount(left);
            values[g] = _guards[g].Evaluate(state);
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
        for (ulong left = _armedAny; left != 0; left &= left - 1)
        {
            int g = System.Numerics.BitOperations.TrailingZeroCount(left);
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
        (int first, double atStart, double atEnd, ulong crossed) = FirstCrossing(lane);
        if (!s.Bracket.IsOpen)
        {
            if (crossed == 0)
            {
                return !ShortenToPeak(lane, s);
            }

            s.AllowedSize = Math.Max(s.AllowedSize, s.Size);
            s.Guard = first;
            s.Bracket = Bracket.Open(0, atStart, s.Size, atEnd);
        }
        else
        {
            bool any = crossed != 0;
            s.Bracket.Take(s.Size, any ? atEnd : At(_guardAtEnd, s.Guard, lane));
        }

        if (s.Bracket.IsClosed && s.Bracket.High == s.Size)
        {
            s.Fired = crossed;
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
        for (ulong left = _armed[lane]; left != 0; left &= left - 1)
        {
            int g = System.Numerics.BitOperations.TrailingZeroCount(left);
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

    /// <summary>The crossed switch whose straight line through start and end crosses first.</summary>
    private (int Guard, double AtStart, double AtEnd, ulong Crossed) FirstCrossing(int lane)
    {
        (int guard, double atStart, double atEnd, ulong crossed, double earliest) = (-1, 0.0, 0.0, 0UL, 2.0);
        for (ulong left = _armed[lane]; left != 0; left &= left - 1)
        {
            int g = System.Numerics.BitOperations.TrailingZeroCount(left);
            double before = At(_guardAtStart, g, lane);
            double after = At(_guardAtEnd, g, lane);
            if (before < 0 && after >= 0)
            {
                crossed |= 1UL << g;
                double share = before / (before - after);
                if (share < earliest)
                {
                    (guard, atStart, atEnd, earliest) = (g, before, after, share);
                }
            }
        }

        return (guard, atStart, atEnd, crossed);
    }
}
