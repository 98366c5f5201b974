using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Cards.Programs;

/// <summary>Settles which side is meant where every way through the card stands at places that agree on it.</summary>
internal static class PlaceSettler
{
    public static ImmutableArray<CardOp> Settle(ImmutableArray<CardOp> ops)
    {
        PlaceFlow flow = PlaceFlow.Of(ops);
        return [.. ops.Select((op, i) => Settle(op, flow.PlacesAt(i)))];
    }

    private static CardOp Settle(CardOp op, ImmutableArray<string> places)
    {
        if (places.IsEmpty || places.Contains(PlaceFlow.Unknown))
        {
            return op;
        }

        return op switch
        {
            CardOp.Set set => set with { Item = Settle(set.Item, places) },
            CardOp.Read read => read with { Item = Settle(read.Item, places) },
            CardOp.Protect { Item: { } item } protect => protect with { Item = Settle(item, places) },
            CardOp.Hold hold => hold with { Item = Settle(hold.Item, places), Until = hold.Until is null ? null : Settle(hold.Until, places) },
            CardOp.Check check => check with { Condition = Settle(check.Condition, places) },
            CardOp.WaitUntil wait => wait with { Condition = Settle(wait.Condition, places) },
            CardOp.If branch => branch with { Condition = Settle(branch.Condition, places) },
            CardOp.Repeat repeat => repeat with { Until = Settle(repeat.Until, places) },
            _ => op,
        };
    }

    private static ItemChoice Settle(ItemChoice choice, ImmutableArray<string> places)
    {
        Item? one = OneFor(choice.Candidates, places);
        return choice.IsSettled || one is null ? choice : new([one]);
    }

    private static Condition Settle(Condition condition, ImmutableArray<string> places) => condition switch
    {
        Condition.OneInReach choice => OneFor([.. choice.Cases.Select(c => c.Item)], places) is { } one
            ? choice.Cases.First(c => c.Item == one).Condition
            : condition,
        Condition.Not not => not with { Inner = Settle(not.Inner, places) },
        Condition.All all => all with { Parts = [.. all.Parts.Select(p => Settle(p, places))] },
        Condition.Any any => any with { Parts = [.. any.Parts.Select(p => Settle(p, places))] },
        _ => condition,
    };

    /// <summary>The only item within reach from each of the places, the same from all; null when that is not so.</summary>
    private static Item? OneFor(ImmutableArray<Item> candidates, ImmutableArray<string> places)
    {
        Item? one = null;
        foreach (string place in places)
        {
            Item? here = candidates.FirstOrDefault(i => i.Places.Contains(place));
            if (here is null || (one is not null && here != one))
            {
                return null;
            }

            one = here;
        }

        return one;
    }
}
