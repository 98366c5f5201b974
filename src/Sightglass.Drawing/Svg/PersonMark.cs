namespace Sightglass.Drawing.Svg;

/// <summary>The person, 34 px high at scale 1.</summary>
public static class PersonMark
{
    /// <summary>Draws the person with the feet at X, Y.</summary>
    public static SvgWriter Draw(SvgWriter w, double x, double y, double scale)
    {
        string move = FormattableString.Invariant($"translate({x:0.##} {y:0.##}) scale({scale:0.##})");
        return w.Open("g", ("class", "person"), ("transform", move))
            .Element("circle", ("cx", 0), ("cy", -29), ("r", 4.6))
            .Element("path", ("d", "M-5.5-22.5h11l1.8 11.5h-2.6L4 0H.9L0-9.5-.9 0H-4l-.7-11h-2.6z"))
            .Close();
    }
}
