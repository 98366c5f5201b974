using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Diagram;

/// <summary>A tank or a machine: its box, pixels, y downwards.</summary>
public sealed record DiagramBody(DiagramNode Node, Bounds Box)
{
    /// <summary>X of the vent, or null.</summary>
    public double? Vent { get; init; }

    /// <summary>X of the words that say what a machine does now.</summary>
    public double WordsAt { get; init; }

    /// <summary>start or end: on which side of that the words stand.</summary>
    public string WordsAnchor { get; init; } = "start";
}
