namespace Sightglass.Drawing.Diagram;

/// <summary>What a row holds.</summary>
internal enum ThroughRowSort
{
    /// <summary>Tanks and reservoirs, at the top.</summary>
    Vessels,

    /// <summary>Lines of the vehicle's own.</summary>
    Lines,

    /// <summary>A line that goes through.</summary>
    Bus,

    /// <summary>Cylinders, at the foot.</summary>
    Cylinders,
}

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
