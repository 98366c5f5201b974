using System.Collections.Immutable;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Charts;

/// <summary>Draws a trace gauge, 356 × 72 px. Where reading and truth part, its left edge is hatched.</summary>
public static class TraceGaugeDrawing
{
    private const double Width = 356;
    private const double Height = 72;
    private const double Edge = 14;
    private const double ScaleAt = 198;
    private const double WordsAt = 262;
    private const double NumberSize = 28;

    /// <summary>The gauge as SVG.</summary>
    public static string Render(TraceGauge gauge, SvgOptions? svg = null)
    {
        svg ??= SvgOptions.Inline;
        TraceGaugeWords words = TraceGaugeWords.Of(gauge);
        SvgWriter w = SvgDocument.Begin(svg, words.Misleads.Length > 0 ? "trace-gauge lies" : "trace-gauge", 0, 0, Width, Height, words.Said);
        double end = gauge.Reading.Concat(gauge.Truth).Select(p => p.X).DefaultIfEmpty(0).Max();
        ChartScale scale = new(end - gauge.Seconds, end, gauge.From, gauge.To, Edge, ScaleAt, 8, Height - 8);
        if (words.Misleads.Length > 0)
        {
            w.Open("defs").Open("pattern", ("id", svg.IdPrefix + "apart"), ("width", 5), ("height", 5), ("patternUnits", "userSpaceOnUse"), ("patternTransform", "rotate(45)"))
                .Element("path", ("class", "truth-line-plain"), ("d", "M0 0V5")).Close().Close();
            w.Element("rect", ("x", 0), ("y", 6), ("width", 7), ("height", Height - 12), ("fill", $"url(#{svg.IdPrefix}apart)"));
        }

        Ruler(w, gauge, scale);
        if (!gauge.Truth.IsEmpty)
        {
            double y = scale.Y(gauge.Truth[^1].Y);
            w.Path("c-line c-truth", Trace(scale, gauge.Truth));
            w.Path("truth-mark", new SvgPath().Polyline([(ScaleAt, y), (ScaleAt + 7, y - 5), (ScaleAt + 14, y), (ScaleAt + 7, y + 5)]).Close());
        }

        if (!gauge.Reading.IsEmpty)
        {
            double y = scale.Y(gauge.Reading[^1].Y);
            w.Path("c-line", Trace(scale, gauge.Reading));
            w.Path("d-ink", new SvgPath().Polyline([(ScaleAt, y), (ScaleAt + 12, y - 6), (ScaleAt + 12, y + 6)]).Close());
        }

        Number(w, words, gauge.Unit);
        return SvgDocument.End(w);
    }

    private static SvgPath Trace(ChartScale scale, ImmutableArray<(double X, double Y)> points) =>
        ChartLine.Path(ChartLine.Thin(points.Where(p => p.X >= scale.X0).Select(p => (scale.X(p.X), scale.Y(p.Y))), ScaleAt));

    private static void Ruler(SvgWriter w, TraceGauge gauge, ChartScale scale)
    {
        if (gauge.Normal is { } normal)
        {
            double high = scale.Y(Math.Max(normal.From, normal.To));
            w.Element("rect", ("class", "c-normal"), ("x", ScaleAt + 1), ("y", high), ("width", 5), ("height", scale.Y(Math.Min(normal.From, normal.To)) - high));
        }

        SvgPath ruler = new SvgPath().Segment(ScaleAt, scale.High, ScaleAt, scale.Low);
        int decimals = ChartNumber.DecimalsFor((gauge.To - gauge.From) / 2);
        for (int i = 0; i <= 4; i++)
        {
            double value = gauge.From + ((gauge.To - gauge.From) * i / 4);
            ruler.Segment(ScaleAt, scale.Y(value), ScaleAt + (i % 2 == 0 ? 7 : 4), scale.Y(value));
            if (i % 2 == 0)
            {
                w.Text("c-lab", ScaleAt + 19, scale.Y(value) + 4.5, ChartNumber.Text(value, decimals));
            }
        }

        w.Path("c-axis", ruler);
    }

    // The number and its unit, smaller where they would not fit; truth and by how much it misleads below.
    private static void Number(SvgWriter w, TraceGaugeWords words, string unit)
    {
        double room = Width - WordsAt - TextMeasure.Width(unit, TextFace.Sans400, 15) - 4;
        double size = Math.Min(NumberSize, NumberSize * room / Math.Max(TextMeasure.Width(words.Number, TextFace.Sans500, NumberSize), 1));
        double y = words.Below.IsEmpty ? 45 : 28;
        if (words.Number.Length > 0)
        {
            w.Open("text", ("class", words.IsTruth ? "c-number c-number-truth" : "c-number"), ("x", WordsAt), ("y", y), ("style", size < NumberSize ? $"font-size:{SvgNumber.Format(size)}px" : null))
                .Content(words.Number).Open("tspan", ("class", "c-unit"), ("dx", 4)).Content(unit).Close().Close();
        }

        foreach ((string line, bool truth) in words.Below)
        {
            y += 18.5;
            w.Text(truth ? "c-end c-end-truth" : "c-end", WordsAt, y, line);
        }
    }
}
