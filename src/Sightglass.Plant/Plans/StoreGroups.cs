using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;

namespace Sightglass.Plant.Plans;

/// <summary>
/// Which stores are worked out together in one network: those of one system of a vehicle, and across systems and vehicles those that one item names: both ends of a path, what a valve follows or
/// senses, what holds a spring back. Two fluids never share a network, whatever names them.
/// </summary>
internal sealed class StoreGroups
{
    private readonly Dictionary<StoreGroup, StoreGroup> _joinedTo = [];

    public StoreGroups(ClassBook book)
    {
        foreach (Item item in book.Items.Values)
        {
            Join(book, item);
        }
    }

    /// <summary>The group of a store; the same for all that are worked out with it.</summary>
    public StoreGroup Of(Item store, Fluid fluid) => Root(new(store.Vehicle.Name, store.System ?? "", fluid));

    private StoreGroup Root(StoreGroup group)
    {
        while (_joinedTo.TryGetValue(group, out StoreGroup before))
        {
            group = before;
        }

        return group;
    }

    private void Join(ClassBook book, Item item)
    {
        Dictionary<Fluid, StoreGroup> first = [];
        IEnumerable<string?> named = [item.Name, item.From?.Item, item.To?.Item, .. item.Parameters.Values.SelectMany(p => p.Names), .. KindLibrary.Find(item.Kind.Name)?.AlsoJoins(book, item) ?? []];
        foreach (string? name in named)
        {
            if (name is null || !book.Items.TryGetValue(name, out Item? store) || KindLibrary.Find(store.Kind.Name)?.Holds is not { } fluid)
            {
                continue;
            }

            StoreGroup group = Of(store, fluid);
            if (!first.TryAdd(fluid, group) && group != Root(first[fluid]))
            {
                _joinedTo[group] = Root(first[fluid]);
            }
        }
    }
}
