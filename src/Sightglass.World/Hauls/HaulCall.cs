using Sightglass.Book.Model;

namespace Sightglass.World.Hauls;

/// <summary>Where a run comes by or stands.</summary>
/// <param name="Place">The place; null for the end of a route that has no name there.</param>
/// <param name="Metres">From the start of the route.</param>
/// <param name="Arrives">s since the start.</param>
/// <param name="Leaves">s since the start; as it arrives where it goes by.</param>
/// <param name="Speed">m/s with which it goes by; 0 where it stands.</param>
public sealed record HaulCall(RoutePlace? Place, double Metres, double Arrives, double Leaves, double Speed);
