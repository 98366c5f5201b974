using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Strip;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Walk;

namespace Sightglass.Drawing.Overview;

/// <summary>The whole strip as a small silhouette, with its stops and a frame round what the large one shows.</summary>
public static class OverviewDrawing
{
    private const double Below = 24;

    /// <summary>Below this many pixels a metre stops lie close, and are small.</summary>
    private const double Close = 6;

    /// <summary>The small strip as SVG. The frame is the element <c>win</c> (after the prefix), in the drawing's own pixels.</summary>
    public static string Render(ClassBook book, OverviewOptions? options = null, SvgOptions? svg = null)
    {
        options ??= new OverviewOptions();
        svg ??= SvgOptions.Inline;
        ImmutableArray<StripSide> sides = StripSides.Of(book, new StripOptions { Scale = options.Scale });
        double pad = StripSides.Pad * options.Scale;
        double left = sides[0].Left - pad;
        double width = sides[^1].Right + pad - left;
        double top = -StripSides.Height(sides) - 6;
        double bottom = options.Stops ? Below : 8;
        SvgWriter w = SvgDocument.Begin(svg, "overview", left, top, width, bottom - top, Say.With($"{book.Title}, all sides"));
        if (options.Person && Ground(WalkRoute.Of(book), options.CurrentPlace) is { } stands)
        {
            w.Element("ellipse", ("class", "mi-here"), ("cx", XOf(sides, stands)), ("cy", -6), ("rx", 30), ("ry", Math.Min(30, -top - 8)));
        }

        foreach (StripSide side in sides)
        {
            Silhouette(w, side);
        }

        w.Path("mi-rail", new SvgPath().Segment(left + 6, 0, left + width - 6, 0));
        if (options.Stops)
        {
            Stops(w, book, options, sides);
        }

        if (options.Window is { } window)
        {
            w.Element("rect", ("id", svg.IdPrefix + "win"), ("class", "mi-frame"), ("x", left + (window.From * width)), ("y", top + 1), ("width", Math.Max(0, window.To - window.From) * width), ("height", bottom - top - 2), ("rx", 2));
        }

        return SvgDocument.End(w);
    }

    /// <summary>The vehicles of a side, without what would be smaller than a few pixels.</summary>
    internal static void Silhouette(SvgWriter w, StripSide side)
    {
        foreach ((SideMap map, StripShape shape) in side.Figures.SelectMany(f => f.Shapes.Where(s => IsLarge(s, f.Map.Scale)).Select(s => (f.Map, s))))
        {
            w.Path(shape.Style == "glass" ? "mi-g" : shape.Path.IsClosed ? "mi" : "mi-l", shape.Path.Draw(map));
        }
    }

    // What is smaller than a few pixels would only blacken.
    private static bool IsLarge(StripShape shape, double scale)
    {
        Bounds box = shape.Path.Box() ?? default;
        double small = Math.Min(box.Width, box.Height) * scale;
        double large = Math.Max(box.Width, box.Height) * scale;
        return shape.Style switch
        {
            "outline" => shape.Path.IsClosed && small >= 5,
            "glass" => small >= 3.5 && large < 60,
            "part" => shape.Path.IsClosed && small >= 7,
            _ => false,
        };
    }

    private static void Stops(SvgWriter w, ClassBook book, OverviewOptions options, ImmutableArray<StripSide> sides)
    {
        WalkRoute route = WalkRoute.Of(book);
        WalkStop? here = Ground(route, options.CurrentPlace);
        foreach (WalkStop stop in route.Stops.Where(s => s.Place.OnGround))
        {
            bool now = stop == here;
            double x = XOf(sides, stop);
            if (now && options.Person)
            {
                PersonMark.Draw(w, x, Below - 8, 0.74);
                continue;
            }

            bool been = now || options.Visited.Contains(stop.Place.Name);
            w.Element("circle", ("class", been ? "mi-stop been" : "mi-stop"), ("data-place", stop.Place.Name), ("cx", x), ("cy", Below - 12), ("r", now ? 4.6 : options.Scale < Close ? 1.3 : 3));
        }
    }

    /// <summary>The stop on the ground where somebody stands, or from which they went in.</summary>
    private static WalkStop? Ground(WalkRoute route, string? place)
    {
        WalkStop? here = route.Find(place);
        return here is null || here.Place.OnGround ? here : route.Find(here.EnteredFrom);
    }

    private static double XOf(ImmutableArray<StripSide> sides, WalkStop stop) => sides.First(s => s.Side == stop.Side).Map.X(stop.Along);
}
