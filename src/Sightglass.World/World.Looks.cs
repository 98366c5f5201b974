using Sightglass.Basics.Time;
using Sightglass.World.Agenda;

namespace Sightglass.World;

/// <content>What is brought into view, and what happens while nobody looks.</content>
public sealed partial class World
{
    /// <summary>In view is nothing that is known.</summary>
    private static readonly SimTime Nowhere = new(-1);

    /// <summary>In view will be the end of the step that has been asked for.</summary>
    private static readonly SimTime AtProposedEnd = new(-2);

    /// <summary>Brings the state at a moment into view, of whatever may be asked for; where it is already, nothing is asked of the network.</summary>
    private void Look(SimTime at)
    {
        foreach (int i in _seen)
        {
            Bring(i, at);
        }
    }

    private void LookAtAll()
    {
        foreach (int i in Plan.Stepped)
        {
            Bring(i, Now);
        }
    }

    private void Bring(int network, SimTime at)
    {
        if (_viewAt[network] != at)
        {
            _bank.Group(network).Peek(_lane, at);
            _viewAt[network] = at;
        }
    }

    /// <summary>
    /// What happens at the clock's moment while nobody looks at the machine (somebody has arrived, has spoken, has turned a handle): nothing need
    /// be brought into view for it.
    /// </summary>
    /// <returns>False when somebody looks, or a margin may have jumped without a change of the networks.</returns>
    private bool HappenUnseen()
    {
        if (Overseer is not null || (_tells && _aside.Length == 0))
        {
            return false; // a slot that moves may move what one network tells another, and that is looked at
        }

        while (Agenda.Next <= Now)
        {
            if (NeedsLook(Agenda.First))
            {
                return false;
            }

            _blind = true;
            Handle(Agenda.TakeFirst());
            _blind = false;
        }

        if (!_slotsMoved)
        {
            _phase = AllPending() ? Phase.Ready : Phase.Propose;
            return true;
        }

        Resolve();
        _unseen = !StateMayJump() && SlotsChangeAnything(inView: false);
        if (_unseen)
        {
            CutAll();
        }

        return _unseen;
    }

    private bool NeedsLook(AgendaEntry entry) => entry.Kind switch
    {
        AgendaKind.Person => Run is null || Run.Looks(_people[entry.Id]) || ComesToWatch(_people[entry.Id], _people[entry.Id].WalkingTo),
        AgendaKind.Pass => ComesToWatch(_people[entry.Id], _people[entry.Id].Ahead),
        _ => true,
    };

    /// <summary>Whether the moment of a cut is in view: one that nobody looked at is brought into it. False while it must still be.</summary>
    private bool ComesIntoView()
    {
        if (!_unseen)
        {
            return true;
        }

        Look(Now);
        if (AnyTask())
        {
            return false;
        }

        _unseen = false;
        InView = true;
        return true;
    }

    /// <summary>
    /// Margins as they are once the networks have what follows from the slots: a flow jumps when something is turned, and what it jumps to may have died away before the
    /// first step after is over. Before that, a handle would stand in its new position beside flows that are still the old ones.
    /// </summary>
    private void MeetChange()
    {
        if (InView)
        {
            _bank.LookAtEnds();
            MeetAtStart();
            TellTrue();
            RememberMargins();
        }
    }

    /// <summary>Whoever is there from the beginning meets what is where they stand.</summary>
    private void MeetAtStart()
    {
        if (!_hasBegun)
        {
            _hasBegun = true;
            MeetHazards();
            Overseer?.Begin();
        }
    }
}
