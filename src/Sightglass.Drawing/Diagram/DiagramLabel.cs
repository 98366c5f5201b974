using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Diagram;

/// <summary>Words in a diagram.</summary>
/// <param name="Style">Class: <c>d-lab</c>, <c>row-words</c>, <c>line-words</c>, <c>body-words</c>, <c>small-words</c>.</param>
/// <param name="Y">Base line.</param>
/// <param name="Anchor">start, middle or end.</param>
/// <param name="Box">The box it covers.</param>
public sealed record DiagramLabel(string Text, string Style, double X, double Y, string Anchor, Bounds Box)
{
    /// <summary>What the line carries that it names, where that is not what the drawing is of; else empty.</summary>
    public string Medium { get; init; } = "";
}
