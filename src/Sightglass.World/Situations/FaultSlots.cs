using System.Collections.Immutable;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Situations;

/// <summary>A fault of one item with its names settled: what it sets.</summary>
/// <param name="Plan">The item's.</param>
/// <param name="Fault">Its name.</param>
/// <param name="Values">Its values, in the order of the kind's sheet.</param>
internal sealed record FaultSlots(ItemPlan Plan, string Fault, ImmutableArray<FaultValue> Values)
{
    public string Item => Plan.Item.Name;

    /// <summary>Whether an instrument goes on showing what it shows when the fault begins; not where nothing that is stepped makes it show anything.</summary>
    public bool Sticks { get; private init; }

    /// <exception cref="KeyNotFoundException">No such item or fault: the situation should have been bound first.</exception>
    public static FaultSlots Of(Plan plan, string item, string fault) => new(plan.Items[item], fault, plan.Items[item].Faults[fault])
    {
        Sticks = fault == "stuck" && plan.Items[item].Shown is { } shown && plan.Knows(shown),
    };

    /// <summary>The place of a value by its name, or −1.</summary>
    public int IndexOf(string value)
    {
        for (int i = 0; i < Values.Length; i++)
        {
            if (Values[i].Name == value)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>Values by name (SI) put in their places; those that are not named are as usual.</summary>
    public Span<double> Fill(Span<double> values, ImmutableSortedDictionary<string, double> named)
    {
        for (int i = 0; i < Values.Length; i++)
        {
            values[i] = named.TryGetValue(Values[i].Name, out double given) ? given : Values[i].Usual;
        }

        return values;
    }

    /// <summary>The same by names, for a snapshot.</summary>
    public DrawnFault Named(ReadOnlySpan<double> values)
    {
        ImmutableSortedDictionary<string, double>.Builder named = ImmutableSortedDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        for (int i = 0; i < Values.Length; i++)
        {
            named[Values[i].Name] = values[i];
        }

        return new(Item, Fault, named.ToImmutable());
    }
}
