namespace Sightglass.Drawing.Shapes;

/// <summary>A box; in metres or in pixels as its owner says.</summary>
public readonly record struct Bounds(double Left, double Low, double Right, double High)
{
    public double Width => Right - Left;

    public double Height => High - Low;

    public Bounds Union(Bounds other) =>
        new(Math.Min(Left, other.Left), Math.Min(Low, other.Low), Math.Max(Right, other.Right), Math.Max(High, other.High));

    public Bounds Grow(double by) => new(Left - by, Low - by, Right + by, High + by);

    /// <summary>Distance between two boxes, 0 where they touch.</summary>
    public double DistanceTo(Bounds other)
    {
        double dx = Math.Max(0, Math.Max(other.Left - Right, Left - other.Right));
        double dy = Math.Max(0, Math.Max(other.Low - High, Low - other.High));
        return Math.Sqrt((dx * dx) + (dy * dy));
    }
}
