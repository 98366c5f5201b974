using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Plant.Plans;

/// <summary>What is kept in an item to be used.</summary>
/// <param name="Item">A locker, a box.</param>
/// <param name="Keeps">In the words of the cards that need it.</param>
/// <param name="Faults">Slots of its faults while which nothing of it can be had.</param>
public sealed record Kit(Item Item, ImmutableArray<string> Keeps, ImmutableArray<Slot> Faults)
{
    /// <summary>Whether it cannot be had as the slots are.</summary>
    public bool IsMissing(ReadOnlySpan<double> slots)
    {
        foreach (Slot fault in Faults)
        {
            if (slots[fault.Index] != 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether something is kept in it, by the words of a card.</summary>
    public bool Has(string need)
    {
        foreach (string kept in Keeps)
        {
            if (string.Equals(kept, need, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }
}
