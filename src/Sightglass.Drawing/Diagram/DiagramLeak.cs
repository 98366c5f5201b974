namespace Sightglass.Drawing.Diagram;

/// <summary>A leak as drawn: two short lines, such as <c>leak, 26 mm</c> and <c>36 L/min</c>.</summary>
public sealed record DiagramLeak(string Text, string Detail = "");
