namespace Sightglass.Drawing.Diagram;

/// <summary>A path in a chain.</summary>
/// <param name="Reversed">Whether the path's own direction is against the chain's.</param>
internal readonly record struct DiagramLink(DiagramNode Path, bool Reversed);
