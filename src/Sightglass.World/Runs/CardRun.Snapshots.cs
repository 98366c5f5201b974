using Sightglass.Cards.Programs;
using Sightglass.Plant.Signals;
using Sightglass.World.Snapshots;

namespace Sightglass.World.Runs;

public sealed partial class CardRun
{
    internal CardRunSnapshot Save() => new(
        _program is null ? null : NameOf(_program),
        [.. _strands.Select(s => new StrandSnapshot(s.Active, s.Next, s.Halfway, s.Actor, s.HeldFrom, s.AnswersAfter, s.Question, s.Reply))],
        _roundBegan.Ticks, _judging, _noticing, Step, BeganAt.Ticks, [.. _written], [.. _counters], Ended, Mechanism, EndedAt.Ticks)
    {
        Errands = [.. _errands.Select(e => new ErrandSnapshot(e.Stage, e.Person, e.Op, e.Asker, e.Question, e.Reply))],
    };

    internal void Restore(World world, CardRunSnapshot saved)
    {
        Clear();
        _world = world;
        Prepare();
        _holder = FindHolder()!;
        if (saved.Program is not null)
        {
            _choice = _choices.Select((c, i) => (c.Program, i)).First(c => NameOf(c.Program) == saved.Program).i;
            _program = _choices[_choice].Program;
        }

        foreach ((int number, StrandSnapshot s) in saved.Strands.Index())
        {
            Strand strand = _strands[number];
            (strand.Active, strand.Next, strand.Halfway, strand.Actor, strand.HeldFrom, strand.AnswersAfter) = (s.Active, s.Next, s.Halfway, s.Actor, s.HeldFrom, s.AnswersAfter);
            (strand.Question, strand.Reply) = (s.Question, s.Reply);
        }

        foreach ((int number, ErrandSnapshot e) in saved.Errands.Index())
        {
            Errand errand = number < _errands.Count ? _errands[number] : NewErrand();
            (errand.Stage, errand.Person, errand.Op, errand.Asker, errand.Question, errand.Reply) = (e.Stage, e.Person, e.Op, e.Asker, e.Question, e.Reply);
        }

        _at = _strands[0];
        (_judging, _noticing) = (saved.Judging, saved.Noticing);
        (_roundBegan, BeganAt, EndedAt) = (new(saved.RoundBegan), new(saved.BeganAt), new(saved.EndedAt));
        (Step, Ended, Mechanism) = (saved.Step, saved.Ended, saved.Mechanism);
        saved.Written.CopyTo(_written);
        saved.Counters.CopyTo(_counters);
    }

    /// <summary>Tells the card's programs apart: what its letter stands for, or its title.</summary>
    private static string NameOf(CardProgram program) =>
        program.Bindings is { Length: > 0 } bound ? string.Join(' ', bound.Select(b => b.Word)) : program.Title;

    /// <summary>The margin that a sentinel of this card watches, made anew after a restore.</summary>
    internal Signal MarginOf(int owner) => owner switch
    {
        >= Sentinel.MustNever => _margins.Of(_world.Plan, _program!.MustNever[owner - Sentinel.MustNever], _written),
        Sentinel.Stay => _margins.Broken(_world.Plan, _program!.DoneWhen!, _written),
        _ when _program is null => Margin(_choices[0].Program.UseWhen!, _strands[0]),
        _ => MarginOf(_strands[owner - Sentinel.Wait]),
    };

    private Signal MarginOf(Strand strand) =>
        Margin(_program!.Ops[strand.Next] is CardOp.Hold hold ? hold.Until! : ((CardOp.WaitUntil)_program.Ops[strand.Next]).Condition, strand);
}
