using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Walk;

namespace Sightglass.Drawing.Plan;

/// <summary>The way round the machine: straight along a side, rounded at the corners.</summary>
internal sealed class PlanWay(ClassBook book, PlanMap map, ImmutableArray<WalkStop> stops)
{
    /// <summary>The way from one stop to a later one.</summary>
    public SvgPath Path(int from, int to)
    {
        SvgPath path = new();
        (double x, double y) = map.Point(stops[from].Place.Position);
        path.Move(x, y);
        for (int i = from; i < to; i++)
        {
            Step(path, stops[i], stops[i + 1]);
        }

        return path;
    }

    private void Step(SvgPath path, WalkStop a, WalkStop b)
    {
        (double x, double y) = map.Point(b.Place.Position);
        bool sideA = a.Side is Side.Right or Side.Left;
        bool sideB = b.Side is Side.Right or Side.Left;
        if (a.Side == b.Side || sideA == sideB)
        {
            if (a.Side != b.Side)
            {
                Round(path, a, b);
            }

            path.Line(x, y);
            return;
        }

        Point3 corner = sideA ? new Point3(b.Place.Position.X, a.Place.Position.Y, 0) : new Point3(a.Place.Position.X, b.Place.Position.Y, 0);
        (double cx, double cy) = map.Point(corner);
        path.Quadratic(cx, cy, x, y);
    }

    // From one long side to the other, or one end to the other, with nothing between: round the machine's corners.
    private void Round(SvgPath path, WalkStop a, WalkStop b)
    {
        const double off = 0.8;
        bool sides = a.Side is Side.Right or Side.Left;
        double end = new WalkSides(book).RunsLeft == (a.Side == Side.Right) ? book.Front + book.Length + off : book.Front - off;
        foreach (WalkStop stop in new[] { a, b })
        {
            (double x, double y) = map.Point(sides ? new Point3(end, stop.Place.Position.Y, 0) : new Point3(stop.Place.Position.X, (book.Width / 2) + off, 0));
            path.Line(x, y);
        }
    }
}
