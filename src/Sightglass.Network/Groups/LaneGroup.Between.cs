using Sightglass.Basics.Numbers;
using Sightglass.Network.Step;

namespace Sightglass.Network.Groups;

/// <content>
/// Moments within a pending step. An attempt that ends there is shorter than the step that was accepted, and nearly always errs less. Not always: what grows of itself
/// (air that flows back through the valve that its own pressure holds open) makes the matrix singular at one size of step. A moment whose attempt errs by more than
/// all that changes in the whole step lies on the straight line between the step's ends instead, where nothing is made or lost and no store leaves what it holds at both.
/// </content>
public sealed unsafe partial class LaneGroup
{
    /// <summary>Puts the lanes on the line whose look or cut asks for it, or asked for it and is still in view.</summary>
    /// <param name="error">Of this attempt, in tolerances.</param>
    /// <param name="refused">Lanes in which it is greater than 1, a bit each.</param>
    private void StayBetween(Lanes error, uint refused)
    {
        uint asked = 0;
        uint shown = 0;
        for (int lane = 0; lane < Lanes.Count; lane++)
        {
            LaneState s = _lanes[lane];
            uint own = refused & (1u << lane);
            if (s.Size > 0 && s.HasPending)
            {
                asked |= s.Task is LaneTask.Cut or LaneTask.Peek ? own : 0;
                shown |= s.Task == LaneTask.None && s.IsBetween ? own : 0;
            }
        }

        if (asked != 0)
        {
            asked &= ~Lanes.BitsOf(Lanes.LessOrEqual(error, Change()));
            for (int lane = 0; lane < Lanes.Count; lane++)
            {
                _lanes[lane].IsBetween |= (asked >> lane & 1) != 0;
            }
        }

        if ((asked | shown) != 0)
        {
            PutBetween(asked | shown);
        }
    }

    /// <summary>The greatest change of an amount within each lane's pending step, in tolerances.</summary>
    private Lanes Change()
    {
        Lanes change = default;
        for (int i = 0; i < Plan.Size; i++)
        {
            // Capacities are those of the committed state: a change of amount over one is a change of potential.
            change = Lanes.Max(Lanes.Abs((_pending[i] - _amounts[i]) / _capacity[i]) * Lanes.Of(_inverseTolerance[i]), change);
        }

        return change;
    }

    private void PutBetween(uint lanes)
    {
        for (int lane = 0; lane < Lanes.Count; lane++)
        {
            LaneState s = _lanes[lane];
            At(_share, 0, lane) = (lanes >> lane & 1) != 0 ? s.Size / (double)(s.Pending - s.Committed) : 0;
        }

        Lanes mask = Lanes.MaskOf(lanes);
        Lanes share = *_share;
        for (int i = 0; i < Topology.Amounts; i++)
        {
            _after[i] = Lanes.Select(mask, Lanes.Fma(share, _pending[i] - _amounts[i], _amounts[i]), _after[i]);
        }
    }
}
