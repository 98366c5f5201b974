using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Training.Drills;

/// <summary>What there is to be seen, heard and smelled at a place of a plan: found once, looked at ten times a second.</summary>
/// <param name="Items">What can be operated or read from there, in the book's order; without a plan what is only described.</param>
/// <param name="Signs">What can be noticed there, in the book's order, each with its margin.</param>
public sealed record PlaceView(ImmutableArray<(Item Item, ItemPlan? Plan, Signal? Reading)> Items, ImmutableArray<(Sign Sign, Signal Margin)> Signs)
{
    private static readonly ConditionalWeakTable<Plan, ConcurrentDictionary<string, PlaceView>> s_known = [];

    /// <summary>That of a place.</summary>
    public static PlaceView Of(Plan plan, string place)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return s_known.GetOrCreateValue(plan).GetOrAdd(place, static (p, of) => Made(of, p), plan);
    }

    private static PlaceView Made(Plan plan, string place) => new(
        [.. plan.Book.ItemsInOrder.Where(i => i.Places.Contains(place)).Select(i => (i, plan.Items.GetValueOrDefault(i.Name), plan.Items.ContainsKey(i.Name) ? plan.ReadingOf(i) : null))],
        [.. plan.Book.Signs.Values.Where(s => s.Places.IsDefaultOrEmpty || s.Places.Contains(place)).OrderBy(s => s.Span).Select(s => (s, plan.Signs[s.Name]))]);
}
