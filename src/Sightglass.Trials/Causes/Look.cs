using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Trials.Causes;

/// <summary>One thing to look at, which may tell one cause from another.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">Of the item, or of the sign.</param>
/// <param name="Item">Null for a sign.</param>
/// <param name="Places">Numbers of the places from which it is seen, in the plan's way table.</param>
public sealed record Look(LookKind Kind, string Name, Item? Item, ImmutableArray<int> Places)
{
    private Signal? Signal { get; init; }

    private Slot? Slot { get; init; }

    /// <summary>All that can be looked at on a machine, in the order of the book; signs after items.</summary>
    public static ImmutableArray<Look> AllOf(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. plan.Book.ItemsInOrder.Select(i => plan.Items.GetValueOrDefault(i.Name)).OfType<ItemPlan>().Select(i => OfItem(plan, i)).OfType<Look>(), .. plan.Book.Signs.Values.OrderBy(s => s.Span).Select(s => OfSign(plan, s)).OfType<Look>()];
    }

    /// <summary>How far an instrument may be from what it was seen to show and still show the same: a step of its scale, or a fiftieth of it. SI; 0 for all else.</summary>
    internal double Slack => Kind == LookKind.Reading ? Math.Max(Item!.Reading!.Resolution, (Item.Reading.Maximum - Item.Reading.Minimum) / 50) : 0;

    /// <summary>What it shows now: SI as read, the position's number, or 1 and 0. Only with a state in view, of a world of the plan that it was made for.</summary>
    public double See(World.World world) => Kind switch
    {
        LookKind.Reading => world.Read(Item!) ?? double.NaN,
        LookKind.Position => world.GetSlot(Slot!.Value),
        _ => world.Value(Signal!) >= 0 ? 1 : 0,
    };

    private static Look? OfItem(Plan plan, ItemPlan item)
    {
        ImmutableArray<int> places = Numbers(plan, item.Item.Places);
        return places.IsEmpty ? null
            : item.Lit is { } lit && plan.Knows(lit) ? new(LookKind.Lamp, item.Item.Name, item.Item, places) { Signal = lit }
            : item.Item.Reading is not null && plan.ReadingOf(item.Item) is { } shown && plan.Knows(shown) ? new(LookKind.Reading, item.Item.Name, item.Item, places)
            : item.Position is { } slot ? new(LookKind.Position, item.Item.Name, item.Item, places) { Slot = slot }
            : null;
    }

    private static Look? OfSign(Plan plan, Sign sign) => Numbers(plan, sign.Places) is { IsEmpty: false } places && plan.Signs.TryGetValue(sign.Name, out Signal? signal) && plan.Knows(signal)
        ? new(LookKind.Sign, sign.Name, null, places) { Signal = signal }
        : null;

    private static ImmutableArray<int> Numbers(Plan plan, ImmutableArray<string> places) => [.. places.Select(plan.Ways.IndexOf).Where(i => i >= 0)];
}
