namespace Sightglass.Drawing.Diagram;

/// <summary>Paths one behind the other between two terminals; null is the outside.</summary>
internal sealed class DiagramChain(DiagramTerminal? from, DiagramTerminal? to, List<DiagramLink> links, List<DiagramInnerLine> lines)
{
    public DiagramTerminal? From { get; } = from;

    public DiagramTerminal? To { get; } = to;

    /// <summary>In the direction of the chain.</summary>
    public List<DiagramLink> Links { get; } = links;

    /// <summary>Lines between the links.</summary>
    public List<DiagramInnerLine> Lines { get; } = lines;

    public DiagramRoute Route { get; set; }
}
