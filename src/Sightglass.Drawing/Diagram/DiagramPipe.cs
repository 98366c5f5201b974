using System.Collections.Immutable;

namespace Sightglass.Drawing.Diagram;

/// <summary>A stretch of pipe.</summary>
/// <param name="Id">Stable name of the stretch, without a prefix.</param>
/// <param name="Points">Corners, in the direction in which the sum of the terms is positive.</param>
/// <param name="Terms">Whose flows it carries: the sum of flow times sign.</param>
public sealed record DiagramPipe(string Id, ImmutableArray<(double X, double Y)> Points, ImmutableArray<(string Node, int Sign)> Terms)
{
    /// <summary>What it carries where that is not what the drawing is of; else empty.</summary>
    public string Medium { get; init; } = "";
}
