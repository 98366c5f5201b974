namespace Sightglass.Drawing.Diagram;

/// <summary>A line while it is laid out: the lane it lies in and where chains join it.</summary>
internal sealed class DiagramNet(DiagramTerminal terminal)
{
    public DiagramTerminal Terminal { get; } = terminal;

    public double Y { get; set; }

    public int Lane { get; set; }

    public bool IsPlaced { get; set; }

    /// <summary>Least x for chains that come from the right, on the return side.</summary>
    public double FreeFrom { get; set; } = double.NegativeInfinity;

    /// <summary>Where chains join, with what flows in there.</summary>
    public List<(double X, List<(string Node, int Sign)> Inflow)> Joints { get; } = [];

    public double Left => Joints.Min(j => j.X);

    public double Right => Joints.Max(j => j.X);

    public void Join(double x, IEnumerable<(string Node, int Sign)> inflow) => Joints.Add((x, [.. inflow]));
}
