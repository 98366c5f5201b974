using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>Outline of one side in metres: closed or open polylines with the weight they are drawn in.</summary>
public sealed record Silhouette(Side Side, Span Span, ImmutableArray<Shape> Shapes);
