using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Strip;

/// <summary>A shape of a silhouette, read.</summary>
/// <param name="Style">outline, part, detail, tint, glass, solid or lettering.</param>
/// <param name="Text">For lettering.</param>
public sealed record StripShape(string Style, PathData Path, string? Text);
