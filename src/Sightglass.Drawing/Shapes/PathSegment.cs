namespace Sightglass.Drawing.Shapes;

/// <summary>One absolute command of a path: M, L, C, Q, A or Z with its numbers.</summary>
public sealed record PathSegment(char Command, IReadOnlyList<double> Numbers);
