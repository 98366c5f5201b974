namespace Sightglass.Drawing.Diagram;

/// <summary>Where chains of paths end: a tank, a machine, or a line with more than two ends.</summary>
internal sealed class DiagramTerminal(DiagramNode node)
{
    public DiagramNode Node { get; } = node;

    public string Id => Node.Id;

    public bool IsTank => Node.Role == DiagramRole.Tank;

    public bool IsMachine => Node.Role == DiagramRole.Machine;

    public bool IsNet => Node.Role == DiagramRole.Line;

    /// <summary>A line that only leads back to the tanks it comes from.</summary>
    public bool IsReturn { get; set; }

    /// <summary>Steps from the sources.</summary>
    public int Rank { get; set; }

    public List<DiagramChain> Out { get; } = [];

    public List<DiagramChain> In { get; } = [];
}
