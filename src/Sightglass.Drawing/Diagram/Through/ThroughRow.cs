namespace Sightglass.Drawing.Diagram;

/// <summary>A row of a vehicle.</summary>
internal sealed class ThroughRow(ThroughRowSort sort)
{
    public ThroughRowSort Sort { get; } = sort;

    public List<DiagramNode> Nodes { get; } = [];

    public ThroughBus? Bus { get; init; }

    /// <summary>Of a line that goes through: which of the train's it is.</summary>
    public int Number { get; init; }

    public double Y { get; set; }

    /// <summary>From this row to the next, pixels.</summary>
    public double Gap { get; set; }
}
