using Sightglass.Basics.Numbers;
using Sightglass.Network.Step;

namespace Sightglass.Network.Groups;

public sealed unsafe partial class LaneGroup
{
    private const double LeastFactor = 0.1;
    private const double GreatestFactor = 8;
    private const double Safety = 0.85;

    /// <summary>Gives each lane what its attempt was for, and settles the size of its next one.</summary>
    /// <param name="accepted">Lanes whose error is within the tolerances, a bit each.</param>
    /// <param name="atSwitch">Lanes in which there is something to be seen at a switch.</param>
    private int Conclude(ref Frame frame, uint accepted, uint atSwitch)
    {
        int left = 0;
        uint keep = 0;
        uint cut = 0;
        uint still = 0;
        for (int lane = 0; lane < Lanes.Count; lane++)
        {
            uint own = 1u << lane;
            LaneState s = _lanes[lane];
            still |= s.Size == 0 ? own : 0;
            if (s.Task == LaneTask.None)
            {
                continue;
            }

            s.Attempts++;
            switch (s.Task)
            {
                case LaneTask.Propose:
                    keep |= ConcludeProposal(lane, s, (accepted & own) != 0, (atSwitch & own) != 0) ? own : 0;
                    break;
                case LaneTask.Cut:
                    cut |= own;
                    s.Committed = s.Target;
                    s.Size = 0;
                    s.HasPending = false;
                    s.Task = LaneTask.None;
                    break;
                case LaneTask.Peek:
                    s.Task = LaneTask.None;
                    break;
            }

            left += s.Task == LaneTask.None ? 0 : 1;
        }

        CopyLanes(_after, _pending, keep);
        CopyLanes(_after, _amounts, cut);
        if (still != 0)
        {
            // A peek at the committed moment shows the committed state itself.
            CopyLanes(_amounts, _after, still);
            EvaluatePotentials(ref frame, _after);
        }

        return left;
    }

    /// <summary>The size of the next step by the error of this one: min(max(0.85/∛error, 0.1), 8) times this one's.</summary>
    private static Lanes NextTicks(Lanes error, Lanes seconds)
    {
        Lanes root = Cube.Root(Lanes.Max(error, Lanes.Of(1e-6)));
        Lanes factor = Lanes.Min(Lanes.Max(Lanes.Of(Safety) / root, Lanes.Of(LeastFactor)), Lanes.Of(GreatestFactor));
        return TicksOf(factor * seconds);
    }

    private bool ConcludeProposal(int lane, LaneState s, bool accepted, bool atSwitch)
    {
        long next = (long)At(_nextTicks, 0, lane);
        if (!accepted)
        {
            // What was bracketed came from longer attempts: start anew below this size, so that every round ends sooner.
            s.Bracket = default;
            s.AllowedSize = 0;
            s.Failed = s.Size <= 1;
            s.NextSize = Math.Min(next, Math.Max(1, s.Size - 1));
            s.Task = s.Failed ? LaneTask.None : LaneTask.Propose;
            return false;
        }

        if (!atSwitch && !s.Bracket.IsOpen)
        {
            s.Peaks = 0;
        }
        else if (!Land(lane, s))
        {
            return false;
        }

        s.Pending = s.Committed + s.Size;
        s.HasPending = true;
        s.Steps++;
        s.NextSize = s.AllowedSize > 0 ? Math.Max(s.AllowedSize, 1) : next;
        s.Task = LaneTask.None;
        return true;
    }

    private void CopyLanes(Lanes* from, Lanes* to, uint which)
    {
        if (which == 0)
        {
            return;
        }

        Lanes mask = Lanes.MaskOf(which);
        int n = Topology.Amounts;
        for (int i = 0; i < n; i++)
        {
            to[i] = Lanes.Select(mask, from[i], to[i]);
        }
    }
}
