using System.Collections.Immutable;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Charts;

/// <summary>Draws a trace gauge, 372 × 72 px.</summary>
public static class TraceGaugeDrawing
{
    private const double Width = 372;
    private const double Height = 72;
    private const double ScaleAt = 214;

    /// <summary>The gauge as SVG.</summary>
    public static string Render(TraceGauge gauge, SvgOptions? svg = null)
    {
        svg ??= SvgOptions.Inline;
        SvgWriter w = SvgDocument.Begin(svg, "trace-gauge", 0, 0, Width, Height, gauge.Title);
        double end = gauge.Reading.Concat(gauge.Truth).Select(p => p.X).DefaultIfEmpty(0).Max();
        ChartScale scale = new(end - gauge.Seconds, end, gauge.From, gauge.To, 0, ScaleAt, 8, Height - 8);
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

        Words(w, gauge);
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

    private static void Words(SvgWriter w, TraceGauge gauge)
    {
        const double left = 278;
        double? reading = gauge.Reading.IsEmpty ? null : gauge.Reading[^1].Y;
        double? truth = gauge.Truth.IsEmpty ? null : gauge.Truth[^1].Y;
        if (reading is { } shown)
        {
            w.Open("text", ("class", "c-number"), ("x", left), ("y", 28)).Content(ChartNumber.Text(shown, gauge.Decimals))
                .Open("tspan", ("class", "c-unit"), ("dx", 4)).Content(gauge.Unit).Close().Close();
        }

        if (truth is { } real)
        {
            string words = (reading is null ? "" : "truth ") + ChartNumber.Text(real, gauge.Decimals) + " " + gauge.Unit;
            w.Text(reading is null ? "c-number c-number-truth" : "c-end c-end-truth", left, reading is null ? 34 : 47, words);
            if (reading is { } said && gauge.Misleading is { } bound && Math.Abs(said - real) >= bound)
            {
                w.Text("c-end", left, 65, "misleads by " + ChartNumber.Text(Math.Abs(said - real), gauge.Decimals));
            }
        }
    }
}
