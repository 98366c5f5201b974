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
            foreach (IGrouping<string?, CardOp.Go> walk in program.Ops.TakeWhile(o => o is not CardOp.Done).Where(o => o.Called is null).OfType<CardOp.Go>().GroupBy(g => g.Person?.Name))
            {
                CheckWalk(card, [.. walk]);
            }
        }
    }

    private static void CheckWalk(LintContext card, List<CardOp.Go> walk)
    {
        for (int i = 2; i < walk.Count; i++)
        {
            (Place a, Place b, Place c) = (walk[i - 2].Place, walk[i - 1].Place, walk[i].Place);
            if (a.Name == c.Name && b.Name != a.Name)
            {
                card.Found.Add(LintMessages.BackAndForth(walk[i].Span, c.Name, Distance(a, b) + Distance(b, c)));
            }
        }
    }

    /// <summary>Straight, metres: nobody walks less.</summary>
    private static double Distance(Place a, Place b) =>
        Math.Sqrt(Square(a.Position.X - b.Position.X) + Square(a.Position.Y - b.Position.Y) + Square(a.Position.Z - b.Position.Z));

    private static double Square(double x) => x * x;
}
