using System.Collections.Immutable;

namespace Sightglass.Drawing.Diagram;

/// <summary>A crossing as drawn.</summary>
/// <param name="Id">Name of the mistake in the book.</param>
/// <param name="Lines">From hose to hose, or from a hose on to where one that is not drawn would be.</param>
/// <param name="Words">Where it is said, base line and middle.</param>
public sealed record DiagramCross(string Id, ImmutableArray<ImmutableArray<(double X, double Y)>> Lines, ImmutableArray<(double X, double Y)> Words);
