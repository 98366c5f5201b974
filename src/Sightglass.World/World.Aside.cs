using Sightglass.Basics.Time;
using Sightglass.Network.Groups;
using Sightglass.Plant.Plans;

namespace Sightglass.World;

/// <content>
/// Networks that stand aside: nobody looks at them, and what happens elsewhere does not cut them. They are brought into view where a slot has moved that carries one of their own switches over
/// its crossing together with their state, and cut where one of their own inputs changes.
/// </content>
public sealed partial class World
{
    /// <summary>Brings into view what has just landed on a switch: what it sets may come from its state.</summary>
    private void LookAtLanded()
    {
        foreach (int i in _aside)
        {
            if (_pendingFirings && _bank.Group(i).Time(_lane) == Now && _bank.Group(i).PendingEnd(_lane) == SimTime.Never)
            {
                Bring(i, Now);
            }
        }
    }

    /// <summary>Whether a margin that follows a state may have been carried over zero by a slot.</summary>
    private bool StateMayJump()
    {
        for (int i = _switchesMoved.From(0); i >= 0; i = _switchesMoved.From(i + 1))
        {
            if (_uses.FiresByState[i])
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Brings into view, of what stands aside, the states that margins need which slots have moved.</summary>
    /// <returns>Whether something is still to be worked out for it.</returns>
    private bool BringMoved()
    {
        if (_aside.Length == 0)
        {
            return false;
        }

        for (int i = _switchesMoved.From(0); i >= 0; i = _switchesMoved.From(i + 1))
        {
            SwitchRule rule = Plan.Switches[i];
            if (_isAside[rule.Network] && _uses.FiresByState[i] && IsArmed(i))
            {
                Bring(rule.Network, Now);
            }
        }

        return AnyTask();
    }

    /// <summary>Has every network cut of which an input, a parameter or a switch would be another by the slots as they are, and shown.</summary>
    /// <returns>False while something is still to be worked out for it.</returns>
    private bool AreCut()
    {
        if (_aside.Length == 0)
        {
            return true;
        }

        for (int i = _bindingsMoved.From(0); i >= 0; i = _bindingsMoved.From(i + 1))
        {
            if (Plan.Bindings[i].Value(_slots) != _applied[i])
            {
                CutWith(Plan.Bindings[i].Network);
            }
        }

        for (int i = _switchesMoved.From(0); i >= 0; i = _switchesMoved.From(i + 1))
        {
            SwitchRule rule = Plan.Switches[i];
            bool wanted = rule.When(_slots);
            if (_uses.SeesState[i] && wanted != IsArmed(i))
            {
                CutWith(rule.Network);
            }
            else if (_uses.FiresByState[i] && wanted && _isAside[rule.Network])
            {
                BringInto(rule.Network);
            }
        }

        if (AnyTask())
        {
            return false;
        }

        foreach (int i in _aside)
        {
            if (_isCut[i])
            {
                _isCut[i] = false;
                TraceAside(i);
            }
        }

        if (_cutting)
        {
            Trace();
            _cutting = false;
        }

        return true;
    }

    /// <summary>Cuts a network: one that stands aside alone, the others together.</summary>
    private void CutWith(int network)
    {
        if (_isAside[network])
        {
            CutAndShow(network);
            return;
        }

        foreach (int i in _seen)
        {
            CutAndShow(i);
        }
    }

    private void CutAndShow(int network)
    {
        Cut(network);
        BringInto(network);
    }

    /// <summary>Brings a network into view, where anything is.</summary>
    private void BringInto(int network)
    {
        if (InView && _bank.Group(network).Task(_lane) == LaneTask.None)
        {
            Bring(network, Now);
        }
    }

    /// <summary>What goes on from here with other inputs shows other flows.</summary>
    private void ForgetViews()
    {
        foreach (int i in Plan.Stepped)
        {
            if (_bank.Group(i).PendingEnd(_lane) == SimTime.Never)
            {
                _viewAt[i] = Nowhere;
            }
        }

        if (_aside.Length > 0)
        {
            ForgetEnds();
        }
    }
}
