using Sightglass.Cards.Programs;

namespace Sightglass.Cards.Lint;

/// <summary>After a control is operated the card looks at something, on some way on.</summary>
internal sealed class ExpectedIndicationRule() : LintRule(13)
{
    public override void Check(LintContext card)
    {
        foreach ((CardProgram program, CardOp op, int index, _) in card.Ops())
        {
            if (op is CardOp.Set set && !LooksAfter(program, index))
            {
                card.Found.Add(LintMessages.NoIndication(op.Span, set.Item.Candidates[0].Name));
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
