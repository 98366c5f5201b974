using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Strip;

/// <summary>What lies under and round the machine: rail, ballast, hazards, the light of the lamp.</summary>
internal static class StripGround
{
    /// <summary>How far the lamp shines to both sides, metres.</summary>
    public const double LampReach = 3.4;

    public static void Definitions(SvgWriter w, StripLayout layout, string prefix)
    {
        w.Open("defs");
        HazardHatch.Define(w, prefix);
        if (layout.Here is not null)
        {
            Fade(w, prefix + "lamp-h", "x2", 0.18, "lamp-stop");
            Fade(w, prefix + "lamp-v", "y2", 0.2, "mask-stop");
            Bounds s = layout.Sheet;
            w.Open("mask", ("id", prefix + "lamp-m"), ("maskUnits", "userSpaceOnUse"), ("x", s.Left), ("y", s.Low), ("width", s.Width), ("height", s.Height))
                .Element("rect", ("x", s.Left), ("y", s.Low), ("width", s.Width), ("height", s.Height), ("fill", $"url(#{prefix}lamp-v)")).Close();
        }

        w.Close().Break();
    }

    public static void Lamp(SvgWriter w, StripLayout layout, StripStop here, string prefix)
    {
        double reach = LampReach * layout.Scale;
        w.Element(
            "rect",
            ("class", "lamp"),
            ("id", prefix + "lamp"),
            ("x", here.X - reach),
            ("y", layout.Sheet.Low),
            ("width", 2 * reach),
            ("height", layout.Sheet.Height),
            ("fill", $"url(#{prefix}lamp-h)"),
            ("mask", $"url(#{prefix}lamp-m)"));
    }

    public static void Rail(SvgWriter w, StripLayout layout)
    {
        w.Open("g", ("class", "ground"));
        foreach (StripSide side in layout.Sides)
        {
            double from = side.Left - (0.45 * layout.Scale);
            double to = side.Right + (0.45 * layout.Scale);
            w.Path("rail", new SvgPath().Segment(from, layout.Ground, to, layout.Ground));
            if (layout.Scale < 30)
            {
                continue;
            }

            if (side.Side is Side.Right or Side.Left)
            {
                w.Path("d-det", Sleepers(from, to, layout).Segment(from, layout.Ground + 3.5, to, layout.Ground + 3.5));
            }

            w.Path("ballast", Ballast(from, to, layout.Ground));
        }

        w.Close().Break();
    }

    public static void Zones(SvgWriter w, StripLayout layout, string prefix)
    {
        foreach (StripZone zone in layout.Zones)
        {
            Bounds box = zone.Box;
            string word = Say.Word(zone.Word.ToString());
            string style = zone.Word.ToString().ToLowerInvariant();
            w.Open("g", ("class", "zone"), ("data-hazard", zone.Hazards[0].Name)).Title($"{word.ToUpperInvariant()}: {string.Join(' ', zone.Hazards.Select(h => Say.Book(h.Caution.Text)).Distinct())}");
            w.Element("rect", ("class", "zone-edge"), ("x", box.Left), ("y", box.Low), ("width", box.Width), ("height", box.Height), ("fill", $"url(#{prefix}hz-{style})"));
            w.Element("rect", ("class", "hz-" + style), ("x", box.Left), ("y", box.High - 3), ("width", box.Width), ("height", 3));
            HazardHatch.Triangle(w, style, box.Left, box.Low + 2, Math.Clamp(layout.Scale / 50, 0.6, 1.1));
            w.Text("zone-word", box.Left + 14, Math.Min(box.Low + layout.LabelSize + 2, box.High - 4), word.ToUpperInvariant(), ("style", StripFlags.FontSize(layout)));
            w.Close();
        }

        w.Break();
    }

    private static void Fade(SvgWriter w, string id, string axis, double edge, string style)
    {
        w.Open("linearGradient", ("id", id), ("x1", 0), ("y1", 0), ("x2", axis == "x2" ? 1 : 0), ("y2", axis == "y2" ? 1 : 0));
        foreach ((double offset, double opacity) in new[] { (0.0, 0.0), (edge, 1.0), (1 - edge, 1.0), (1.0, 0.0) })
        {
            w.Element("stop", ("class", style), ("offset", offset), ("stop-opacity", opacity));
        }

        w.Close();
    }

    private static SvgPath Sleepers(double from, double to, StripLayout layout)
    {
        SvgPath path = new();
        double step = 0.62 * layout.Scale;
        for (double x = from + 14; x < to - 16; x += step)
        {
            path.Polyline([(x, layout.Ground + 4), (x, layout.Ground + 9), (x + (step * 0.4), layout.Ground + 9), (x + (step * 0.4), layout.Ground + 4)]);
        }

        return path;
    }

    // Stipple: scattered by a fixed sequence, the same in every drawing.
    private static SvgPath Ballast(double from, double to, double ground)
    {
        SvgPath path = new();
        uint state = 7;
        double Next()
        {
            state = (state * 1664525) + 1013904223;
            return (state >> 8) / 16777216.0;
        }

        for (double x = from; x < to; x += 3.4)
        {
            double left = x + (Next() * 3);
            double y = ground + 5 + (Next() * (4 + (Next() * 11)));
            path.Segment(left, y, left + 0.6 + (Next() * 1.2), y);
        }

        return path;
    }
}
