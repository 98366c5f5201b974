using System.Collections.Immutable;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Vessels;

/// <summary>Draws stores side by side, what is really in them hatched and dashed: hidden truth.</summary>
public static class VesselDrawing
{
    private const double Pitch = 104;
    private const double Wide = 64;
    private const double High = 74;
    private const double Line = 16;
    private const double NameSize = 14.3;

    /// <summary>The row as SVG; ids begin with the prefix of the options.</summary>
    public static string Render(ImmutableArray<Vessel> vessels, string title, SvgOptions? svg = null)
    {
        svg ??= SvgOptions.Inline;
        SvgWriter w = SvgDocument.Begin(svg, "vessels", 0, 0, Math.Max(1, vessels.Length) * Pitch, High + 14 + (Line * vessels.Select(v => Lines(v.Name).Count()).DefaultIfEmpty(1).Max()), title);
        string hatch = svg.IdPrefix + "full";
        w.Open("defs").Open("pattern", ("id", hatch), ("width", 6), ("height", 6), ("patternUnits", "userSpaceOnUse"), ("patternTransform", "rotate(45)")).Element("path", ("class", "truth-hatch"), ("d", "M0 0V6")).Close().Close();
        foreach ((int i, Vessel vessel) in vessels.Index())
        {
            double left = (i * Pitch) + ((Pitch - Wide) / 2);
            double level = 4 + (High * (1 - Math.Clamp(vessel.Share, 0, 1)));
            w.Element("rect", ("x", left), ("y", level), ("width", Wide), ("height", Math.Max(0, High + 4 - level)), ("fill", $"url(#{hatch})"));
            w.Path("truth-line", new SvgPath().Segment(left, level, left + Wide, level));
            w.Path("d-line", new SvgPath().Move(left, 2).Vertical(High - 3).Quadratic(left, High + 4, left + 7, High + 4).Horizontal(left + Wide - 7).Quadratic(left + Wide, High + 4, left + Wide, High - 3).Vertical(2));
            double words = level + 22 > High ? level - 6 : level + 18;
            w.Text("truthword halo", left + (Wide / 2), words, vessel.Says, ("text-anchor", "middle"));
            foreach ((int line, string part) in Lines(vessel.Name).Index())
            {
                w.Text("row-words", left + (Wide / 2), High + 22 + (line * Line), TextMeasure.Fit(part, TextFace.SerifItalic400, NameSize, Pitch - 4), ("text-anchor", "middle"));
            }
        }

        return SvgDocument.End(w);
    }

    private static IEnumerable<string> Lines(string name) => TextMeasure.Wrap(name, TextFace.SerifItalic400, NameSize, Pitch - 4).Take(2);
}
