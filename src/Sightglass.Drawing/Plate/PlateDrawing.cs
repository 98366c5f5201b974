using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Strip;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Walk;

namespace Sightglass.Drawing.Plate;

/// <summary>The machine from where somebody stands: what is within reach is lit, and the engraving fades into the paper beyond. It names nothing and shows no state.</summary>
public static class PlateDrawing
{
    private const double Width = 920;
    private const double Below = 46;
    private const double Above = 14;

    private const double Scale = PlateGround.Scale;

    /// <summary>Metres to each side that are lit.</summary>
    private const double Reach = 2.6;

    private const double Dot = 5;

    /// <summary>The drawing as SVG, about 920 × 400 px.</summary>
    /// <param name="book">The machine, in its train.</param>
    /// <param name="place">Where somebody stands.</param>
    /// <param name="items">What is within reach, in the order of its list: the n-th has the class <c>p-n</c>.</param>
    /// <param name="others">How many others stand there.</param>
    /// <param name="svg">How it is written.</param>
    /// <returns>Empty where there is no such place.</returns>
    public static string Render(ClassBook book, string place, IReadOnlyList<string> items, int others = 0, SvgOptions? svg = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(items);
        svg ??= SvgOptions.Inline;
        PlateGround ground = PlateGround.Of(book);
        if (ground.Route.Find(place) is not { } stop)
        {
            return "";
        }

        (StripSide side, double highest) = ground[stop.Side];
        double x = side.Map.X(stop.Along);
        double height = Math.Max(highest, 3 * Scale) + Above + Below;
        double left = x - (Width / 2);
        double top = Below - height;
        SvgWriter w = SvgDocument.Begin(svg, "plate-here", left, top, Width, height, Say.With($"Where you stand: {stop.Place.Name}"));
        Defs(w, svg.IdPrefix, x, left, top, height);
        w.Open("g", ("mask", $"url(#{svg.IdPrefix}fade)"));
        SilhouetteDrawing.Draw(w, side, left, left + Width);
        w.Open("g", ("class", "near"), ("clip-path", $"url(#{svg.IdPrefix}reach)"));
        SilhouetteDrawing.Draw(w, side, x - (Reach * Scale), x + (Reach * Scale));
        w.Close();
        w.Path("d-line", new SvgPath().Segment(left, 0, left + Width, 0));
        w.Close();
        double foot = stop.Place.OnGround ? Below - 10 : side.Map.Y(stop.Place.Position.Z);
        for (int i = 0; i < others; i++)
        {
            PersonMark.Draw(w, x + (26 * ((i / 2) + 1) * (i % 2 == 0 ? 1 : -1)), foot, 1.1);
        }

        PersonMark.Draw(w, x, foot, 1.6);
        foreach ((int i, string name) in items.Index())
        {
            if (book.Items.TryGetValue(name, out Item? item) && item.Position is { } at && Seen(side, at, left) is { } mark)
            {
                w.Element("circle", ("class", FormattableString.Invariant($"p-dot p-{i}")), ("cx", mark.X), ("cy", mark.Y), ("r", Dot));
            }
        }

        return SvgDocument.End(w);
    }

    private static (double X, double Y)? Seen(StripSide side, Point3 at, double left)
    {
        double x = side.Map.X(WalkSides.Along(side.Side, at));
        return x < left + Dot || x > left + Width - Dot ? null : (x, side.Map.Y(at.Z));
    }

    private static void Defs(SvgWriter w, string prefix, double x, double left, double top, double height)
    {
        w.Open("defs").Open("linearGradient", ("id", prefix + "edge"));
        foreach ((double offset, string opacity) in new[] { (0.0, "0"), (0.22, "1"), (0.78, "1"), (1.0, "0") })
        {
            w.Element("stop", ("offset", offset), ("stop-color", "#fff"), ("stop-opacity", opacity));
        }

        w.Close().Open("mask", ("id", prefix + "fade"), ("maskUnits", "userSpaceOnUse"), ("x", left), ("y", top), ("width", Width), ("height", height));
        w.Element("rect", ("x", left), ("y", top), ("width", Width), ("height", height), ("fill", $"url(#{prefix}edge)")).Close();
        w.Open("clipPath", ("id", prefix + "reach")).Element("ellipse", ("cx", x), ("cy", -height / 3), ("rx", Reach * Scale), ("ry", height)).Close().Close();
    }
}
