using System.Collections.Frozen;
using System.Collections.Immutable;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds.Access;

namespace Sightglass.Plant.Plans;

/// <summary>What people go by, and what they need that is kept on the machine.</summary>
public sealed class Access
{
    private readonly FrozenDictionary<string, Gate> _gates;
    private readonly FrozenDictionary<string, Kit> _kits;

    private Access(IEnumerable<Gate> gates, IEnumerable<Kit> kits)
    {
        _gates = gates.ToFrozenDictionary(g => g.Item.Name, StringComparer.Ordinal);
        Kits = [.. kits];
        _kits = Kits.ToFrozenDictionary(k => k.Item.Name, StringComparer.Ordinal);
    }

    /// <summary>What is kept, in the order of the book.</summary>
    public ImmutableArray<Kit> Kits { get; }

    /// <summary>Items that ways go by, by name.</summary>
    public ImmutableArray<string> Gates => _gates.Keys;

    /// <summary>What a way goes by, by the name of the item; null for what no way goes by.</summary>
    public Gate? GateAt(string item) => _gates.GetValueOrDefault(item);

    /// <summary>What is kept in an item, by its name; null where nothing is.</summary>
    public Kit? KitIn(string item) => _kits.GetValueOrDefault(item);

    /// <summary>Once every item is built.</summary>
    internal static Access Of(PlanBuilder plan)
    {
        Dictionary<string, Gate> gates = new(StringComparer.Ordinal);
        foreach (Leg leg in plan.Book.Legs)
        {
            foreach (Item item in leg.Through.Select(plan.Book.Items.GetValueOrDefault).OfType<Item>())
            {
                ImmutableArray<Slot> bars = Slots(plan, item, f => f.Bars);
                if (bars.IsEmpty)
                {
                    plan.Found.Error("P059", leg.Span, $"nothing of `{item.Name}` can bar the way through it", "name a passage, a door, a handle or a switch");
                    continue;
                }

                gates[item.Name] = new(item, bars, plan.PlanOf(item).Position, item.Positions.IndexOf("open"));
            }
        }

        Kit[] kits = [.. plan.Items.Select(i => new Kit(i, KitKind.KeptIn(i), Slots(plan, i, f => f.Lacks))).Where(k => !k.Faults.IsEmpty)];
        foreach (Protection protection in plan.Book.Protections.Values)
        {
            foreach (string need in protection.Needs.Where(n => plan.Book.Items.ContainsKey(n) && kits.All(k => k.Item.Name != n)))
            {
                plan.Found.Error("P060", protection.Span, $"nothing is kept in `{need}` that `{protection.Name}` could need", "name an item of the kind `kit`");
            }
        }

        return new(gates.Values, kits);
    }

    private static ImmutableArray<Slot> Slots(PlanBuilder plan, Item item, Func<KindFault, bool> which) =>
        [.. item.Kind.Faults.Where(which).Select(f => plan.PlanOf(item).Faults.GetValueOrDefault(f.Name)).Where(v => !v.IsDefaultOrEmpty).Select(v => v[0].Slot)];
}
