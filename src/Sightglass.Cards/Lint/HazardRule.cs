using Sightglass.Book.Model;
using Sightglass.Cards.Programs;

namespace Sightglass.Cards.Lint;

/// <summary>Not one of the twenty: who goes where a protection is needed, or touches what needs one, comes by it before; what is asked for is given back.</summary>
internal sealed class HazardRule() : LintRule(0)
{
    public override void Check(LintContext card)
    {
        foreach ((CardProgram program, CardOp op, int index, _) in card.Ops())
        {
            foreach (Hazard hazard in card.Book.Hazards.Values.Where(h => h.Protection is not null && Meets(op, h)))
            {
                if (!program.Ops.Take(index).Any(o => ComesBy(o, hazard.Protection!)))
                {
                    card.Found.Add(CardMessages.NotProtected(op.Span, hazard.Name, hazard.Protection!));
                }
            }

            if (op is CardOp.Ask { Protection: { } asked } && !program.Ops.Any(o => o is CardOp.GiveBack back && back.Protection.Name == asked.Name))
            {
                card.Found.Add(CardMessages.NeverGivenBack(op.Span, asked.Name));
            }
        }
    }

    private static bool Meets(CardOp op, Hazard hazard) => op switch
    {
        CardOp.Go go => !hazard.OnTouch && hazard.Places.Contains(go.Place.Name),
        CardOp.Set set => set.Item.Candidates.Any(i => hazard.Items.Contains(i.Name)),
        CardOp.Hold hold => hold.Item.Candidates.Any(i => hazard.Items.Contains(i.Name)),
        _ => false,
    };

    private static bool ComesBy(CardOp op, string protection) => op switch
    {
        CardOp.Ask ask => ask.Protection?.Name == protection,
        CardOp.Protect { Sets: true } protect => protect.Protection.Name == protection,
        _ => false,
    };
}
