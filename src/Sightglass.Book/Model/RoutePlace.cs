using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A place of a route that has a name.</summary>
/// <param name="Name">As people say it.</param>
/// <param name="Span">Where it is written.</param>
/// <param name="At">Milepost, m: where the head of the train stands.</param>
/// <param name="Stops">s for which a train stands there; null where it goes by.</param>
public sealed record RoutePlace(string Name, Span Span, double At, double? Stops);
