using Sightglass.Basics.Time;
using Sightglass.Cards.Programs;
using Sightglass.Plant.Signals;
using Sightglass.World.Agenda;

namespace Sightglass.World.Runs;

/// <summary>What a card comes to, and what must never come of the numbers it reads.</summary>
public sealed partial class CardRun
{
    /// <summary>The last step is done: is the result there, and does it stay?</summary>
    private void Judge()
    {
        _judging = true;
        if (_program!.DoneWhen is not { } done)
        {
            End(OutcomeKind.Done, "");
            return;
        }

        if (_world.NotGivenBack() is { } kept)
        {
            End(OutcomeKind.Failed, _margins.Say(MechanismWords.NotGivenBack, kept.Name));
            return;
        }

        Signal broken = _margins.Broken(_world.Plan, done, _written);
        if (_world.Watch(Sentinel.Stay, broken) > 0)
        {
            End(OutcomeKind.Failed, Lacking(done) ?? MechanismWords.NoResult);
            return;
        }

        _world.Agenda.Add(new(_world.Now + SimTime.FromSeconds(_program.StaysSoSeconds), AgendaKind.Stay, 0));
    }

    /// <summary>What the numbers that were read lack; null where it is not theirs.</summary>
    private string? Lacking(FactCondition done)
    {
        switch (done)
        {
            case FactCondition.Number number when _world.Value(_margins.Of(_world.Plan, number, _written)) < 0:
                int unread = number.Expression.FirstUnread(_written);
                return unread >= 0 ? _margins.Say(MechanismWords.NeverRead, _program!.Names[unread].Name) : _margins.Say(MechanismWords.NotSo, number.Name);
            case FactCondition.All all:
                foreach (FactCondition part in all.Parts)
                {
                    if (Lacking(part) is { } lack)
                    {
                        return lack;
                    }
                }

                return null;
            default:
                return null;
        }
    }

    /// <summary>What must never come of numbers that are read can only come true when one is read.</summary>
    private void CheckNumbers()
    {
        foreach (FactCondition never in _program!.MustNever)
        {
            if (Ended == OutcomeKind.Running && never is FactCondition.Number && _world.Value(_margins.Of(_world.Plan, never, _written)) >= 0)
            {
                End(OutcomeKind.Failed, never.Name);
            }
        }
    }
}
