using System.Runtime.CompilerServices;
using Sightglass.Book.Model;

namespace Sightglass.Training.Drills;

/// <summary>What is within reach at each place of a book, found once for each.</summary>
public static class PlaceItems
{
    private static readonly ConditionalWeakTable<ClassBook, ILookup<string, Item>> s_known = [];

    /// <summary>Items that can be operated or read from a place, in the book's order.</summary>
    public static IEnumerable<Item> At(ClassBook book, string place)
    {
        ArgumentNullException.ThrowIfNull(book);
        return s_known.GetValue(book, b => b.ItemsInOrder.SelectMany(i => i.Places.Select(p => (Place: p, Item: i))).ToLookup(x => x.Place, x => x.Item, StringComparer.Ordinal))[place];
    }
}
