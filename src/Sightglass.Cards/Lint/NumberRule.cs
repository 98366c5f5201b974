using System.Collections.Immutable;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>Numbers have a unit, the one of the instrument, and a limit; no words instead of numbers.</summary>
internal sealed class NumberRule() : LintRule(10)
{
    public override void Check(LintContext card)
    {
        ImmutableArray<string> vague = [.. card.Words.Vague.Where(v => !card.Names.IsPosition(v) && !card.Names.IsScaleWord(v))];
        foreach (Sentence sentence in card.StepSentences)
        {
            if (LintContext.FirstIn(card.TextOf(sentence), vague) is { } word)
            {
                card.Found.Add(LintMessages.Vague(sentence.Span, word));
            }
        }

        foreach (Condition.Shows shows in card.Programs.SelectMany(Conditions).SelectMany(ConditionWalk.Leaves).OfType<Condition.Shows>())
        {
            if (shows.Comparison == Comparison.Exactly)
            {
                card.Found.Add(LintMessages.NoTolerance(shows.Span));
            }

            if (shows.Unit != shows.Item.Reading!.Unit)
            {
                card.Found.Add(LintMessages.NotTheUnit(shows.Span, shows.Item.Name, shows.Item.Reading.Unit.Symbol));
            }
        }
    }

    private static IEnumerable<Condition> Conditions(CardProgram program) =>
        program.Ops.Select(ConditionWalk.Of).Append(program.UseWhen).OfType<Condition>();
}
