using Sightglass.Cards.Programs;
using Sightglass.Plant.Signals;
using Sightglass.World.Snapshots;

namespace Sightglass.World.Runs;

public sealed partial class CardRun
{
    internal CardRunSnapshot Save() => new(
        _program is null ? null : NameOf(_program),
        _next, _halfway, _actor, _roundBegan.Ticks, _judging, _noticing, _heldFrom, Step, BeganAt.Ticks, [.. _written], [.. _counters], Ended, Mechanism, EndedAt.Ticks);

    internal void Restore(World world, CardRunSnapshot saved)
    {
        Clear();
        _world = world;
        _holder = FindPerson(_choices[0].Program.For.Length > 0 ? _choices[0].Program.For[0] : null)!;
        if (saved.Program is not null)
        {
            _choice = _choices.Select((c, i) => (c.Program, i)).First(c => NameOf(c.Program) == saved.Program).i;
            _program = _choices[_choice].Program;
        }

        (_next, _halfway, _actor, _judging, _noticing, _heldFrom) = (saved.Next, saved.Halfway, saved.Actor, saved.Judging, saved.Noticing, saved.HeldFrom);
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
        >= Sentinel.MustNever => _world.Plan.Facts[_program!.MustNever[owner - Sentinel.MustNever].Name],
        Sentinel.Stay => _margins.Broken(_world.Plan, _program!.DoneWhen!),
        _ when _program is null => Margin(_choices[0].Program.UseWhen!),
        _ => Margin(_program.Ops[_next] is CardOp.Hold hold ? hold.Until! : ((CardOp.WaitUntil)_program.Ops[_next]).Condition),
    };
}
