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
    /// <param name="refused">Lanes whose attempt ends within their pending step and errs by more than 1, a bit each.</param>
    private void StayBetween(Lanes error, uint refused)
    {
        uint wanted = refused & ~Lanes.BitsOf(Lanes.LessOrEqual(error, Change()));
        if (wanted == 0)
        {
            return;
        }

        for (int lane = 0; lane < Lanes.Count; lane++)
        {
            LaneState s = _lanes[lane];
            s.IsBetween |= (wanted >> lane & 1) != 0;
            At(_share, 0, lane) = (wanted >> lane & 1) != 0 ? s.Size / (double)(s.Pending - s.Committed) : 0;
        }

        Lanes mask = Lanes.MaskOf(wanted);
        Lanes share = *_share;
        for (int i = 0; i < Topology.Amounts; i++)
        {
            _after[i] = Lanes.Select(mask, Lanes.Fma(share, _pending[i] - _amounts[i], _amounts[i]), _after[i]);
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
}
