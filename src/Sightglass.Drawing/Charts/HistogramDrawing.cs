using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Charts;

/// <summary>Draws a histogram in strokes, with the median named and the ends of the scale.</summary>
public static class HistogramDrawing
{
    /// <summary>The histogram as SVG.</summary>
    public static string Render(Histogram histogram, SvgOptions? svg = null)
    {
        double[] values = [.. histogram.Values.Where(double.IsFinite).Order()];
        SvgWriter w = SvgDocument.Begin(svg ?? SvgOptions.Inline, "chart", 0, 0, histogram.Width, histogram.Height, Words(histogram, values));
        double axis = histogram.Height - 29.5;
        w.Path("c-axis", new SvgPath().Segment(4, axis, histogram.Width - 4, axis));
        if (values.Length > 0)
        {
            (double from, double to) = histogram.Across ?? Around(values);
            Bars(w, histogram, from, to, axis);
            Marks(w, histogram, values, from, to, axis);
        }

        return SvgDocument.End(w);
    }

    private static (double From, double To) Around(double[] sorted)
    {
        double low = sorted[0];
        double high = sorted[^1];
        double step = ChartTicks.RoundStep(high > low ? high - low : Math.Max(Math.Abs(high), 1) * 0.1, 6);
        double from = low >= 0 && low < (high - low) ? 0 : Math.Floor(low / step) * step;
        double to = Math.Ceiling(high / step) * step;
        return (from, to > from ? to : from + step);
    }

    private static double Median(double[] sorted) =>
        sorted.Length % 2 == 1 ? sorted[sorted.Length / 2] : (sorted[(sorted.Length / 2) - 1] + sorted[sorted.Length / 2]) / 2;

    private static string Words(Histogram histogram, double[] sorted) => sorted.Length == 0
        ? Say.With($"{histogram.Title}: no cases")
        : Say.With($"{histogram.Title}: {sorted.Length} cases, median {Number(Median(sorted), sorted)} {histogram.Unit}").TrimEnd();

    private static string Number(double value, double[] sorted)
    {
        double span = sorted[^1] - sorted[0];
        return ChartNumber.Text(value, span > 0 ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(span)), 0, 3) : ChartNumber.DecimalsFor(value));
    }

    private static void Bars(SvgWriter w, Histogram histogram, double from, double to, double axis)
    {
        ImmutableArray<int> counts = histogram.Counts(from, to);
        double step = (histogram.Width - 12) / histogram.Bins;
        SvgPath bars = new();
        for (int i = 0; i < counts.Length; i++)
        {
            if (counts[i] > 0)
            {
                double x = 6 + (step * (i + 0.5));
                bars.Segment(x, axis, x, axis - Math.Max(2, (axis - 8) * counts[i] / counts.Max()));
            }
        }

        w.Path("c-bars", bars, ("stroke-width", step * 0.55));
    }

    private static void Marks(SvgWriter w, Histogram histogram, double[] sorted, double from, double to, double axis)
    {
        double X(double value) => 6 + ((histogram.Width - 12) * (value - from) / (to - from));
        double median = Median(sorted);
        string words = Say.With($"median {Number(median, sorted)} {histogram.Unit}").TrimEnd();
        double half = TextMeasure.Width(words, TextFace.Sans400, 13) / 2;
        double x = Math.Clamp(X(median), half + 4, histogram.Width - half - 4);
        w.Path("c-axis", new SvgPath().Segment(X(median), axis, X(median), axis + 6));
        w.Text("c-lab", x, axis + 20, words, ("text-anchor", "middle"));
        int decimals = ChartNumber.DecimalsFor(ChartTicks.RoundStep(to - from, 6));
        foreach ((double value, string anchor, double at) in new[] { (from, "start", 4.0), (to, "end", histogram.Width - 4) })
        {
            string end = $"{ChartNumber.Text(value, decimals)}{(value == to ? " " + histogram.Unit : "")}".TrimEnd();
            double width = TextMeasure.Width(end, TextFace.Sans400, 13);
            if (Math.Abs(at - x) > width + half + 8)
            {
                w.Path("c-axis", new SvgPath().Segment(X(value), axis, X(value), axis + 6)).Text("c-lab", at, axis + 20, end, ("text-anchor", anchor));
            }
        }
    }
}
