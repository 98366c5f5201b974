using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Story;
using Sightglass.Plant.Signals;
using Sightglass.World.Agenda;
using Sightglass.World.Journal;
using Sightglass.World.People;

namespace Sightglass.World.Runs;

public sealed partial class CardRun
{
    /// <summary>Goes on until something takes time or the card ends.</summary>
    private void Proceed()
    {
        for (int guard = 0; Ended == OutcomeKind.Running && !_judging; guard++)
        {
            if (guard > 10_000)
            {
                End(OutcomeKind.Undecided, MechanismWords.GoesRound);
                return;
            }

            CardOp op = _program!.Ops[_at.Next];
            Step = op.Step;
            _at.Actor = (op.Person is { } role ? FindPerson(role) ?? _holder : _holder).Id;
            TurnToErrands();
            if (ErrandOf(_world.People[_at.Actor]) is not null || Begin(op))
            {
                return;
            }
        }
    }

    /// <summary>Begins an operation.</summary>
    /// <returns>True when it takes time: the agenda or a sentinel goes on with it.</returns>
    private bool Begin(CardOp op)
    {
        Person person = _world.People[_at.Actor];
        switch (op)
        {
            case CardOp.Go go:
                return Walk(person, go.Place);
            case CardOp.Set set:
                return Reach(person, set.Item.At(PlaceName(person)), operate: true) is not { } item || Busy(item.OperateSeconds);
            case CardOp.Check or CardOp.Look or CardOp.Read or CardOp.If or CardOp.Call:
                return Busy(_world.HumanTimes.Look);
            case CardOp.Repeat repeat:
                return Busy(_world.HumanTimes.Look, repeat);
            case CardOp.WaitFor wait:
                return Busy(wait.Seconds);
            case CardOp.WaitUntil wait:
                return WaitUntil(wait.Condition, wait.AtMostSeconds);
            case CardOp.Hold hold:
                return Hold(person, hold);
            case CardOp.Tell:
                return Busy(_world.HumanTimes.Tell);
            case CardOp.Ask ask:
                return Ask(ask);
            case CardOp.Request request:
                return Request(request);
            case CardOp.GiveBack:
                return Busy(_world.HumanTimes.Tell);
            case CardOp.Protect protect:
                return Protect(person, protect);
            case CardOp.Together together:
                return Together(together);
            case CardOp.Join:
                return Join();
            case CardOp.Jump jump:
                _at.Next = jump.Target;
                return false;
            case CardOp.Stop stop:
                _world.Overseer?.Told(person, "", stop.Text.Form);
                End(OutcomeKind.Stopped, stop.Text.Form, stop.Text);
                return true;
            case CardOp.Done:
                Judge();
                return true;
            default:
                throw new InvalidOperationException($"An operation of an unknown sort: {op.GetType().Name}.");
        }
    }

    /// <summary>What an operation does when its time is over.</summary>
    private void Complete(CardOp op)
    {
        Person person = _world.People[_at.Actor];
        switch (op)
        {
            case CardOp.Go go when person.Missed >= 0 && person.Missed == _world.Plan.Ways.IndexOf(go.Place.Name):
                End(OutcomeKind.Failed, _margins.Say(MechanismWords.NoWay, go.Place.Name));
                break;
            case CardOp.Go:
                Story(JournalKind.Deed);
                _at.Next++;
                break;
            case CardOp.Set set:
                Story(JournalKind.Deed);
                Move(person, set.Item.At(PlaceName(person)), set.Position);
                _at.Next++;
                break;
            case CardOp.Call:
                Story(JournalKind.Deed);
                _at.Next++;
                break;
            case CardOp.Check check:
                Branch(check.Condition, check.Else);
                break;
            case CardOp.If branch:
                Branch(branch.Condition, branch.Else);
                break;
            case CardOp.Look look:
                if (look.Place is { } from && from.Name != PlaceName(person))
                {
                    End(OutcomeKind.Failed, _margins.Say(MechanismWords.OutOfReach, from.Name));
                    break;
                }

                bool seen = _world.Value(_world.Plan.Signs[look.Sign.Name]) >= 0
                    && (look.Sign.Places.IsDefaultOrEmpty || look.Sign.Places.AsSpan().Contains(PlaceName(person) ?? ""));
                Story(JournalKind.Finding, seen);
                _at.Next = seen ? _at.Next + 1 : look.Else;
                break;
            case CardOp.Read read:
                ReadOff(person, read);
                break;
            case CardOp.Repeat repeat:
                Round(repeat);
                break;
            case CardOp.WaitUntil wait:
                Story(JournalKind.Finding);
                _at.Next++;
                break;
            case CardOp.Hold hold:
                Move(person, hold.Item.At(PlaceName(person)), _at.HeldFrom);
                _at.Next++;
                break;
            case CardOp.Tell tell:
                Story(JournalKind.Said);
                _at.Next++;
                foreach (Role told in tell.Roles)
                {
                    _world.Overseer?.Told(person, told.Name, tell.Text.Form);
                }

                break;
            case CardOp.Ask ask:
                Answer(person, ask);
                break;
            case CardOp.Request request:
                Replied(request);
                break;
            case CardOp.GiveBack back:
                Story(JournalKind.Said);
                _at.Next++;
                _world.GiveBack(person, back.Protection);
                break;
            case CardOp.Protect protect:
                Protected(person, protect);
                break;
            default:
                _at.Next++;
                break;
        }
    }

    /// <summary>What happens when the time allowed is over.</summary>
    private void GiveUp(CardOp op)
    {
        Story(JournalKind.Finding, held: false);
        if (op is CardOp.Hold hold)
        {
            Person person = _world.People[_at.Actor];
            Move(person, hold.Item.At(PlaceName(person)), _at.HeldFrom);
            _at.Next = hold.Else;
        }
        else if (op is CardOp.WaitUntil wait)
        {
            _at.Next = wait.Else;
        }
    }

    private CardStory? _story;

    private CardStory Teller => _story ??= new(_program!, CardLanguages.Of(Tongue.Spoken));

    /// <summary>Tells the operation under way in the words of the card's own table, where a journal is kept.</summary>
    private void Story(JournalKind kind, bool held = true, string? shown = null, Reply reply = Reply.None)
    {
        if (_world.Journal is not null)
        {
            CardOp op = _program!.Ops[_at.Next];
            Told(kind, Teller.Tell(_at.Next, held, PlaceName(_world.People[_at.Actor]), _written, shown, reply), op);
        }
    }

    private void Told(JournalKind kind, string text, CardOp op)
    {
        if (text.Length > 0)
        {
            _world.Note(kind, $"{text}", op.PrintedStep, op.Called?.Depth ?? 0);
        }
    }

    private string? PlaceName(Person person) => person.Place < 0 ? null : _world.Plan.Ways.Places[person.Place].Name;

    private bool Busy(double seconds)
    {
        _at.Halfway = true;
        _world.Agenda.Add(new(_world.Now + SimTime.FromSeconds(seconds), AgendaKind.Person, _at.Actor));
        return true;
    }

    /// <summary>A round of a loop begins with its first look and lasts at least as long as the card says.</summary>
    private bool Busy(double seconds, CardOp.Repeat repeat)
    {
        double since = (_world.Now - _roundBegan).Seconds;
        return Busy(_counters[repeat.Counter] == 0 ? seconds : Math.Max(seconds, repeat.EverySeconds - since));
    }

    private bool Walk(Person person, Place place)
    {
        int to = _world.Plan.Ways.IndexOf(place.Name);
        if (double.IsInfinity(_world.KnownWays(person).Seconds(person.Place, to)))
        {
            End(OutcomeKind.Failed, _margins.Say(MechanismWords.NoWay, place.Name));
            return true;
        }

        _at.Halfway = true;
        _world.StartWalk(person, to);
        return true;
    }

    /// <summary>The item, when it can be operated from here by this person; otherwise the card has failed.</summary>
    private Item? Reach(Person person, Item item, bool operate)
    {
        if (!item.Places.AsSpan().Contains(PlaceName(person) ?? ""))
        {
            End(OutcomeKind.Failed, _margins.Say(MechanismWords.OutOfReach, item.Name));
            return null;
        }

        if (operate && item.Authority is { } authority && !authority.Who.AsSpan().Contains(person.Role.Name))
        {
            End(OutcomeKind.Failed, _margins.Say(MechanismWords.MayNotOperate, person.Role.Name, item.Name));
            return null;
        }

        if (operate && item.Authority is { Permission: { } owner } && owner != person.Role.Name && !person.Permissions.Contains(item.Name))
        {
            End(OutcomeKind.Failed, _margins.Say(MechanismWords.NotPermitted, item.Name, owner));
            return null;
        }

        if (operate && _world.IsLocked(item))
        {
            End(OutcomeKind.Failed, _margins.Say(MechanismWords.Locked, item.Name));
            return null;
        }

        if (operate)
        {
            _world.Touch(person, item);
        }

        return Ended == OutcomeKind.Running ? item : null;
    }

    private void Move(Person person, Item item, string position)
    {
        bool moved = _world.Turn(item, position);
        if (!moved && _world.Journal is not null)
        {
            PositionWord to = new(item.Name, position);
            _world.Note(JournalKind.Finding, _world.HeldBy(item, position) is { } held ? (FormattableString)$"{item.Name} does not move to {to}: it moves only while {held}." : $"{item.Name} does not move to {to}.", Step);
        }
    }

    private bool Hold(Person person, CardOp.Hold hold)
    {
        if (Reach(person, hold.Item.At(PlaceName(person)), operate: true) is not { } item)
        {
            return true;
        }

        _at.HeldFrom = item.Positions[(int)_world.GetSlot(_world.Plan.Items[item.Name].Position!.Value)];
        Move(person, item, hold.Position);
        return hold.Until is null ? Busy(hold.Seconds) : WaitUntil(hold.Until, hold.Seconds);
    }

    private bool WaitUntil(Condition condition, double atMost)
    {
        Signal margin = Margin(condition);
        _at.Halfway = true;
        if (_world.Watch(_at.Wait, margin) >= 0)
        {
            _world.StopWatching(_at.Wait);
            return Busy(_world.HumanTimes.Look);
        }

        _world.Agenda.Add(new(_world.Now + SimTime.FromSeconds(atMost), AgendaKind.Deadline, _at.Wait));
        return true;
    }

    private void Branch(Condition condition, int otherwise)
    {
        bool holds = Holds(condition);
        Story(JournalKind.Finding, holds);
        _at.Next = holds ? _at.Next + 1 : otherwise;
    }

    private void ReadOff(Person person, CardOp.Read read)
    {
        if (Reach(person, read.Item.At(PlaceName(person)), operate: false) is { } item && _world.Read(item) is { } value)
        {
            _written[read.Name] = value;
            Story(JournalKind.Finding, shown: _world.Journal is null ? null : QuantityFormat.Text(value, item.Reading!.Unit, item.Reading.Resolution));
            _at.Next++;
            CheckNumbers();
        }
    }

    private void Round(CardOp.Repeat repeat)
    {
        ref int counter = ref _counters[repeat.Counter];
        if (Holds(repeat.Until))
        {
            counter = 0;
            _at.Next++;
        }
        else if (++counter >= repeat.Times)
        {
            counter = 0;
            _at.Next = repeat.Else;
        }
        else
        {
            _roundBegan = _world.Now;
            _at.Next = repeat.Back;
        }
    }

    private void Answer(Person person, CardOp.Ask ask)
    {
        bool granted = _at.AnswersAfter <= ask.AtMostSeconds;
        Story(JournalKind.Said, granted);
        if (granted && ask.Protection is { } protection)
        {
            _world.Grant(person, protection);
        }

        if (granted && ask.Control is { } control)
        {
            person.Permissions.Add(control.At(PlaceName(person)).Name);
        }

        _at.Next = granted ? _at.Next + 1 : ask.Else;
    }
}
