using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Plant.Plans;

/// <summary>What people go by on some ways. While it is shut nobody gets through.</summary>
/// <param name="Item">A passage, a door.</param>
/// <param name="Faults">Slots of its faults that bar it.</param>
/// <param name="Position">Where it stands, of a door; null for what has no positions.</param>
/// <param name="Open">The position, by its index, in which it can be gone by whatever is wrong with it; −1 where there is none.</param>
public sealed record Gate(Item Item, ImmutableArray<Slot> Faults, Slot? Position, int Open)
{
    /// <summary>Whether nobody gets through as the slots are.</summary>
    public bool IsShut(ReadOnlySpan<double> slots)
    {
        if (Position is { } position && Open >= 0 && (int)slots[position.Index] == Open)
        {
            return false;
        }

        foreach (Slot fault in Faults)
        {
            if (slots[fault.Index] != 0)
            {
                return true;
            }
        }

        return false;
    }
}
