namespace Sightglass.Drawing.Svg;

/// <summary>Hatches and triangles of hazards: one slant and spacing for each signal word, so that print keeps them apart.</summary>
internal static class HazardHatch
{
    public static void Define(SvgWriter w, string prefix)
    {
        Pattern(w, prefix, "danger", 6, 45, 3);
        Pattern(w, prefix, "warning", 8, 45, 2.6);
        Pattern(w, prefix, "caution", 10, -45, 2.6);
    }

    /// <summary>A triangle with its mark, 18 px wide at scale 1; X, Y is the middle.</summary>
    public static void Triangle(SvgWriter w, string word, double x, double y, double scale)
    {
        string move = FormattableString.Invariant($"translate({x - (9 * scale):0.##} {y - (9 * scale):0.##}) scale({scale:0.##})");
        w.Open("g", ("transform", move))
            .Element("path", ("class", $"hz-tri hz-{word}"), ("d", "M9 .8 17.4 15.3H.6z"))
            .Element("path", ("class", "hz-on-" + word), ("d", "M8.1 5.2h1.8l-.35 5.4h-1.1zM8.1 12h1.8v1.7H8.1z"))
            .Close();
    }

    private static void Pattern(SvgWriter w, string prefix, string word, double size, double angle, double weight)
    {
        w.Open("pattern", ("id", $"{prefix}hz-{word}"), ("width", size), ("height", size), ("patternUnits", "userSpaceOnUse"), ("patternTransform", $"rotate({SvgNumber.Format(angle)})"))
            .Element("rect", ("class", "hz-" + word), ("width", size), ("height", size), ("opacity", 0.1))
            .Element("path", ("class", "hz-line-" + word), ("d", $"M0 0V{SvgNumber.Format(size)}"), ("stroke-width", weight))
            .Element("path", ("class", "hz-ink"), ("d", $"M{SvgNumber.Format(size / 2)} 0V{SvgNumber.Format(size)}"))
            .Close();
    }
}
