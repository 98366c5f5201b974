namespace Sightglass.Drawing.Diagram;

/// <summary>A line inside a chain.</summary>
/// <param name="Gap">It lies before link number Gap; equal to the number of links behind the last.</param>
internal readonly record struct DiagramInnerLine(string Id, int Gap);
