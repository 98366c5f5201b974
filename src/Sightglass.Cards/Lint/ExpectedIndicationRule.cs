using Sightglass.Cards.Programs;

namespace Sightglass.Cards.Lint;

/// <summary>After a control is operated the card looks at something, on some way on. Told at the first of a row of operations.</summary>
internal sealed class ExpectedIndicationRule() : LintRule(13)
{
    public override void Check(LintContext card)
    {
        CardProgram? before = null;
        bool[] looks = [];
        bool told = false;
        foreach ((CardProgram program, CardOp op, int index, _) in card.Ops())
        {
            looks = program == before ? looks : LooksAfter(program);
            told &= !looks[index] && program == before;
            before = program;
            if (!looks[index] && !told && op is CardOp.Set set)
            {
                card.Found.Add(LintMessages.NoIndication(op.Span, set.Item.Candidates[0].Name));
                told = true;
            }
        }
    }

    /// <summary>Of each operation, whether something is looked at on some way on.</summary>
    private static bool[] LooksAfter(CardProgram program)
    {
        bool[] looks = new bool[program.Ops.Length];
        bool changed = true;
        while (changed)
        {
            changed = false;
            for (int i = program.Ops.Length - 1; i >= 0; i--)
            {
                bool after = PlaceFlow.After(program.Ops[i], i).Any(next => looks[next] || ConditionWalk.Of(program.Ops[next]) is not null || program.Ops[next] is CardOp.Read);
                changed |= after && !looks[i];
                looks[i] |= after;
            }
        }

        return looks;
    }
}
