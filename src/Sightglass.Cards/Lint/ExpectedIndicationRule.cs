using Sightglass.Cards.Programs;

namespace Sightglass.Cards.Lint;

/// <summary>After a control is operated the card looks at something, on some way on. Told at the first of a row of operations.</summary>
internal sealed class ExpectedIndicationRule() : LintRule(13)
{
    public override void Check(LintContext card)
    {
        CardProgram? before = null;
        bool told = false;
        foreach ((CardProgram program, CardOp op, int index, _) in card.Ops())
        {
            bool blind = !LooksAfter(program, index);
            told &= blind && program == before;
            before = program;
            if (blind && !told && op is CardOp.Set set)
            {
                card.Found.Add(LintMessages.NoIndication(op.Span, set.Item.Candidates[0].Name));
                told = true;
            }
        }
    }

    private static bool LooksAfter(CardProgram program, int index)
    {
        HashSet<int> seen = [index];
        Queue<int> open = new(PlaceFlow.After(program.Ops[index], index));
        while (open.TryDequeue(out int at))
        {
            if (!seen.Add(at))
            {
                continue;
            }

            if (ConditionWalk.Of(program.Ops[at]) is not null || program.Ops[at] is CardOp.Read)
            {
                return true;
            }

            foreach (int next in PlaceFlow.After(program.Ops[at], at))
            {
                open.Enqueue(next);
            }
        }

        return false;
    }
}
