using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Programs;

namespace Sightglass.Cards.Lint;

/// <summary>A card sees and touches only what is within reach of where the person stands.</summary>
internal sealed class WithinReachRule() : LintRule(20)
{
    public override void Check(LintContext card)
    {
        foreach ((_, CardOp op, _, var places) in card.Ops(called: true))
        {
            foreach ((string name, IReadOnlyList<IReadOnlyList<string>> from) in NeedsOf(op))
            {
                string? here = places.FirstOrDefault(p => p != PlaceFlow.Unknown && !from.Any(f => f.Contains(p)));
                if (here is not null)
                {
                    string where = string.Join(", ", from.SelectMany(f => f).Distinct(StringComparer.Ordinal).Select(p => $"`{p}`"));
                    card.Found.Add(Message(op, name, here, where));
                }
            }
        }
    }

    /// <summary>What an operation needs within reach, with the places of each candidate.</summary>
    public static IEnumerable<(string Name, IReadOnlyList<IReadOnlyList<string>> Places)> NeedsOf(CardOp op)
    {
        ItemChoice? item = op switch
        {
            CardOp.Set set => set.Item,
            CardOp.Hold hold => hold.Item,
            CardOp.Read read => read.Item,
            CardOp.Protect protect => protect.Item,
            _ => null,
        };
        if (item is not null)
        {
            yield return (item.Candidates[0].Name, item.Candidates.Select(c => (IReadOnlyList<string>)c.Places).ToList());
        }

        if (op is CardOp.Protect { Place: { } where } signals)
        {
            yield return (signals.Protection.Name, [[where.Name]]);
        }

        if (op is CardOp.Look { Place: { } at } look)
        {
            yield return (look.Sign.Name, [[at.Name]]);
            yield break;
        }

        foreach ((string, IReadOnlyList<IReadOnlyList<string>>) seen in ConditionWalk.Of(op) is { } condition ? ConditionWalk.Seen(condition) : [])
        {
            yield return seen;
        }
    }

    private static Diagnostic Message(CardOp op, string name, string here, string where) => op is CardOp.Set or CardOp.Protect or CardOp.Hold
        ? LintMessages.OutOfReach(op.Span, name, here, where)
        : LintMessages.OutOfSight(op.Span, name, here, where);
}
