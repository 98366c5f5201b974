using System.Collections.Immutable;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Charts;

/// <summary>What matters most: a name, a thin bar and its share in words a row, in the order given.</summary>
public static class RankBars
{
    private const double Pitch = 25;
    private const double Size = 15;

    /// <summary>The ranking as SVG.</summary>
    /// <param name="title">Said to people who cannot see it.</param>
    /// <param name="rows">Name and share, 0…1, and how the share is said.</param>
    /// <param name="width">Pixels.</param>
    public static string Render(string title, ImmutableArray<(string Name, double Share, string Says)> rows, double width = 470, SvgOptions? svg = null)
    {
        SvgWriter w = SvgDocument.Begin(svg ?? SvgOptions.Inline, "chart", 0, 0, width, Math.Max(1, rows.Length) * Pitch, title);
        double most = Math.Min(width * 0.45, rows.Select(r => TextMeasure.Width(r.Name, TextFace.Sans400, Size)).DefaultIfEmpty(0).Max());
        double left = most + 14;
        double right = width - 46;
        for (int i = 0; i < rows.Length; i++)
        {
            double y = (i * Pitch) + (Pitch / 2);
            double share = Math.Clamp(rows[i].Share, 0, 1);
            w.Text("c-name", 0, y + 5, TextMeasure.Fit(rows[i].Name, TextFace.Sans400, Size, most));
            w.Element("rect", ("class", "c-well"), ("x", left), ("y", y - 1.5), ("width", right - left), ("height", 3));
            w.Element("rect", ("class", "d-ink"), ("x", left), ("y", y - 1.5), ("width", (right - left) * share), ("height", 3));
            w.Text("c-name", width, y + 5, rows[i].Says, ("text-anchor", "end"));
        }

        return SvgDocument.End(w);
    }
}
