using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;

namespace Sightglass.Plant.Circuits;

/// <summary>Which wires are one circuit: those that some item joins, as built, whatever is open at the moment. The frame joins nothing: its potential is given.</summary>
internal sealed class CircuitGroups
{
    private readonly Dictionary<string, string> _joinedTo = new(StringComparer.Ordinal);

    public CircuitGroups(ClassBook book)
    {
        foreach (Item item in book.ItemsInOrder.Where(i => i.Kind.Conducts))
        {
            string? first = null;
            foreach (string wire in WiresOf(book, item))
            {
                string root = Of(wire);
                first ??= root;
                if (root != first)
                {
                    _joinedTo[root] = first;
                }
            }
        }
    }

    /// <summary>The wire that stands for all that are one circuit with a wire.</summary>
    public string Of(string wire)
    {
        while (_joinedTo.TryGetValue(wire, out string? before))
        {
            wire = before;
        }

        return wire;
    }

    private static IEnumerable<string> WiresOf(ClassBook book, Item item)
    {
        IEnumerable<Item> coils = (KindLibrary.Find(item.Kind.Name)?.ActsWith(book, item) ?? []).Append(item);
        return coils.SelectMany(c => new[] { c.From, c.To }).Where(e => e is { IsItem: true }).Select(e => e!.Item);
    }
}
