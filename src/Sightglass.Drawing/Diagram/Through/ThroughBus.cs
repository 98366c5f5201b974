namespace Sightglass.Drawing.Diagram;

/// <summary>A line that goes through a vehicle: lines and the paths between them, from the hose at the left to the hose at the right.</summary>
/// <param name="Nodes">From left to right.</param>
/// <param name="FromLeft">Whether its first node is what is coupled at the left end.</param>
/// <param name="ToRight">Whether its last node is what is coupled at the right end.</param>
internal sealed record ThroughBus(IReadOnlyList<DiagramNode> Nodes, bool FromLeft, bool ToRight)
{
    public IEnumerable<DiagramNode> Lines => Nodes.Where(n => n.Role == DiagramRole.Line);

    public DiagramNode? Left => FromLeft ? Nodes[0] : null;

    public DiagramNode? Right => ToRight ? Nodes[^1] : null;

    /// <summary>The paths next to the ends: their cocks.</summary>
    public DiagramNode? LeftCock => FromLeft && Nodes.Count > 1 ? Nodes[1] : null;

    public DiagramNode? RightCock => ToRight && Nodes.Count > 1 && (Nodes.Count > 3 || !FromLeft) ? Nodes[^2] : null;

    /// <summary>What stands on it between the cocks, from left to right.</summary>
    public IEnumerable<DiagramNode> Middle => Nodes.Where(n => n.Role == DiagramRole.Path && n != LeftCock && n != RightCock);
}
