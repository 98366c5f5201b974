using Sightglass.Book.Model;
using Sightglass.Cards.Programs;

namespace Sightglass.Training.Routes;

/// <summary>The equipment that a card has to do with: what is operated, read, looked at or locked by its steps.</summary>
public static class CardItems
{
    /// <summary>In the order in which the steps name it, each once.</summary>
    public static IEnumerable<Item> Of(CardProgram program)
    {
        ArgumentNullException.ThrowIfNull(program);
        return program.Ops.SelectMany(Of).DistinctBy(i => i.Name);
    }

    private static IEnumerable<Item> Of(CardOp op) => op switch
    {
        CardOp.Set set => [.. set.Item.Candidates, .. set.Other is { } other ? [other] : Array.Empty<Item>()],
        CardOp.Hold hold => [.. hold.Item.Candidates, .. hold.Until is { } until ? Of(until) : []],
        CardOp.Check check => Of(check.Condition),
        CardOp.If branch => Of(branch.Condition),
        CardOp.WaitUntil wait => Of(wait.Condition),
        CardOp.Repeat repeat => Of(repeat.Until),
        CardOp.Read read => read.Item.Candidates,
        CardOp.Ask { Control: { } control } => control.Candidates,
        CardOp.Request request => request.What.Item.Candidates,
        CardOp.Protect { Item: { } item } => item.Candidates,
        _ => [],
    };

    private static IEnumerable<Item> Of(Condition condition) => condition switch
    {
        Condition.Shows shows => [shows.Item],
        Condition.ShowsWord shows => [shows.Item],
        Condition.PositionIs position => [position.Item],
        Condition.Lit lit => [lit.Item],
        Condition.OneInReach one => one.Cases.Select(c => c.Item),
        Condition.Not not => Of(not.Inner),
        Condition.All all => all.Parts.SelectMany(Of),
        Condition.Any any => any.Parts.SelectMany(Of),
        _ => [],
    };
}
