using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.World.Runs;

namespace Sightglass.World.Hazards;

/// <summary>
/// The hazards of a plan by the places and items where one meets them, in the author's order. What is only to be heeded is not met where it depends on what is not stepped.
/// </summary>
internal sealed class HazardTable
{
    private static readonly ConditionalWeakTable<Plan, HazardTable> s_ofPlans = [];

    private readonly ImmutableArray<HazardEntry>[] _atPlace;
    private readonly FrozenDictionary<string, ImmutableArray<HazardEntry>> _onItem;
    private readonly bool[] _injures;

    private HazardTable(Plan plan)
    {
        ClassBook book = plan.Book;
        All = [.. book.HazardsInOrder.Select((h, i) => Entry(plan, h, i))];
        ImmutableArray<HazardEntry> met = [.. All.Where(h => h.IsCritical || h.Margin is null || plan.Knows(h.Margin))];
        _atPlace = [.. plan.Ways.Places.Select(p => met.Where(h => !h.Hazard.OnTouch && h.Hazard.Places.Contains(p.Name)).ToImmutableArray())];
        _injures = [.. _atPlace.Select(at => at.Any(h => h.IsCritical))];
        _onItem = met.SelectMany(h => h.Hazard.Items.Distinct().Select(i => (Item: i, Entry: h))).GroupBy(p => p.Item).ToFrozenDictionary(g => g.Key, g => g.Select(p => p.Entry).ToImmutableArray());
    }

    /// <summary>That of a plan, made once: worlds are made by the thousand.</summary>
    public static HazardTable Of(Plan plan) => s_ofPlans.GetValue(plan, p => new(p));

    /// <summary>By their numbers.</summary>
    public ImmutableArray<HazardEntry> All { get; }

    /// <summary>Where somebody stands; none on the way.</summary>
    public ImmutableArray<HazardEntry> At(int place) => place < 0 ? [] : _atPlace[place];

    /// <summary>Whether something injures whoever is at a place, or may.</summary>
    public bool Injures(int place) => _injures[place];

    public ImmutableArray<HazardEntry> On(Item item) => _onItem.GetValueOrDefault(item.Name, []);

    private static HazardEntry Entry(Plan plan, Hazard hazard, int number)
    {
        Protection? protection = hazard.Protection is { } name ? plan.Book.Protections[name] : null;
        return new(number, hazard, plan.Hazards.GetValueOrDefault(hazard.Name), protection, protection is null ? hazard.Name : MechanismWords.WithoutProtection.Replace("{0}", hazard.Name, StringComparison.Ordinal));
    }
}
