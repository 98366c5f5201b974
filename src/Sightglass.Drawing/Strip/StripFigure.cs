using System.Collections.Immutable;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Strip;

/// <summary>One vehicle as seen from a side.</summary>
/// <param name="Map">From its own metres to pixels.</param>
/// <param name="Shapes">Its silhouette, or a plain box where its class has none.</param>
public sealed record StripFigure(SideMap Map, ImmutableArray<StripShape> Shapes);
