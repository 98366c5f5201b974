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
        s.Fired.Clear();
        s.IsBetween = false;
        s.SizeAtProposal = s.NextSize;
    }

    /// <summary>The pending step becomes the committed state. Needs no iteration; what is in view stays in view until the next.</summary>
    public void Commit(int lane)
    {
        LaneState s = _lanes[lane];
        RequirePending(s);
        _settling |= 1u << lane;
        s.Committed = s.Pending;
        s.Size = 0;
        s.HasPending = false;
    }

    /// <summary>Asks for the state at a moment of the pending step as the committed state.</summary>
    public void Cut(int lane, SimTime at)
    {
        LaneState s = _lanes[lane];
        RequireWithin(s, at);
        if (at.Ticks == s.Committed)
        {
            s.Size = 0;
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
            s.IsBetween = false;
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
        s.IsBetween = false;
        s.Target = at.Ticks;
    }

    /// <summary>Takes over the amounts of the pending steps that have been committed: all lanes at once, since one alone would touch as much memory.</summary>
    private void Settle()
    {
        CopyLanes(_pending, _amounts, _settling);
        _settling = 0;
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
