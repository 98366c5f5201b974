using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.World;

/// <content>What is kept on the machine to be used, and may be missing.</content>
public sealed partial class World
{
    /// <summary>Whether what is kept in an item cannot be had as things stand.</summary>
    public bool IsMissing(Kit kit)
    {
        ArgumentNullException.ThrowIfNull(kit);
        return kit.IsMissing(_slots);
    }

    /// <summary>Where something that a card needs should be and cannot be had; null where it can be had somewhere, or is not kept on the machine.</summary>
    internal Item? Lacking(string need)
    {
        Item? lacks = null;
        foreach (Kit kit in Plan.Access.Kits)
        {
            if (!kit.Has(need))
            {
                continue;
            }

            if (!kit.IsMissing(_slots))
            {
                return null;
            }

            lacks ??= kit.Item;
        }

        return lacks;
    }

    /// <summary>The first item without which a protection cannot be set and from which nothing can be had; null where nothing is missing.</summary>
    internal string? LackingFor(Protection protection)
    {
        foreach (string need in protection.Needs)
        {
            if (Plan.Access.KitIn(need) is { } kit && kit.IsMissing(_slots))
            {
                return need;
            }
        }

        return null;
    }
}
