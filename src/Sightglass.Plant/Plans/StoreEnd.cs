using Sightglass.Book.Model;
using Sightglass.Network.Compile;

namespace Sightglass.Plant.Plans;

/// <summary>A built store as a path's end sees it.</summary>
/// <param name="Network">Which network it is in.</param>
/// <param name="Store">Its amounts.</param>
/// <param name="Item">The item it is, or null for the outside.</param>
/// <param name="Port">The port the path ends at, or null for the store itself.</param>
/// <param name="Elevation">Height of its reference point above rail, m (a tank: the middle of its floor).</param>
/// <param name="Holds">What kind of store it is.</param>
public sealed record StoreEnd(int Network, StoreHandle Store, Item? Item, Port? Port, double Elevation, StoreSort Holds);

/// <summary>Sorts of store that a path's end must tell apart.</summary>
public enum StoreSort
{
    /// <summary>Liquid with a free surface, vented.</summary>
    OpenTank,

    /// <summary>A short line filled with liquid and perhaps air.</summary>
    Line,

    /// <summary>A gas that fills it.</summary>
    Gas,

    /// <summary>Something warm: it holds heat and nothing else.</summary>
    Heat,

    /// <summary>The outside: what leaves is booked, and only air comes in.</summary>
    Outside,
}
