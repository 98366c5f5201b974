using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Diagram;

/// <summary>A tank or a machine: its box, pixels, y downwards.</summary>
public sealed record DiagramBody(DiagramNode Node, Bounds Box)
{
    /// <summary>X of the vent, or null.</summary>
    public double? Vent { get; init; }
}
