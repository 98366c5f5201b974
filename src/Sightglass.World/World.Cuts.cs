using Sightglass.Basics.Time;
using Sightglass.Network.Groups;

namespace Sightglass.World;

/// <content>Pending steps that end at the clock's moment, since something changes or the run is over.</content>
public sealed partial class World
{
    /// <summary>Makes the state at the clock the committed one, as a change of an input would: for a run's end.</summary>
    public void CutHere()
    {
        bool any = false;
        foreach (int i in Plan.Stepped)
        {
            LaneGroup group = _bank.Group(i);
            if (group.PendingEnd(_lane) != SimTime.Never)
            {
                group.Cut(_lane, Now);
                any = true;
            }

            while (group.Task(_lane) != LaneTask.None)
            {
                group.Iterate();
            }
        }

        if (any)
        {
            Array.Fill(_viewAt, Nowhere);
            Trace();
            _phase = Phase.Propose;
            _fireAt = SimTime.Never;
        }
    }

    /// <summary>All networks together; where some stand aside, only those of which an input changes.</summary>
    private void CutAll()
    {
        _phase = Phase.Change;
        if (_aside.Length > 0)
        {
            AreCut();
            return;
        }

        foreach (int i in Plan.Stepped)
        {
            Cut(i);
        }
    }

    private void Cut(int network)
    {
        LaneGroup group = _bank.Group(network);
        if (group.Task(_lane) == LaneTask.None && group.PendingEnd(_lane) != SimTime.Never)
        {
            group.Cut(_lane, Now);
            _viewAt[network] = group.Task(_lane) != LaneTask.None || _viewAt[network] == Now ? Now : Nowhere;
            _cutting |= !_isAside[network];
            _isCut[network] = _isAside[network];
        }
    }
}
