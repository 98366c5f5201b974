using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Strip;

/// <summary>One side on the sheet.</summary>
/// <param name="Map">From metres to pixels.</param>
/// <param name="Left">Left end of the side, pixels.</param>
/// <param name="Right">Right end of the side, pixels.</param>
/// <param name="Shapes">Its silhouette, or a plain box where the book has none.</param>
public sealed record StripSide(SideMap Map, double Left, double Right, ImmutableArray<StripShape> Shapes)
{
    public Side Side => Map.Side;
}
