using Sightglass.Basics.Numbers;
using Sightglass.Basics.Time;
using Sightglass.Network.Step;

namespace Sightglass.Network.Groups;

public sealed unsafe partial class LaneGroup
{
    /// <summary>Asks for a pending step from the committed state.</summary>
    public void Propose(int lane)
    {
        LaneState s = _lanes[lane];
        RequireNoPending(lane);
        s.Task = LaneTask.Propose;
        s.Bracket = default;
        s.AllowedSize = 0;
        s.Fired = 0;
    }

    /// <summary>The pending step becomes the committed state. Needs no iteration.</summary>
    public void Commit(int lane)
    {
        LaneState s = _lanes[lane];
        RequirePending(s);
        for (int i = 0; i < Topology.Amounts; i++)
        {
            At(_amounts, i, lane) = At(_pending, i, lane);
        }

        s.Committed = s.Pending;
        s.HasPending = false;
    }

    /// <summary>Asks for the state at a moment of the pending step as the committed state.</summary>
    public void Cut(int lane, SimTime at)
    {
        LaneState s = _lanes[lane];
        RequireWithin(s, at);
        if (at.Ticks == s.Committed)
        {
            s.HasPending = false;
            s.Steps--;
        }
        else if (at.Ticks == s.Pending)
        {
            Commit(lane);
        }
        else
        {
            s.Task = LaneTask.Cut;
            s.Target = at.Ticks;
        }
    }

    /// <summary>Asks to see the state at a moment of the pending step (or at the committed moment).</summary>
    public void Peek(int lane, SimTime at)
    {
        LaneState s = _lanes[lane];
        if (at.Ticks != s.Committed)
        {
            RequireWithin(s, at);
        }

        s.Task = LaneTask.Peek;
        s.Target = at.Ticks;
    }

    /// <summary>
    /// Asks when a guard, negative at a moment of the pending step, is first not negative before the step's end.
    /// The answer is in <see cref="Located"/>.
    /// </summary>
    /// <param name="lane">0…7.</param>
    /// <param name="guard">As given by <see cref="AddGuard"/>.</param>
    /// <param name="from">A moment at which the guard is negative.</param>
    /// <param name="atFrom">Its value there.</param>
    /// <param name="atEnd">Its value, not negative, at the pending step's end.</param>
    public void Locate(int lane, int guard, SimTime from, double atFrom, double atEnd)
    {
        LaneState s = _lanes[lane];
        RequirePending(s);
        s.Bracket = Bracket.Open(from.Ticks - s.Committed, atFrom, s.Pending - s.Committed, atEnd);
        s.Guard = guard;
        s.Task = LaneTask.Locate;
        NextLocation(s);
    }

    /// <summary>Where the last location ended.</summary>
    public SimTime Located(int lane) => new(_lanes[lane].Committed + _lanes[lane].Bracket.High);

    private static void NextLocation(LaneState s)
    {
        if (s.Bracket.IsClosed)
        {
            s.Task = LaneTask.None;
        }
        else
        {
            s.Target = s.Committed + s.Bracket.Next();
        }
    }

    private static void RequirePending(LaneState s)
    {
        if (!s.HasPending)
        {
            throw new InvalidOperationException("No step is pending: propose first.");
        }
    }

    private static void RequireWithin(LaneState s, SimTime at)
    {
        RequirePending(s);
        if (at.Ticks < s.Committed || at.Ticks > s.Pending)
        {
            throw new ArgumentOutOfRangeException(nameof(at), at, "The moment lies outside the pending step.");
        }
    }
}
