namespace Sightglass.Drawing.Diagram;

/// <summary>What stands in one column of a vehicle: paths one below the other between two rows, a dead end on one, gauges of a line, or a part of a line itself.</summary>
internal sealed class ThroughColumn
{
    /// <summary>Name of the node whose row it hangs on; of two the upper one, once rows stand in order.</summary>
    public required string Upper { get; set; }

    /// <summary>Name of the node at its other end, or null for a dead end.</summary>
    public string? Lower { get; set; }

    /// <summary>From the upper end to the lower one; of a dead end from its row outward.</summary>
    public List<DiagramLink> Links { get; private set; } = [];

    /// <summary>Lines between the links.</summary>
    public List<DiagramInnerLine> Lines { get; private set; } = [];

    /// <summary>Whose flow it carries, positive from the upper end to the lower one, or outward.</summary>
    public List<(string Node, int Sign)> Flow { get; private set; } = [];

    /// <summary>Gauges of one line or cylinder, in place of paths.</summary>
    public List<DiagramNode> Gauges { get; init; } = [];

    /// <summary>A line that a dead end leads to, with its name; null where it ends in the open.</summary>
    public DiagramNode? EndLine { get; init; }

    /// <summary>Whether a dead end brings in from outside.</summary>
    public bool BringsIn { get; init; }

    /// <summary>A part of a line that goes through: it stands in the row, not between rows.</summary>
    public DiagramNode? InRow { get; init; }

    /// <summary>Metres from the head, of what stands in it.</summary>
    public double Order { get; init; }

    /// <summary>Whether it stands above its row, as gauges of lines do; those of cylinders hang below.</summary>
    public bool IsAbove { get; init; }

    public double X { get; set; }

    /// <summary>The gap in which its symbols stand, counted from the top.</summary>
    public int Gap { get; set; }

    /// <summary>A column for a chain, or for a part of one.</summary>
    public static ThroughColumn Of(string upper, string? lower, IEnumerable<DiagramLink> links, IEnumerable<DiagramInnerLine> lines, IEnumerable<(string Node, int Sign)> flow, DiagramNode? endLine = null, bool bringsIn = false)
    {
        List<DiagramLink> all = [.. links];
        return new()
        {
            Upper = upper,
            Lower = lower,
            Links = all,
            Lines = [.. lines],
            Flow = [.. flow],
            EndLine = endLine,
            BringsIn = bringsIn,
            Order = all.Count > 0 ? all.Average(l => l.Path.Order) : 0,
        };
    }

    /// <summary>Turns it over, so that its other end is the upper one.</summary>
    public void TurnOver()
    {
        (Upper, Lower) = (Lower!, Upper);
        Lines = [.. Enumerable.Reverse(Lines).Select(l => l with { Gap = Links.Count - l.Gap })];
        Links = [.. Enumerable.Reverse(Links).Select(l => l with { Reversed = !l.Reversed })];
        Flow = [.. Flow.Select(f => (f.Node, -f.Sign))];
    }
}
