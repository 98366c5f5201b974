using System.Collections.Immutable;
using Sightglass.Drawing.Labels;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Charts;

/// <summary>Draws values over time: readings in solid ink, truth dashed with its word, what happened as ticks on the axis.</summary>
public static class TimeChartDrawing
{
    private const double Top = 8;
    private const double Bottom = 22;
    private const double LabelSize = 13;
    private const double EndSize = 15;

    /// <summary>The chart as SVG.</summary>
    public static string Render(TimeChart chart, SvgOptions? svg = null)
    {
        svg ??= SvgOptions.Inline;
        ImmutableArray<Series> shown = [.. chart.Series.Where(s => !s.Points.IsEmpty && (chart.Truth || !s.IsTruth))];
        ChartScale scale = Scale(chart, shown);
        SvgWriter w = SvgDocument.Begin(svg, "chart", 0, 0, chart.Width, chart.Height, chart.Title);
        Define(w, svg.IdPrefix, shown);
        Grid(w, chart, scale);
        if (shown.Count(s => s.IsTruth) == 1 && shown.Count(s => !s.IsTruth) == 1)
        {
            Between(w, scale, shown, svg.IdPrefix);
        }

        foreach (Series series in shown.OrderByDescending(s => s.IsTruth))
        {
            w.Path(series.IsTruth ? "c-line c-truth" : "c-line", ChartLine.Path(Pixels(scale, series)));
        }

        foreach (ChartEvent happened in chart.Events.Where(e => e.X >= scale.X0 && e.X <= scale.X1 && (chart.Truth || !e.IsTruth)))
        {
            double x = scale.X(happened.X);
            w.Open("g").Title(happened.Words).Path(happened.IsTruth ? "c-event c-event-truth" : "c-event", new SvgPath().Segment(x, scale.Low, x, scale.Low - 10)).Close();
        }

        Ends(w, chart, scale, shown);
        return SvgDocument.End(w);
    }

    private static ChartScale Scale(TimeChart chart, ImmutableArray<Series> shown)
    {
        IEnumerable<(double X, double Y)> points = shown.SelectMany(s => s.Points);
        (double x0, double x1) = chart.Across ?? (points.Select(p => p.X).DefaultIfEmpty(0).Min(), points.Select(p => p.X).DefaultIfEmpty(1).Max());
        (double y0, double y1) = chart.Up ?? Around(points.Where(p => p.X >= x0 && p.X <= x1).Select(p => p.Y).DefaultIfEmpty(0));
        double step = ChartTicks.RoundStep(y1 - y0, 6);
        double left = ChartTicks.Round(y0, y1, 6).Select(t => TextMeasure.Width(ChartNumber.Text(t, ChartNumber.DecimalsFor(step)), TextFace.Sans400, LabelSize)).DefaultIfEmpty(10).Max() + 12;
        double right = shown.Select(s => TextMeasure.Width(End(chart, s), TextFace.Sans600, EndSize)).DefaultIfEmpty(0).Max() + 14;
        return new ChartScale(x0, x1 > x0 ? x1 : x0 + 1, y0, y1, left, chart.Width - right, Top, chart.Height - Bottom);
    }

    private static (double From, double To) Around(IEnumerable<double> values)
    {
        (double low, double high) = (values.Min(), values.Max());
        double span = high - low > 0 ? high - low : Math.Max(Math.Abs(high), 1) * 0.1;
        double step = ChartTicks.RoundStep(span, 5);
        return (Math.Floor((low / step) - 1e-9) * step, Math.Ceiling((high / step) + 1e-9) * step);
    }

    private static void Define(SvgWriter w, string prefix, ImmutableArray<Series> shown)
    {
        if (shown.Any(s => s.IsTruth))
        {
            w.Open("defs").Open("pattern", ("id", prefix + "between"), ("width", 7), ("height", 7), ("patternUnits", "userSpaceOnUse"), ("patternTransform", "rotate(45)"))
                .Element("path", ("class", "truth-hatch"), ("d", "M0 0V7")).Close().Close();
        }
    }

    private static void Grid(SvgWriter w, TimeChart chart, ChartScale scale)
    {
        ImmutableArray<double> ups = ChartTicks.Round(scale.Y0, scale.Y1, 6);
        int decimals = ChartNumber.DecimalsFor(ChartTicks.RoundStep(scale.Y1 - scale.Y0, 6));
        foreach (double value in ups)
        {
            w.Path("c-grid", new SvgPath().Segment(scale.Left, scale.Y(value), scale.Right, scale.Y(value)));
            w.Text("c-lab", scale.Left - 7, scale.Y(value) + 4.5, ChartNumber.Text(value, decimals), ("text-anchor", "end"));
        }

        int most = (int)Math.Max(2, (scale.Right - scale.Left) / 70);
        ImmutableArray<double> across = chart.IsClock ? ChartTicks.Clock(scale.X0, scale.X1, most) : ChartTicks.Round(scale.X0, scale.X1, most);
        int acrossDecimals = ChartNumber.DecimalsFor(ChartTicks.RoundStep(scale.X1 - scale.X0, most));
        foreach (double x in across)
        {
            bool last = x == across[^1];
            string words = chart.IsClock ? ChartNumber.Clock(x) : ChartNumber.Text(x, acrossDecimals) + (last && chart.AcrossUnit.Length > 0 ? " " + chart.AcrossUnit : "");
            w.Path("c-axis", new SvgPath().Segment(scale.X(x), scale.Low, scale.X(x), scale.Low + 5));
            w.Text("c-lab", scale.X(x), scale.Low + 19, words, ("text-anchor", "middle"));
        }

        w.Path("c-axis", new SvgPath().Segment(scale.Left, scale.Low, scale.Right, scale.Low));
    }

    private static void Between(SvgWriter w, ChartScale scale, ImmutableArray<Series> shown, string prefix)
    {
        IEnumerable<(double X, double Y)> reading = Pixels(scale, shown.Single(s => !s.IsTruth));
        IEnumerable<(double X, double Y)> truth = Pixels(scale, shown.Single(s => s.IsTruth));
        w.Path("c-between", ChartLine.Path(reading.Concat(truth.Reverse())).Close(), ("fill", $"url(#{prefix}between)"));
    }

    private static List<(double X, double Y)> Pixels(ChartScale scale, Series series) =>
        ChartLine.Thin(series.Points.Where(p => p.X >= scale.X0 && p.X <= scale.X1 && double.IsFinite(p.Y)).Select(p => (scale.X(p.X), scale.Y(p.Y))), scale.Right - scale.Left);

    // Names stand at the ends of the lines, moved apart where two lines end together.
    private static void Ends(SvgWriter w, TimeChart chart, ChartScale scale, ImmutableArray<Series> shown)
    {
        (Series Series, double Y)[] ends = [.. shown.Select(s => (s, scale.Y(s.Points[^1].Y))).OrderBy(e => e.Item2)];
        double[] spread = PoleSpread.Spread([.. ends.Select(e => e.Y)], 18);
        for (int i = 0; i < ends.Length; i++)
        {
            Series series = ends[i].Series;
            w.Text(series.IsTruth ? "c-end c-end-truth" : "c-end", scale.Right + 8, Math.Clamp(spread[i], Top, chart.Height - 4) + 5, End(chart, series));
        }
    }

    private static string End(TimeChart chart, Series series)
    {
        if (series.End is not null)
        {
            return series.End;
        }

        double last = series.Points[^1].Y;
        IEnumerable<double> values = chart.Series.SelectMany(s => s.Points).Select(p => p.Y).Where(double.IsFinite);
        (double low, double high) = chart.Up ?? Around(values);
        int decimals = ChartNumber.DecimalsFor(ChartTicks.RoundStep(high - low, 6));
        string name = series.IsTruth && !series.Name.Contains("truth", StringComparison.OrdinalIgnoreCase) ? ("truth " + series.Name).TrimEnd() : series.Name;
        return $"{name} {ChartNumber.Text(last, Math.Min(decimals, 3))}{(chart.Unit.Length > 0 ? " " + chart.Unit : "")}";
    }
}
