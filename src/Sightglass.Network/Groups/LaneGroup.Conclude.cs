using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Step;

namespace Sightglass.Network.Groups;

public sealed unsafe partial class LaneGroup
{
    /// <summary>Gives each lane what its attempt was for, and settles the size of its next one.</summary>
    private int Conclude(Lanes error, Lanes seconds)
    {
        Lanes factor = Factors(error);
        int left = 0;
        uint keep = 0;
        uint cut = 0;
        uint still = 0;
        for (int lane = 0; lane < Lanes.Count; lane++)
        {
            LaneState s = _lanes[lane];
            still |= s.Size == 0 ? 1u << lane : 0;
            if (s.Task == LaneTask.None)
            {
                continue;
            }

            s.Attempts++;
            switch (s.Task)
            {
                case LaneTask.Propose:
                    keep |= ConcludeProposal(lane, s, error[lane] <= 1, factor[lane] * seconds[lane]) ? 1u << lane : 0;
                    break;
                case LaneTask.Cut:
                    cut |= 1u << lane;
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

        CopyLanes(_stage, _pending, keep);
        CopyLanes(_stage, _amounts, cut);
        ShowCommitted(still);
        return left;
    }

    /// <summary>min(max(0.85/∛error, 0.1), 8).</summary>
    private static Lanes Factors(Lanes error)
    {
        Lanes e = Lanes.Max(error, Lanes.Of(1e-6));
        Lanes root = Lanes.CbrtSeed(e);
        for (int i = 0; i < 3; i++)
        {
            root = (root + root + (e / (root * root))) * Lanes.Of(1.0 / 3.0);
        }

        return Lanes.Min(Lanes.Max(Lanes.Of(Safety) / root, Lanes.Of(LeastFactor)), Lanes.Of(GreatestFactor));
    }

    private bool ConcludeProposal(int lane, LaneState s, bool accepted, double nextSeconds)
    {
        long next = TicksOf(nextSeconds);
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

        if (!Land(lane, s))
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

        Lanes mask = Mask(which);
        for (int i = 0; i < Topology.Amounts; i++)
        {
            to[i] = Lanes.Select(mask, from[i], to[i]);
        }
    }

    /// <summary>A peek at the committed moment shows the committed state itself.</summary>
    private void ShowCommitted(uint which)
    {
        if (which != 0)
        {
            CopyLanes(_amounts, _stage, which);
            Frame frame = FrameOf(_stage, _potentials);
            EvaluateStores(ref frame, _stage);
        }
    }

    [SkipLocalsInit]
    private Lanes Mask(uint which)
    {
        for (int lane = 0; lane < Lanes.Count; lane++)
        {
            _scratch[lane] = (which >> lane & 1) != 0 ? BitConverter.Int64BitsToDouble(-1L) : 0.0;
        }

        return Read(_scratch);
    }
}
