using System.Collections.Immutable;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Trials.Causes;

/// <summary>All that may be wrong with what a fact depends on.</summary>
internal static class CauseList
{
    /// <summary>How often a control was left where it should not be, for one part that broke (common practice, no source: handling before hardware).</summary>
    private const double LeftWrong = 4;

    /// <summary>Every fault, as it is where nothing is said of it, and every other position of a control, of the items that bear on a signal. In the order of the book.</summary>
    /// <param name="plan">Of the machine or the train.</param>
    /// <param name="wanted">What is to come to hold.</param>
    /// <param name="standsAt">Where a control stands while nothing is wrong.</param>
    public static ImmutableArray<Cause> Of(Plan plan, Signal wanted, Func<ItemPlan, int> standsAt)
    {
        IReadOnlySet<int> slots = plan.SlotsBehind(wanted);
        ImmutableArray<Cause>.Builder causes = ImmutableArray.CreateBuilder<Cause>();
        foreach (ItemPlan item in plan.Book.ItemsInOrder.Select(i => plan.Items.GetValueOrDefault(i.Name)).OfType<ItemPlan>())
        {
            if (item.Position is { } position && slots.Contains(position.Index) && item.Item.Places.Length > 0)
            {
                int usual = standsAt(item);
                string[] others = [.. item.Item.Positions.Where((_, i) => i != usual)];
                causes.AddRange(others.Select(p => new Cause(item.Item, null, p, LeftWrong / others.Length)));
            }

            causes.AddRange(item.Faults.Where(f => f.Value.Any(v => slots.Contains(v.Slot.Index)) && f.Value[0].Usual != 0).Select(f => new Cause(item.Item, f.Key, null, 1)));
        }

        return causes.ToImmutable();
    }
}
