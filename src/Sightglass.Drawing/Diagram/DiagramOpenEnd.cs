namespace Sightglass.Drawing.Diagram;

/// <summary>Where a pipe ends in the open.</summary>
/// <param name="Down">Whether the arrow points down, or up.</param>
public sealed record DiagramOpenEnd(double X, double Y, bool Down);
