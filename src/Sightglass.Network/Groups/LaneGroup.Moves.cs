using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Groups;

/// <content>
/// Lanes of several groups of one topology that take their next attempt together, in a group kept for that: what a lane computes does not depend on where it is.
/// </content>
public sealed unsafe partial class LaneGroup
{
    private readonly LaneState[] _own = new LaneState[Lanes.Count];
    private readonly GuardSet[] _ownArmed = new GuardSet[Lanes.Count];

    /// <summary>Parameters that were ever set: the others are those of the start in every lane.</summary>
    private readonly GuardSet _set = new();

    /// <summary>One attempt for lanes of other groups, all of which have a task. This group has no runs of its own.</summary>
    /// <param name="groups">Groups of the same topology, with the same guards.</param>
    /// <param name="pick">The lanes.</param>
    public void IterateFor(ReadOnlySpan<LaneGroup> groups, LanePick pick)
    {
        ArgumentNullException.ThrowIfNull(pick);
        Take(groups, pick);
        Iterate();
        GiveBack(groups, pick);
    }

    private void Take(ReadOnlySpan<LaneGroup> groups, LanePick pick)
    {
        for (int g = 0; g < groups.Length; g++)
        {
            if (pick.Has(g))
            {
                Take(groups[g], pick.From(g));
            }
        }

        for (int lane = 0; lane < Lanes.Count; lane++)
        {
            (_own[lane], _ownArmed[lane]) = (_lanes[lane], _armed[lane]);
            if (lane < pick.Count)
            {
                (int g, int from) = pick[lane];
                (_lanes[lane], _armed[lane]) = (groups[g]._lanes[from], groups[g]._armed[from]);
            }
            else
            {
                // Attempts of an idle lane are none of anybody's.
                _lanes[lane].Size = 1;
            }
        }

        TellArmed(pick.Count);
    }

    private void Take(LaneGroup group, LaneShift shift)
    {
        group.Settle();
        Move(group._inputs, _inputs, Topology.Inputs, shift);
        Move(group._amounts, _amounts, Topology.Amounts, shift);
        Move(group._pending, _pending, Topology.Amounts, shift);
        for (int p = group._set.From(0); p >= 0; p = group._set.From(p + 1))
        {
            _set[p] = true;
        }

        for (int p = _set.From(0); p >= 0; p = _set.From(p + 1))
        {
            _parameters[p] = shift.Apply(group._parameters[p], _parameters[p]);
        }
    }

    private void GiveBack(ReadOnlySpan<LaneGroup> groups, LanePick pick)
    {
        for (int g = 0; g < groups.Length; g++)
        {
            if (pick.Has(g))
            {
                LaneGroup group = groups[g];
                LaneShift shift = pick.BackTo(g);
                group.Version++;
                Move(_amounts, group._amounts, Topology.Amounts, shift);
                Move(_pending, group._pending, Topology.Amounts, shift);
                Move(_after, group._after, Topology.Amounts, shift);
                Move(_potentials, group._potentials, Topology.Amounts, shift);
            }
        }

        for (int lane = 0; lane < Lanes.Count; lane++)
        {
            (_lanes[lane], _armed[lane]) = (_own[lane], _ownArmed[lane]);
        }
    }

    /// <summary>What is armed in the lanes that were taken.</summary>
    private void TellArmed(int lanes)
    {
        for (int g = 0; g < _moves.Count; g++)
        {
            uint armed = 0;
            for (int lane = 0; lane < lanes; lane++)
            {
                armed |= (_armed[lane][g] ? 1u : 0) << lane;
            }

            _armedIn[g] = armed;
            _armedAny[g] = armed != 0;
        }
    }

    private static void Move(Lanes* from, Lanes* to, int rows, LaneShift shift)
    {
        for (int i = 0; i < rows; i++)
        {
            to[i] = shift.Apply(from[i], to[i]);
        }
    }
}
