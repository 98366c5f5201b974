using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Groups;

public sealed unsafe partial class LaneGroup
{
    private readonly List<Guard> _guards = [];
    private readonly List<Lanes> _guardAtStart = [];
    private readonly ulong[] _armed = new ulong[Lanes.Count];
    private ulong _armedAny;

    /// <summary>Adds a guard that lanes can arm as a switch or have located as a sentinel. At most 64 may be armed as switches.</summary>
    /// <returns>Its number.</returns>
    public int AddGuard(Guard guard)
    {
        ArgumentNullException.ThrowIfNull(guard);
        _guards.Add(guard);
        _guardAtStart.Add(default);
        return _guards.Count - 1;
    }

    /// <summary>Whether steps of a lane end on a guard's crossing from negative to not negative.</summary>
    public void Arm(int lane, int guard, bool armed)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(guard, 63);
        RequireNoPending(lane);
        ulong bit = 1UL << guard;
        _armed[lane] = armed ? _armed[lane] | bit : _armed[lane] & ~bit;
        _armedAny = 0;
        foreach (ulong a in _armed)
        {
            _armedAny |= a;
        }
    }

    public bool IsArmed(int lane, int guard) => (_armed[lane] >> guard & 1) != 0;

    /// <summary>Switches that fire at the end of the pending step, a bit each.</summary>
    public ulong Fired(int lane) => _lanes[lane].Fired;

    /// <summary>A guard's value in every lane at the end of the last attempt.</summary>
    public Lanes GuardAtEnd(int guard) => _guards[guard].Evaluate(End);

    /// <summary>The states at the end of the last attempt: of a proposal, a peek or a cut.</summary>
    public StateView End => new(this, _stage, _potentials);

    private void Disarm(int lane)
    {
        _armed[lane] = 0;
    }

    private void EvaluateSwitches(StateView state)
    {
        for (int g = 0; g < _guards.Count && g < 64; g++)
        {
            if ((_armedAny >> g & 1) != 0)
            {
                _guardAtStart[g] = _guards[g].Evaluate(state);
            }
        }
    }

    /// <summary>After an accepted attempt: lands on a crossing, or closes in on it. True when the step may stand as it is.</summary>
    private bool Land(int lane, LaneState s)
    {
        (int first, double atStart, double atEnd, ulong crossed) = FirstCrossing(lane, s);
        if (!s.Bracket.IsOpen)
        {
            if (crossed == 0)
            {
                return true;
            }

            s.AllowedSize = s.Size;
            s.Guard = first;
            s.Bracket = Step.Bracket.Open(0, atStart, s.Size, atEnd);
        }
        else
        {
            bool any = crossed != 0;
            s.Bracket.Take(s.Size, any ? atEnd : _guards[s.Guard].Evaluate(End)[lane]);
        }

        if (s.Bracket.IsClosed && s.Bracket.High == s.Size)
        {
            s.Fired = crossed;
            return true;
        }

        s.NextSize = s.Bracket.IsClosed ? s.Bracket.High : s.Bracket.Next();
        return false;
    }

    /// <summary>The crossed switch whose straight line through start and end crosses first.</summary>
    private (int Guard, double AtStart, double AtEnd, ulong Crossed) FirstCrossing(int lane, LaneState s)
    {
        (int guard, double atStart, double atEnd, ulong crossed, double earliest) = (-1, 0.0, 0.0, 0UL, 2.0);
        for (ulong left = _armed[lane]; left != 0; left &= left - 1)
        {
            int g = System.Numerics.BitOperations.TrailingZeroCount(left);
            double before = _guardAtStart[g][lane];
            if (before >= 0)
            {
                continue;
            }

            double after = _guards[g].Evaluate(End)[lane];
            if (after >= 0)
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
