using Sightglass.Cards.Programs;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>Every step is reached by some way, and from every step some way leads to an end.</summary>
internal sealed class ReachableRule() : LintRule(19)
{
    public override void Check(LintContext card)
    {
        for (int p = 0; p < card.Programs.Length; p++)
        {
            CheckReached(card, card.Programs[p], card.Flows[p]);
            CheckEnds(card, card.Programs[p], card.Flows[p]);
        }
    }

    private static void CheckReached(LintContext card, CardProgram program, PlaceFlow flow)
    {
        foreach (CardElement.Step step in card.Card.Steps)
        {
            int[] ops = [.. Enumerable.Range(0, program.Ops.Length).Where(i => program.Ops[i].Step == step.Number && program.Ops[i] is not CardOp.Done)];
            if (ops.Length > 0 && !ops.Any(flow.IsReached))
            {
                card.Found.Add(LintMessages.NotReached(step.Span, step.Number));
            }
        }
    }

    private static void CheckEnds(LintContext card, CardProgram program, PlaceFlow flow)
    {
        bool[] ends = new bool[program.Ops.Length];
        bool changed = true;
        while (changed)
        {
            changed = false;
            for (int i = program.Ops.Length - 1; i >= 0; i--)
            {
                bool end = program.Ops[i] is CardOp.Done or CardOp.Stop || PlaceFlow.After(program.Ops[i], i).Any(n => ends[n]);
                changed |= end && !ends[i];
                ends[i] |= end;
            }
        }

        for (int i = 0; i < ends.Length; i++)
        {
            if (!ends[i] && flow.IsReached(i))
            {
                card.Found.Add(LintMessages.DeadEnd(program.Ops[i].Called?.At ?? program.Ops[i].Span));
                return;
            }
        }
    }
}
