namespace Sightglass.Drawing.Diagram;

/// <summary>A vessel while it is laid out.</summary>
internal sealed class ThroughVessel(DiagramNode node, double least)
{
    public DiagramNode Node { get; } = node;

    /// <summary>The least width, for its name and its gauges.</summary>
    public double Least { get; } = least;

    public double Left { get; set; } = double.NaN;

    public double Right { get; set; } = double.NaN;

    public bool IsPlaced => !double.IsNaN(Left);

    public List<DiagramNode> Gauges { get; init; } = [];
}
