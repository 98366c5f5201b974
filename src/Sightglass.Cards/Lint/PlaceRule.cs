using Sightglass.Book.Model;
using Sightglass.Cards.Programs;

namespace Sightglass.Cards.Lint;

/// <summary>Each step names its place, or a step before it did; walking back and forth is told with its metres.</summary>
internal sealed class PlaceRule() : LintRule(11)
{
    public override void Check(LintContext card)
    {
        foreach ((_, CardOp op, _, var places) in card.Ops(called: true).Where(o => o.Places.Contains(PlaceFlow.Unknown)))
        {
            if (WithinReachRule.NeedsOf(op).Select(n => n.Name).FirstOrDefault() is { } name)
            {
                card.Found.Add(LintMessages.NoPlace(op.Span, name));
            }
        }

        foreach (CardProgram program in card.Programs)
        {
            foreach (IGrouping<string?, CardOp> own in program.Ops.TakeWhile(o => o is not CardOp.Done).Where(o => o.Called is null).GroupBy(o => o.Person?.Name))
            {
                CheckWalk(card, [.. own]);
            }
        }
    }

    /// <summary>There and back at once is told; who has waited at the far end comes back to see what that did.</summary>
    private static void CheckWalk(LintContext card, List<CardOp> own)
    {
        int[] walks = [.. Enumerable.Range(0, own.Count).Where(i => own[i] is CardOp.Go)];
        for (int i = 2; i < walks.Length; i++)
        {
            (Place a, Place b, Place c) = (To(walks[i - 2]), To(walks[i - 1]), To(walks[i]));
            if (a.Name == c.Name && b.Name != a.Name && !own.GetRange(walks[i - 1], walks[i] - walks[i - 1]).Any(o => o is CardOp.WaitFor or CardOp.WaitUntil))
            {
                card.Found.Add(LintMessages.BackAndForth(own[walks[i]].Span, c.Name, Distance(a, b) + Distance(b, c)));
            }
        }

        Place To(int op) => ((CardOp.Go)own[op]).Place;
    }

    /// <summary>Straight, metres: nobody walks less.</summary>
    private static double Distance(Place a, Place b) =>
        Math.Sqrt(Square(a.Position.X - b.Position.X) + Square(a.Position.Y - b.Position.Y) + Square(a.Position.Z - b.Position.Z));

    private static double Square(double x) => x * x;
}
