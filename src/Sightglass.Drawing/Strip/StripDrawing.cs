using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Strip;

/// <summary>Draws a strip: the four sides unrolled in walking order.</summary>
public static class StripDrawing
{
    /// <summary>The strip of a book as SVG.</summary>
    public static string Render(ClassBook book, StripOptions? options = null, SvgOptions? svg = null)
    {
        options ??= new StripOptions();
        return Render(StripLayout.Of(book, options), options, svg);
    }

    /// <summary>A strip whose layout is there already.</summary>
    public static string Render(StripLayout layout, StripOptions options, SvgOptions? svg = null)
    {
        svg ??= SvgOptions.Inline;
        SvgWriter w = SvgDocument.Begin(
            svg, "strip", layout.Sheet.Left, layout.Sheet.Low, layout.Sheet.Width, layout.Sheet.Height, Words(layout), options.Interactive);
        StripGround.Definitions(w, layout, svg.IdPrefix);
        if (layout.Here is { } here)
        {
            StripGround.Lamp(w, layout, here, svg.IdPrefix);
        }

        Names(w, layout);
        StripGround.Rail(w, layout);
        foreach (StripSide side in layout.Sides)
        {
            SilhouetteDrawing.Draw(w, side);
            w.Break();
        }

        StripGround.Zones(w, layout, svg.IdPrefix);
        StripTape.Draw(w, layout, options);
        w.Open("g", ("class", "items"));
        foreach (StripItem item in layout.Items)
        {
            StripFlags.Draw(w, layout, item, options, svg.IdPrefix);
        }

        w.Close();
        StripTape.Person(w, layout, options);
        return SvgDocument.End(w);
    }

    private static string Words(StripLayout layout)
    {
        string sides = string.Join(", ", (layout.RunsLeft ? layout.Sides.Reverse() : layout.Sides).Select(s => SideName(s.Side).ToLowerInvariant()));
        return layout.RunsLeft ? Say.With($"{layout.Title} unrolled: {sides}. The walk runs right to left.") : Say.With($"{layout.Title} unrolled: {sides}. The walk runs left to right.");
    }

    internal static string SideName(Side side) => side switch
    {
        Side.Right => Say.It("Right side"),
        Side.Left => Say.It("Left side"),
        Side.Rear => Say.It("Rear"),
        _ => Say.It("Front"),
    };

    private static void Names(SvgWriter w, StripLayout layout)
    {
        double y = layout.HeadLine;
        bool small = layout.Scale < 30;
        foreach (StripSide side in layout.Sides)
        {
            bool wide = side.Side is Side.Right or Side.Left;
            bool right = wide && layout.RunsLeft;
            double x = !wide ? (side.Left + side.Right) / 2 : right ? side.Right : side.Left;
            w.Text(small ? "side-name small-name" : "side-name", x, y, SideName(side.Side), ("text-anchor", !wide ? "middle" : right ? "end" : "start"));
            if (wide && !small)
            {
                double from = Math.Max(108, TextMeasure.Width(SideName(side.Side), TextFace.SerifItalic400, 22) + 12); // A side has a longer name in some languages.
                double tip = x + (right ? -from - 42 : from + 42);
                double tail = x + (right ? -from : from);
                double back = right ? 7 : -7;
                w.Path("d-arrow", new SvgPath().Segment(tail, y - 6, tip, y - 6).Polyline([(tip + back, y - 10), (tip, y - 6), (tip + back, y - 2)]));
            }
        }
    }
}
