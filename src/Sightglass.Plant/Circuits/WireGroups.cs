using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;

namespace Sightglass.Plant.Circuits;

/// <summary>Which wires, or busbars, are worked out together: those that some item joins, as built, whatever is open at the moment. The frame joins nothing: its potential is given.</summary>
internal sealed class WireGroups
{
    private readonly Dictionary<string, string> _joinedTo = new(StringComparer.Ordinal);

    public WireGroups(ClassBook book)
    {
        foreach (Item item in book.ItemsInOrder)
        {
            foreach (IEnumerable<string> together in KindLibrary.Find(item.Kind.Name)?.JoinsWires(book, item) ?? [])
            {
                Join(together);
            }
        }
    }

    /// <summary>The wire that stands for all that are worked out with a wire.</summary>
    public string Of(string wire)
    {
        string root = wire;
        while (_joinedTo.TryGetValue(root, out string? before))
        {
            root = before;
        }

        // The way is kept short: a wire goes through every jumper of a long train.
        while (_joinedTo.TryGetValue(wire, out string? next) && next != root)
        {
            _joinedTo[wire] = root;
            wire = next;
        }

        return root;
    }

    private void Join(IEnumerable<string> wires)
    {
        string? first = null;
        foreach (string wire in wires)
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
