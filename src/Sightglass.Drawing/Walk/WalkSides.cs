using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Drawing.Walk;

/// <summary>Which side of the machine a point belongs to, and how far round the machine it is.</summary>
public sealed class WalkSides(ClassBook book)
{
    /// <summary>Within this of the middle plane a point inside belongs to neither side, metres.</summary>
    private const double MiddleBand = 0.3;

    /// <summary>More than any way along a side.</summary>
    private const double Longest = 1e5;

    private double Rear => book.Front + book.Length;

    /// <summary>The four sides in the order of the walk.</summary>
    public ImmutableArray<Side> Order { get; } = book.WalkStart switch
    {
        Side.Left => [Side.Left, Side.Rear, Side.Right, Side.Front],
        Side.Rear => [Side.Rear, Side.Left, Side.Front, Side.Right],
        Side.Front => [Side.Front, Side.Right, Side.Rear, Side.Left],
        _ => [Side.Right, Side.Rear, Side.Left, Side.Front],
    };

    /// <summary>Whether the walk keeps the machine at the right hand, so that the strip runs right to left.</summary>
    public bool RunsLeft => book.WalkStart != Side.Left;

    public static double Along(Side side, Point3 point) => side is Side.Right or Side.Left ? point.X : point.Y;

    /// <summary>The side of a ground place.</summary>
    public Side Of(Place place) => OfOutside(place.Position);

    public Side OfOutside(Point3 p)
    {
        double beyondFront = book.Front - p.X;
        double beyondRear = p.X - Rear;
        double beyondSide = Math.Abs(p.Y) - (book.Width / 2);
        double beyondEnd = Math.Max(beyondFront, beyondRear);
        bool end = beyondEnd > 0 ? beyondEnd >= beyondSide || beyondSide <= 0 : beyondSide <= 0 && Math.Max(beyondFront, beyondRear) > -1;
        return end ? beyondFront > beyondRear ? Side.Front : Side.Rear : p.Y >= 0 ? Side.Right : Side.Left;
    }

    /// <summary>The side from which a point inside is drawn: its own, or the entry's where it is in the middle.</summary>
    public Side OfInside(Point3 p, Side entry)
    {
        Side near = entry is Side.Right or Side.Left ? entry : book.WalkStart == Side.Left ? Side.Left : Side.Right;
        return p.Y > MiddleBand ? Side.Right : p.Y < -MiddleBand ? Side.Left : near;
    }

    /// <summary>Grows along the walk within a side.</summary>
    public double Onward(Side side, Point3 p)
    {
        double clockwise = side switch
        {
            Side.Right => p.X,
            Side.Rear => -p.Y,
            Side.Left => -p.X,
            _ => p.Y,
        };
        return RunsLeft ? clockwise : -clockwise;
    }

    /// <summary>Grows along the whole walk.</summary>
    public double Progress(Place place)
    {
        Side side = Of(place);
        return (Order.IndexOf(side) * Longest) + Onward(side, place.Position);
    }

    /// <summary>Metres on the ground from one place to a later one, round the corners in between.</summary>
    public double Distance(Place from, Place to)
    {
        Side a = Of(from);
        Side b = Of(to);
        Point3 p = from.Position;
        Point3 q = to.Position;
        if (a == b)
        {
            return Math.Sqrt(((p.X - q.X) * (p.X - q.X)) + ((p.Y - q.Y) * (p.Y - q.Y)));
        }

        double walked = 0;
        for (int i = Order.IndexOf(a); i < Order.IndexOf(b); i++)
        {
            Point3 corner = i + 1 == Order.IndexOf(b) ? Corner(Order[i], p, q) : Corner(Order[i], p, Far(Order[i + 1]));
            walked += Math.Abs(p.X - corner.X) + Math.Abs(p.Y - corner.Y);
            p = corner;
        }

        return walked + Math.Abs(p.X - q.X) + Math.Abs(p.Y - q.Y);
    }

    // Leaving a long side keep y and go to the end's x; leaving an end keep x and go to the side's y.
    private static Point3 Corner(Side leaving, Point3 from, Point3 to) =>
        leaving is Side.Right or Side.Left ? new Point3(to.X, from.Y, 0) : new Point3(from.X, to.Y, 0);

    private Point3 Far(Side side)
    {
        const double off = 1;
        return side switch
        {
            Side.Rear => new Point3(Rear + off, 0, 0),
            Side.Front => new Point3(book.Front - off, 0, 0),
            Side.Left => new Point3((book.Front + Rear) / 2, (-book.Width / 2) - off, 0),
            _ => new Point3((book.Front + Rear) / 2, (book.Width / 2) + off, 0),
        };
    }
}
