using Sightglass.Book.Model;
using Sightglass.Cards.Programs;
using Sightglass.World.Agenda;
using Sightglass.World.Journal;
using Sightglass.World.People;

namespace Sightglass.World.Runs;

/// <summary>What people do at the same time, ask of each other, and set to protect each other.</summary>
public sealed partial class CardRun
{
    /// <summary>Several begin at once; the card's own strand rests until all are done.</summary>
    private bool Together(CardOp.Together together)
    {
        _at.Active = false;
        for (int i = 0; i < together.Branches.Length; i++)
        {
            Strand strand = _strands[i + 1];
            CardOp first = _program!.Ops[together.Branches[i]];
            (strand.Next, strand.Active, strand.Halfway) = (together.Branches[i], true, false);
            strand.Actor = (first.Person is { } role ? FindPerson(role) ?? _holder : _holder).Id;
        }

        _strands[0].Next = together.Next;
        for (int i = 0; i < together.Branches.Length && Ended == OutcomeKind.Running; i++)
        {
            if (_strands[i + 1].Active)
            {
                _at = _strands[i + 1];
                Proceed();
            }
        }

        return true;
    }

    /// <summary>One is done. The last goes on with the card.</summary>
    private bool Join()
    {
        _at.Active = false;
        foreach (Strand strand in _strands)
        {
            if (strand.Active)
            {
                return true;
            }
        }

        _at = _strands[0];
        _at.Active = true;
        return false;
    }

    /// <summary>Puts a question. Somebody who is in the midst of something finishes it before answering.</summary>
    private bool Ask(CardOp.Ask ask)
    {
        double busy = 0;
        if (FindPerson(ask.Role) is { } asked && asked.Id != _at.Actor && StrandOf(asked) is { Halfway: true } strand
            && _program!.Ops[strand.Next] is not (CardOp.WaitFor or CardOp.WaitUntil))
        {
            busy = _world.Agenda.TimeOf(AgendaKind.Person, asked.Id) is { } free ? Math.Max(0, (free - _world.Now).Seconds) : 0;
        }

        _at.AnswersAfter = busy + _world.HumanTimes.Tell + _world.DrawAnswer();
        return Busy(Math.Min(_at.AnswersAfter, ask.AtMostSeconds));
    }

    private bool Protect(Person person, CardOp.Protect protect)
    {
        if (protect.Place is { } place && PlaceName(person) != place.Name)
        {
            End(OutcomeKind.Failed, _margins.Say(MechanismWords.OutOfReach, place.Name));
            return true;
        }

        if (protect.Item is { } item && Reach(person, item.At(PlaceName(person)), operate: false) is null)
        {
            return true;
        }

        if (protect.Sets && _world.LackingFor(protect.Protection) is { } kept)
        {
            End(OutcomeKind.Failed, _margins.Say(MechanismWords.Lacks, protect.Protection.Name, kept));
            return true;
        }

        return Busy(protect.Protection.Sort switch
        {
            ProtectionSort.Locks => _world.HumanTimes.Lock,
            ProtectionSort.Chocks => _world.HumanTimes.Chock,
            _ => _world.HumanTimes.SetSignal,
        });
    }

    private void Protected(Person person, CardOp.Protect protect)
    {
        string target = protect.Place?.Name ?? protect.Item!.At(PlaceName(person)).Name;
        Story(JournalKind.Deed);
        _at.Next++;
        if (protect.Sets)
        {
            _world.Protect(person, protect.Protection, target);
        }
        else if (!_world.Unprotect(person, protect.Protection, target))
        {
            End(OutcomeKind.Failed, _margins.Say(MechanismWords.RemovedByAnother, protect.Protection.Name));
        }
    }
}
