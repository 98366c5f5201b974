using System.Collections.Immutable;
using Sightglass.Basics.Language;
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
    private const double NameStep = 18;
    private const double AboveStep = 22;

    /// <summary>The piece of a line before its name, pixels.</summary>
    private const double Sample = 26;

    /// <summary>The chart as SVG.</summary>
    public static string Render(TimeChart chart, SvgOptions? svg = null)
    {
        svg ??= SvgOptions.Inline;
        SvgWriter w = SvgDocument.Begin(svg, "chart", 0, 0, chart.Width, chart.Height, chart.Title);
        Draw(w, chart, Margins(chart), svg.IdPrefix);
        return SvgDocument.End(w);
    }

    /// <summary>Room at the left for the numbers and at the right for the names, pixels.</summary>
    public static (double Left, double Right) Margins(TimeChart chart)
    {
        ImmutableArray<Series> shown = Shown(chart);
        (double y0, double y1) = Up(chart, shown);
        int decimals = ChartNumber.DecimalsFor(ChartTicks.RoundStep(y1 - y0, 6));
        double left = ChartTicks.Round(y0, y1, 6).Select(t => TextMeasure.Width(ChartNumber.Text(t, decimals), TextFace.Sans400, LabelSize)).DefaultIfEmpty(10).Max() + 12;
        double right = chart.NamesAbove ? LabelSize * 2 : shown.Select(s => TextMeasure.Width(End(chart, s), TextFace.Sans600, EndSize)).DefaultIfEmpty(0).Max() + 14;
        return (left, right);
    }

    /// <summary>Draws a chart into a picture that is open.</summary>
    internal static void Draw(SvgWriter w, TimeChart chart, (double Left, double Right) margins, string prefix)
    {
        ImmutableArray<Series> shown = Shown(chart);
        (double x0, double x1) = chart.Across ?? Ends(shown.SelectMany(s => s.Points).Select(p => p.X));
        (double y0, double y1) = Up(chart, shown);
        ChartScale scale = new(x0, x1 > x0 ? x1 : x0 + 1, y0, y1, margins.Left, chart.Width - margins.Right, Top + (chart.NamesAbove ? (AboveStep * shown.Length) + (LabelSize / 2) : 0), chart.Height - Bottom);
        Define(w, prefix, shown);
        Grid(w, chart, scale);
        if (shown.Count(s => s.IsTruth) == 1 && shown.Count(s => !s.IsTruth) == 1)
        {
            Between(w, scale, shown, prefix);
        }

        foreach (IGrouping<bool, Series> sort in shown.GroupBy(s => s.IsTruth).OrderByDescending(g => g.Key))
        {
            foreach ((Series series, int i) in sort.Select((s, i) => (s, i)))
            {
                string look = $"c-line{(sort.Key ? " c-truth" : "")}{(i > 0 ? $" c-nth-{((i - 1) % 3) + 1}" : "")}";
                w.Path(look, ChartLine.Path(Pixels(scale, series)));
                if (chart.NamesAbove)
                {
                    Above(w, chart, series, look, Top + (AboveStep * shown.IndexOf(series)));
                }
            }
        }

        foreach (ChartEvent happened in chart.Events.Where(e => e.X >= scale.X0 && e.X <= scale.X1 && (chart.Truth || !e.IsTruth)))
        {
            double x = scale.X(happened.X);
            w.Open("g").Title(happened.Words).Path(happened.IsTruth ? "c-event c-event-truth" : "c-event", new SvgPath().Segment(x, scale.Low, x, scale.Low - 10)).Close();
        }

        if (!chart.NamesAbove)
        {
            Names(w, chart, scale, shown);
        }
    }

    /// <summary>The axis of time or of whatever runs along.</summary>
    internal static void Axis(SvgWriter w, ChartScale scale, bool isClock, string unit)
    {
        int most = (int)Math.Max(2, (scale.Right - scale.Left) / 70);
        ImmutableArray<double> across = isClock ? ChartTicks.Clock(scale.X0, scale.X1, most) : ChartTicks.Round(scale.X0, scale.X1, most);
        int decimals = ChartNumber.DecimalsFor(ChartTicks.RoundStep(scale.X1 - scale.X0, most));
        foreach (double x in across)
        {
            string words = isClock ? ChartNumber.Clock(x) : ChartNumber.Text(x, decimals) + (x == across[^1] && unit.Length > 0 ? " " + unit : "");
            w.Path("c-axis", new SvgPath().Segment(scale.X(x), scale.Low, scale.X(x), scale.Low + 5));
            w.Text("c-lab", scale.X(x), scale.Low + 19, words, ("text-anchor", "middle"));
        }

        w.Path("c-axis", new SvgPath().Segment(scale.Left, scale.Low, scale.Right, scale.Low));
    }

    private static ImmutableArray<Series> Shown(TimeChart chart) => [.. chart.Series.Where(s => !s.Points.IsEmpty && (chart.Truth || !s.IsTruth))];

    private static (double From, double To) Ends(IEnumerable<double> values) => (values.DefaultIfEmpty(0).Min(), values.DefaultIfEmpty(1).Max());

    private static (double From, double To) Up(TimeChart chart, ImmutableArray<Series> shown)
    {
        if (chart.Up is { } up)
        {
            return up;
        }

        IEnumerable<(double X, double Y)> points = shown.SelectMany(s => s.Points).Where(p => double.IsFinite(p.Y));
        return Around((chart.Across is { } across ? points.Where(p => p.X >= across.From && p.X <= across.To) : points).Select(p => p.Y).DefaultIfEmpty(0));
    }

    private static (double From, double To) Around(IEnumerable<double> values)
    {
        (double low, double high) = (values.Min(), values.Max());
        double span = high - low > 0 ? high - low : Math.Max(Math.Abs(high), 1) * 0.1;
        double step = ChartTicks.RoundStep(span, 5);
        return (Math.Max(low >= 0 ? 0 : double.NegativeInfinity, Math.Floor((low / step) - 1e-9) * step), Math.Ceiling((high / step) + 1e-9) * step);
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

        Axis(w, scale, chart.IsClock, chart.AcrossUnit);
    }

    private static void Between(SvgWriter w, ChartScale scale, ImmutableArray<Series> shown, string prefix)
    {
        IEnumerable<(double X, double Y)> reading = Pixels(scale, shown.Single(s => !s.IsTruth));
        IEnumerable<(double X, double Y)> truth = Pixels(scale, shown.Single(s => s.IsTruth));
        w.Path("c-between", ChartLine.Path(reading.Concat(truth.Reverse())).Close(), ("fill", $"url(#{prefix}between)"));
    }

    private static List<(double X, double Y)> Pixels(ChartScale scale, Series series) =>
        ChartLine.Thin(series.Points.Where(p => p.X >= scale.X0 && p.X <= scale.X1 && double.IsFinite(p.Y)).Select(p => (scale.X(p.X), scale.Y(p.Y))), scale.Right - scale.Left);

    private static void Above(SvgWriter w, TimeChart chart, Series series, string look, double y)
    {
        w.Path(look, new SvgPath().Segment(0, y + (EndSize / 2), Sample, y + (EndSize / 2)));
        w.Text(series.IsTruth ? "c-end c-end-truth" : "c-end", Sample + 8, y + EndSize - 2, TextMeasure.Fit(End(chart, series), TextFace.Sans600, EndSize, chart.Width - Sample - 8));
    }

    // Names stand where the lines end, moved apart where two end together.
    private static void Names(SvgWriter w, TimeChart chart, ChartScale scale, ImmutableArray<Series> shown)
    {
        (Series Series, double Y)[] ends = [.. shown.Select(s => (s, scale.Y(s.Points[^1].Y))).OrderBy(e => e.Item2)];
        double[] spread = PoleSpread.Spread([.. ends.Select(e => e.Y)], NameStep);
        double x = Math.Min(scale.Right, scale.X(shown.Select(s => s.Points[^1].X).DefaultIfEmpty(scale.X1).Max())) + 8;
        double lowest = x > scale.Right ? scale.Low : scale.Low - (NameStep / 2); // below the axis stand the words of time, and over the plot none stands on it
        for (int i = 0; i < spread.Length; i++)
        {
            spread[i] = Math.Min(spread[i], lowest - (NameStep * (spread.Length - 1 - i)));
        }

        for (int i = 0; i < ends.Length; i++)
        {
            Series series = ends[i].Series;
            w.Text(series.IsTruth ? "c-end c-end-truth" : "c-end", x, Math.Clamp(spread[i], Top, chart.Height - 4) + 5, TextMeasure.Fit(End(chart, series), TextFace.Sans600, EndSize, chart.Width - x));
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
        string name = series.IsTruth && !series.Name.Contains(Say.It("truth"), StringComparison.OrdinalIgnoreCase) ? Say.With($"truth {series.Name}").TrimEnd() : series.Name;
        return $"{name} {ChartNumber.Text(last, Math.Min(decimals, 3))}{(chart.Unit.Length > 0 ? " " + chart.Unit : "")}";
    }
}
