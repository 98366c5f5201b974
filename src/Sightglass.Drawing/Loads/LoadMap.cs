using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Loads;

/// <summary>From metres along a vehicle and pixels across it to the pixels of a drawing, which lies or stands.</summary>
/// <param name="Upright">Its front is at the top.</param>
/// <param name="First">m, at the edge.</param>
/// <param name="Edge">Pixels before that.</param>
/// <param name="Scale">Pixels a metre.</param>
/// <param name="Middle">Pixels to the middle of the vehicle.</param>
internal readonly record struct LoadMap(bool Upright, double First, double Edge, double Scale, double Middle)
{
    /// <summary>A point: metres along the train, pixels to its right.</summary>
    public (double X, double Y) Point(double along, double across)
    {
        double u = Edge + ((along - First) * Scale);
        return Upright ? (Middle + across, u) : (u, Middle - across);
    }

    /// <summary>A box from one side to another, so thick along the vehicle.</summary>
    public Bounds Box(double along, double thick, double from, double to)
    {
        (double x, double y) = Point(along, from);
        (double farX, double farY) = Point(along, to);
        Bounds line = new(Math.Min(x, farX), Math.Min(y, farY), Math.Max(x, farX), Math.Max(y, farY));
        double half = thick / 2;
        return Upright ? line with { Low = line.Low - half, High = line.High + half } : line with { Left = line.Left - half, Right = line.Right + half };
    }
}
