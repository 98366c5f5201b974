using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Strip;

/// <summary>One side on the sheet.</summary>
/// <param name="Map">From metres to pixels.</param>
/// <param name="Left">Left end of the side, pixels.</param>
/// <param name="Right">Right end of the side, pixels.</param>
/// <param name="Figures">What is seen from there: on a long side every vehicle, at an end the last one.</param>
public sealed record StripSide(SideMap Map, double Left, double Right, ImmutableArray<StripFigure> Figures)
{
    public Side Side => Map.Side;
}
