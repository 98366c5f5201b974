using Sightglass.Book.Model;
using Sightglass.Cards.Programs;

namespace Sightglass.Cards.Lint;

/// <summary>Looks into conditions.</summary>
internal static class ConditionWalk
{
    /// <summary>The condition of an operation, or null.</summary>
    public static Condition? Of(CardOp op) => op switch
    {
        CardOp.Check check => check.Condition,
        CardOp.WaitUntil wait => wait.Condition,
        CardOp.If branch => branch.Condition,
        CardOp.Repeat repeat => repeat.Until,
        CardOp.Hold hold => hold.Until,
        CardOp.Look look => new Condition.SignHolds(look.Sign) { Span = look.Span },
        _ => null,
    };

    /// <summary>The conditions that it is made of.</summary>
    public static IEnumerable<Condition> Leaves(Condition condition) => condition switch
    {
        Condition.Not not => Leaves(not.Inner),
        Condition.All all => all.Parts.SelectMany(Leaves),
        Condition.Any any => any.Parts.SelectMany(Leaves),
        Condition.OneInReach one => one.Cases.SelectMany(c => Leaves(c.Condition)),
        _ => [condition],
    };

    /// <summary>What must be seen from one place: for each, the items or signs of which one is enough.</summary>
    public static IEnumerable<(string Name, IReadOnlyList<IReadOnlyList<string>> Places)> Seen(Condition condition) => condition switch
    {
        Condition.Not not => Seen(not.Inner),
        Condition.All all => all.Parts.SelectMany(Seen),
        Condition.Any any => any.Parts.SelectMany(Seen),
        Condition.OneInReach one => [(one.Cases[0].Item.Name, one.Cases.Select(c => PlacesOf(c.Item)).ToList())],
        Condition.Shows shows => [(shows.Item.Name, [PlacesOf(shows.Item)])],
        Condition.ShowsWord shows => [(shows.Item.Name, [PlacesOf(shows.Item)])],
        Condition.Lit lit => [(lit.Item.Name, [PlacesOf(lit.Item)])],
        Condition.PositionIs position => [(position.Item.Name, [PlacesOf(position.Item)])],
        Condition.SignHolds { Sign.Places.IsEmpty: false } sign => [(sign.Sign.Name, [sign.Sign.Places])],
        _ => [],
    };

    private static IReadOnlyList<string> PlacesOf(Item item) => item.Places;
}
