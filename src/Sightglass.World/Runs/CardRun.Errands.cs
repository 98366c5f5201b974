using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;
using Sightglass.Plant.Plans;
using Sightglass.World.Agenda;
using Sightglass.World.Journal;
using Sightglass.World.People;

namespace Sightglass.World.Runs;

/// <summary>
/// What people do because they were asked to: they hear it as late as the situation says, finish what they are at, react, walk, operate and
/// say how it went. Nobody does it who may not, or whom it would injure.
/// </summary>
public sealed partial class CardRun
{
    private readonly List<Errand> _errands = [];

    /// <summary>Puts the question. The answer ends the wait, or the time allowed does.</summary>
    private bool Request(CardOp.Request request)
    {
        double heard = _world.HumanTimes.Tell + _world.DrawAnswer();
        (_at.Question, _at.Reply) = (_at.Question + 1, Reply.None);
        if (FindPerson(request.Role) is { } asked && asked.Id != _at.Actor && double.IsFinite(heard))
        {
            Errand errand = FreeErrand();
            (errand.Stage, errand.Person, errand.Op, errand.Asker, errand.Question) = (ErrandStage.Asked, asked.Id, _at.Next, _at.Number, _at.Question);
            _world.Agenda.Add(new(_world.Now + SimTime.FromSeconds(heard), AgendaKind.Errand, errand.Number));
        }

        return Busy(request.AtMostSeconds);
    }

    /// <summary>Somebody has heard what they are asked, and turns to it with free hands.</summary>
    internal void Heard(int number)
    {
        if (Ended != OutcomeKind.Running)
        {
            return;
        }

        _errands[number].Stage = ErrandStage.Heard;
        TurnToErrands();
    }

    /// <summary>Whoever has heard what they are asked and has their hands free turns to it.</summary>
    private void TurnToErrands()
    {
        foreach (Errand errand in _errands)
        {
            if (errand.Stage == ErrandStage.Heard && _world.People[errand.Person] is var person && ErrandOf(person) is null && StrandOf(person) is not { Halfway: true })
            {
                errand.Stage = ErrandStage.Begun;
                Occupy(person, person.Role.ReactionSeconds);
            }
        }
    }

    /// <summary>What a person was asked to do and is at now, or null.</summary>
    private Errand? ErrandOf(Person person)
    {
        foreach (Errand errand in _errands)
        {
            if (errand.IsUnderWay && errand.Person == person.Id)
            {
                return errand;
            }
        }

        return null;
    }

    /// <summary>The next of an errand's parts. Only with a state in view.</summary>
    private void GoOn(Errand errand, Person person)
    {
        if (person.WalkingTo >= 0)
        {
            return; // sent elsewhere from outside: goes on from there
        }

        CardOp.Set what = ((CardOp.Request)_program!.Ops[errand.Op]).What;
        switch (errand.Stage)
        {
            case ErrandStage.Begun:
                Approach(errand, person, what);
                break;
            case ErrandStage.Operating when !IsWithinReach(what.Item, PlaceName(person)!):
                errand.Stage = ErrandStage.Begun;
                Approach(errand, person, what);
                break;
            case ErrandStage.Operating:
                bool moved = _world.Turn(what.Item.At(PlaceName(person)), what.Position);
                StoryOfAsked(errand, person, null);
                Answer(errand, person, moved ? Reply.Done : Reply.Stuck);
                break;
            case ErrandStage.Answering:
                Deliver(errand, person);
                break;
        }
    }

    /// <summary>Operates the control where it is within reach, walks to it where it is not, or says no.</summary>
    private void Approach(Errand errand, Person person, CardOp.Set what)
    {
        string here = PlaceName(person)!;
        if (IsWithinReach(what.Item, here))
        {
            Item item = what.Item.At(here);
            Reply no = Refusal(person, item);
            if (no != Reply.None)
            {
                Answer(errand, person, no);
                return;
            }

            errand.Stage = ErrandStage.Operating;
            Occupy(person, item.OperateSeconds);
            return;
        }

        (int place, Item nearest) = NearestPlace(person, what.Item);
        Reply refused = place < 0 ? Reply.NoWay : MayNot(person, nearest) is var may and not Reply.None ? may : _world.IsDangerous(person, place) ? Reply.Unsafe : Reply.None;
        if (refused != Reply.None)
        {
            Answer(errand, person, refused);
            return;
        }

        StoryOfAsked(errand, person, _world.Plan.Ways.Places[place]);
        _world.StartWalk(person, place);
    }

    private static bool IsWithinReach(ItemChoice choice, string place)
    {
        foreach (Item item in choice.Candidates)
        {
            if (item.Places.AsSpan().Contains(place))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The place from which a control can be operated that is nearest for a person; −1 where there is no way for them.</summary>
    private (int Place, Item Item) NearestPlace(Person person, ItemChoice choice)
    {
        WayTable ways = _world.KnownWays(person);
        (int nearest, Item item, double least) = (-1, choice.Candidates[0], double.PositiveInfinity);
        foreach (Item candidate in choice.Candidates)
        {
            foreach (string name in candidate.Places)
            {
                int place = _world.Plan.Ways.IndexOf(name);
                double seconds = ways.Seconds(person.Place, place);
                if (seconds < least && (!person.Role.IsBound || person.Role.Reaches.AsSpan().Contains(name)))
                {
                    (nearest, item, least) = (place, candidate, seconds);
                }
            }
        }

        return (nearest, item);
    }

    private Reply Refusal(Person person, Item item) => MayNot(person, item) is var may and not Reply.None
        ? may
        : _world.IsLocked(item) ? Reply.Locked : _world.WouldInjure(person, item) ? Reply.Unsafe : Reply.None;

    private static Reply MayNot(Person person, Item item) => World.BreachOf(person, item) switch
    {
        Breach.MayNot => Reply.MayNot,
        Breach.NotPermitted => Reply.NotPermitted,
        _ => Reply.None,
    };

    private void Answer(Errand errand, Person person, Reply reply)
    {
        (errand.Reply, errand.Stage) = (reply, ErrandStage.Answering);
        Occupy(person, _world.HumanTimes.Tell);
    }

    /// <summary>The answer has been said: whoever still waits for it goes on, and the person goes on with their own.</summary>
    private void Deliver(Errand errand, Person person)
    {
        Strand asker = _strands[errand.Asker];
        bool awaited = asker is { Active: true, Halfway: true } && asker.Next == errand.Op && asker.Question == errand.Question;
        asker.Reply = awaited ? errand.Reply : asker.Reply;
        errand.Clear();
        if (awaited)
        {
            _world.Agenda.Remove(AgendaKind.Person, asker.Actor);
            _at = asker;
            _at.Halfway = false;
            Complete(_program!.Ops[_at.Next]);
            Proceed();
        }

        if (Ended != OutcomeKind.Running)
        {
            return;
        }

        TurnToErrands();
        if (ErrandOf(person) is null && StrandOf(person) is { Halfway: false } own && !_judging)
        {
            _at = own;
            Proceed();
        }
    }

    /// <summary>Whoever asked goes on: with a yes here, without one elsewhere.</summary>
    private void Replied(CardOp.Request request)
    {
        bool done = _at.Reply == Reply.Done;
        Story(JournalKind.Said, done, reply: _at.Reply);
        _at.Next = done ? _at.Next + 1 : request.Else;
    }

    private void Occupy(Person person, double seconds) => _world.Agenda.Add(new(_world.Now + SimTime.FromSeconds(seconds), AgendaKind.Person, person.Id));

    private Errand FreeErrand()
    {
        foreach (Errand errand in _errands)
        {
            if (errand.Stage == ErrandStage.None)
            {
                return errand;
            }
        }

        return NewErrand();
    }

    private Errand NewErrand()
    {
        _errands.Add(new(_errands.Count));
        return _errands[^1];
    }

    /// <summary>Tells what somebody does who was asked, where a journal is kept.</summary>
    private void StoryOfAsked(Errand errand, Person person, Place? walk)
    {
        if (_world.Journal is not null)
        {
            CardOp op = _program!.Ops[errand.Op];
            string text = walk is null ? Teller.TellAsked(errand.Op, PlaceName(person)) : Teller.TellAskedWalk(errand.Op, walk);
            Told(JournalKind.Deed, text, op);
        }
    }
}
