using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Drawing.Walk;

/// <summary>A place in the order in which the machine is walked round.</summary>
/// <param name="Side">The side it belongs to; for a place inside, the side from which it is drawn.</param>
/// <param name="Along">Metres along that side: x of the class on right and left, y on the ends.</param>
/// <param name="EnteredFrom">For a place inside, the ground place nearest to it, or null where no leg leads there.</param>
/// <param name="SecondsOnward">Walking seconds to the next ground place; null for the last and for places inside.</param>
/// <param name="Items">Items that have this as their own place, from the front to the rear or as they pass.</param>
public sealed record WalkStop(Place Place, Side Side, double Along, string? EnteredFrom, double? SecondsOnward, ImmutableArray<string> Items);
