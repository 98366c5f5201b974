using System.Runtime.InteropServices;
using Sightglass.Basics.Time;
using Sightglass.Network.Groups;
using Sightglass.Network.Step;
using Sightglass.World.Agenda;
using Sightglass.World.Runs;

namespace Sightglass.World;

public sealed partial class World
{
    /// <summary>
    /// Goes as far as it can without its networks. Afterwards either they have tasks (iterate their groups until all are done, then call
    /// again), or the world rests at its limit or its end.
    /// </summary>
    /// <returns>False when it rests.</returns>
    public bool Advance()
    {
        while (Trouble is null)
        {
            switch (_phase)
            {
                case Phase.Propose when Propose():
                    return true;
                case Phase.LookAhead when LookAhead():
                    return true;
                case Phase.Judge:
                    Judge();
                    break;
                case Phase.Locate when Locate():
                    return true;
                case Phase.Ready when !GoToNext():
                    return false;
                case Phase.Event:
                    _bank.LookAtEnds();
                    InView = true;
                    Happen();
                    break;
                case Phase.Settle:
                    _bank.LookAtEnds();
                    Settle();
                    break;
                case Phase.Change when ComesIntoView() && ApplySlots():
                    MeetChange();
                    _phase = Phase.Propose;
                    if (!InView && (!Plan.Switches.IsEmpty || _people.Count > 0 || Overseer is not null))
                    {
                        LookAtAll();
                        _phase = Phase.FirstLook;
                    }

                    break;
                case Phase.FirstLook:
                    _bank.LookAtEnds();
                    InView = true;
                    SettleFirst();
                    _phase = Phase.Change;
                    break;
            }

            if (AnyTask())
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Iterates this world's groups alone until it rests at the limit given.</summary>
    public void RunTo(SimTime limit)
    {
        Limit = limit;
        while (Advance())
        {
            foreach (int i in Plan.Stepped)
            {
                LaneGroup group = _bank.Group(i);
                while (group.Task(_lane) != LaneTask.None)
                {
                    group.Iterate();
                }
            }
        }
    }

    private bool AnyTask()
    {
        foreach (int i in Plan.Stepped)
        {
            if (_bank.Group(i).Task(_lane) != LaneTask.None)
            {
                return true;
            }
        }

        return false;
    }

    private bool Propose()
    {
        bool seen = _aside.Length == 0;
        foreach (int i in Plan.Stepped)
        {
            if (_bank.Group(i).PendingEnd(_lane) == SimTime.Never)
            {
                _bank.Group(i).Propose(_lane);
                _viewAt[i] = AtProposedEnd;
                seen |= !_isAside[i];
            }
        }

        if (seen)
        {
            ForgetEnds();
            _judges = true;
        }

        _phase = Phase.LookAhead;
        return AnyTask();
    }

    /// <summary>Has the nearest end of a pending step of what is seen looked at, where sentinels need it.</summary>
    private bool LookAhead()
    {
        _horizon = _end = SimTime.Never;
        foreach (int i in Plan.Stepped)
        {
            if (_bank.Group(i).HasFailed(_lane))
            {
                Trouble = MechanismWords.WouldNotGoOn;
                return false;
            }

            SimTime end = _bank.Group(i).PendingEnd(_lane);
            _viewAt[i] = _viewAt[i] == AtProposedEnd ? end : _viewAt[i];
            _end = SimTime.Min(_end, end);
            _horizon = _isAside[i] ? _horizon : SimTime.Min(_horizon, end);
        }

        if (_restored is { } kept)
        {
            (_fireAt, _judgedFrom, _restored) = (new(kept.FireAt), new(kept.JudgedFrom), null);
            _phase = Phase.Ready;
            return false;
        }

        if (!_judges)
        {
            _judges = true;
            _phase = Phase.Ready;
            return false;
        }

        _fireAt = SimTime.Never;
        _judgedFrom = Now;
        if (_sentinels.Count == 0 || _seen.Length == 0)
        {
            _phase = Phase.Ready;
            return false;
        }

        if (!EndsAreKnown())
        {
            Look(_horizon);
        }

        _phase = Phase.Judge;
        return AnyTask();
    }

    private void Judge()
    {
        double atEnd = GreatestAtEnd();
        if (atEnd < 0)
        {
            _phase = Phase.Ready;
            return;
        }

        double now = double.NegativeInfinity;
        foreach (Sentinel s in _sentinels)
        {
            now = s.Last < 0 ? Math.Max(now, s.Last) : now;
        }

        _bracketBase = _judgedFrom;
        _bracket = Bracket.Open(0, Math.Max(now, -1e300), (_horizon - _judgedFrom).Ticks, atEnd);
        _phase = Phase.Locate;
        TryNext();
    }

    private bool Locate()
    {
        if (!_bracket.IsClosed)
        {
            _bank.LookAtEnds();
            _bracket.Take(_tried, Greatest());
            TryNext();
        }

        if (_bracket.IsClosed)
        {
            _fireAt = new(_bracketBase.Ticks + _bracket.High);
            _phase = Phase.Ready;
            return false;
        }

        return AnyTask();
    }

    private void TryNext()
    {
        if (!_bracket.IsClosed)
        {
            _tried = _bracket.Next();
            Look(new(_bracketBase.Ticks + _tried));
        }
    }

    /// <summary>To the next event, step's end or the limit. False when the world rests.</summary>
    private bool GoToNext()
    {
        SimTime next = SimTime.Min(Agenda.Next, SimTime.Min(_fireAt, _end));
        if (next > Limit || next == SimTime.Never)
        {
            Now = Limit;
            return false;
        }

        Now = next;
        if (next == _end)
        {
            CommitEnds();
            if (next != _fireAt && next != Agenda.Next && !_pendingFirings)
            {
                _judges = next == _horizon;
                _phase = Phase.Propose;
                return true;
            }
        }

        if (_pendingFirings || next == _fireAt || !HappenUnseen())
        {
            Look(Now);
            LookAtLanded();
            _phase = Phase.Event;
        }

        return true;
    }

    private void CommitEnds()
    {
        bool seen = false;
        foreach (int i in Plan.Stepped)
        {
            LaneGroup group = _bank.Group(i);
            if (group.PendingEnd(_lane) == Now)
            {
                _pendingFirings |= group.HasFired(_lane);
                group.Commit(_lane);
                _viewAt[i] = _viewAt[i] == Now ? Now : Nowhere;
                seen |= !_isAside[i];
                TraceAside(i);
            }
        }

        if (seen)
        {
            Trace();
        }
    }

    /// <summary>Everything that happens at the clock's moment; then on with a cut where an input changed, without where none did.</summary>
    private void Happen()
    {
        bool onlyLooking = !_pendingFirings && Now != _fireAt && AllPending() && !(_aside.Length > 0 && _slotsMoved);
        FireSwitches();
        FireSentinels();
        while (Agenda.Next <= Now)
        {
            AgendaEntry entry = Agenda.TakeFirst();
            onlyLooking &= entry.Kind == AgendaKind.Sample;
            Handle(entry);
        }

        if (onlyLooking)
        {
            _phase = Phase.Ready;
            return;
        }

        Resolve();
        if (BringMoved())
        {
            _phase = Phase.Settle;
            return;
        }

        Settle();
    }

    /// <summary>What comes of it.</summary>
    private void Settle()
    {
        if (_slotsMoved && SlotsChangeAnything(inView: true))
        {
            CutAll();
            return;
        }

        TellTrue();
        RememberMargins();
        if (_slotsMoved)
        {
            ForgetEnds();
            _slotsMoved = false;
        }

        _phase = AllPending() ? Phase.LookAhead : Phase.Propose;
    }

    private bool AllPending()
    {
        foreach (int i in Plan.Stepped)
        {
            if (_bank.Group(i).PendingEnd(_lane) == SimTime.Never)
            {
                return false;
            }
        }

        return true;
    }

    private void Handle(AgendaEntry entry)
    {
        switch (entry.Kind)
        {
            case AgendaKind.Fault:
                (Situations.FaultSlots fault, int first) = _faults[entry.Id];
                PutIn(fault, CollectionsMarshal.AsSpan(_faultValues).Slice(first, fault.Values.Length));
                break;
            case AgendaKind.Action:
                Act(_actions[entry.Id]);
                break;
            case AgendaKind.Person:
                Finish(entry.Id);
                break;
            case AgendaKind.Deadline:
            case AgendaKind.Stay:
                Run?.TimeIsUp(entry.Kind, entry.Id);
                break;
            case AgendaKind.Errand:
                Run?.Heard(entry.Id);
                break;
            case AgendaKind.Pass:
                Pass(_people[entry.Id]);
                break;
            case AgendaKind.Overseer:
                Overseer?.TimeHasCome(entry.Id);
                break;
            case AgendaKind.Sample:
                OnSample?.Invoke(this);
                break;
        }
    }
}
