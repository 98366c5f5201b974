using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Charts;

/// <summary>Draws one value over another: the curve in ink, a ring where somebody stands on it, dashed to both scales.</summary>
public static class CurveChartDrawing
{
    private const double Top = 34;
    private const double Bottom = 48;
    private const double Right = 22;
    private const double Size = 13;
    private const double MarkSize = 15;
    private const double Ring = 5;

    /// <summary>How far below the mark its words may stand, the best first.</summary>
    private static readonly double[] s_offsets = [-9, 20, 5, -30, 36, -52, 58];

    /// <summary>From the middle of words to a curve that they do not touch.</summary>
    private const double Enough = 11;

    /// <summary>Beside the first and the last of a few dots.</summary>
    private const double Beside = 12;

    /// <summary>The chart as SVG.</summary>
    public static string Render(CurveChart chart, SvgOptions? svg = null)
    {
        ArgumentNullException.ThrowIfNull(chart);
        SvgWriter w = SvgDocument.Begin(
            svg ?? SvgOptions.Inline, "chart", 0, 0, chart.Width, chart.Height, Say.With($"{chart.Upwards} over {chart.Across}: at {chart.MarkWords.X} it is {chart.MarkWords.Y}"));
        ChartScale scale = ScaleOf(chart);
        Grid(w, chart, scale);
        foreach (List<(double X, double Y)> piece in Pieces(chart, scale))
        {
            w.Path(chart.IsCounted ? "c-grid" : "c-line", ChartLine.Path(piece));
        }

        if (chart.IsCounted)
        {
            foreach ((double x, double y) in chart.Points.Where(p => p.Y >= scale.Y0 && p.Y <= scale.Y1))
            {
                w.Element("circle", ("class", "c-on"), ("cx", scale.X(x)), ("cy", scale.Y(y)), ("r", 3));
            }
        }

        Mark(w, chart, scale);
        return SvgDocument.End(w);
    }

    private static ChartScale ScaleOf(CurveChart chart)
    {
        double step = ChartTicks.RoundStep(chart.Up.To - chart.Up.From, 5);
        (double low, double high) = (Math.Floor((chart.Up.From / step) + 1e-9) * step, Math.Ceiling((chart.Up.To / step) - 1e-9) * step);
        int decimals = ChartNumber.DecimalsFor(step);
        double left = 16 + new[] { low, high }.Max(v => TextMeasure.Width(ChartNumber.Text(v, decimals), TextFace.Sans400, Size));
        (double x0, double x1) = (chart.Points[0].X, chart.Points[^1].X);
        double room = chart.IsCounted ? Beside : 0;
        return new(x0, x1 > x0 ? x1 : x0 + 1, low, high > low ? high : low + 1, left + room, chart.Width - Right - room, Top, chart.Height - Bottom);
    }

    private static double LeftOf(CurveChart chart, ChartScale scale) => scale.Left - (chart.IsCounted ? Beside : 0);

    private static void Grid(SvgWriter w, CurveChart chart, ChartScale scale)
    {
        int decimals = ChartNumber.DecimalsFor(ChartTicks.RoundStep(scale.Y1 - scale.Y0, 5));
        double left = LeftOf(chart, scale);
        foreach (double value in ChartTicks.Round(scale.Y0, scale.Y1, 5))
        {
            w.Path("c-grid", new SvgPath().Segment(left, scale.Y(value), chart.Width - Right, scale.Y(value)));
            w.Text("c-lab", left - 7, scale.Y(value) + 4.5, ChartNumber.Text(value, decimals), ("text-anchor", "end"));
        }

        TimeChartDrawing.Axis(w, scale, false, "");
        w.Path("c-axis", new SvgPath().Segment(left, scale.Low, scale.Left, scale.Low).Segment(scale.Right, scale.Low, chart.Width - Right, scale.Low));
        w.Text("c-words", 4, 16, TextMeasure.Fit(chart.Upwards, TextFace.Sans400, Size, chart.Width - 8));
        w.Text("c-words", scale.Right, chart.Height - 8, TextMeasure.Fit(chart.Across, TextFace.Sans400, Size, chart.Width - left), ("text-anchor", "end"));
    }

    /// <summary>The curve in pixels, cut where it leaves the frame and where it has no value.</summary>
    private static IEnumerable<List<(double X, double Y)>> Pieces(CurveChart chart, ChartScale scale)
    {
        List<(double X, double Y)> piece = [];
        for (int i = 0; i < chart.Points.Length; i++)
        {
            (double X, double Y) at = chart.Points[i];
            bool inside = at.Y >= scale.Y0 && at.Y <= scale.Y1;
            if (i > 0 && Edge(chart.Points[i - 1], at, scale) is { } edge)
            {
                piece.Add((scale.X(edge.X), scale.Y(edge.Y)));
            }

            if (inside)
            {
                piece.Add((scale.X(at.X), scale.Y(at.Y)));
            }
            else if (piece.Count > 0)
            {
                yield return piece;
                piece = [];
            }
        }

        if (piece.Count > 0)
        {
            yield return piece;
        }
    }

    /// <summary>Where the stretch between two points passes the upper or the lower edge, or null.</summary>
    private static (double X, double Y)? Edge((double X, double Y) a, (double X, double Y) b, ChartScale scale)
    {
        foreach (double y in new[] { scale.Y0, scale.Y1 })
        {
            if (double.IsFinite(a.Y) && double.IsFinite(b.Y) && (a.Y - y) * (b.Y - y) < 0)
            {
                return (a.X + ((b.X - a.X) * (y - a.Y) / (b.Y - a.Y)), y);
            }
        }

        return null;
    }

    private static void Mark(SvgWriter w, CurveChart chart, ChartScale scale)
    {
        (double x, double y) = (scale.X(chart.Mark.X), scale.Y(chart.Mark.Y));
        w.Path("c-asked", new SvgPath().Segment(x, scale.Low, x, y + Ring).Segment(LeftOf(chart, scale), y, x - Ring, y));
        w.Element("circle", ("class", "c-share"), ("cx", x), ("cy", y), ("r", Ring));
        double width = TextMeasure.Width(chart.MarkWords.Y, TextFace.Sans600, MarkSize);
        List<List<(double X, double Y)>> curve = [.. Pieces(chart, scale)];
        (double X, double Y) middle = (Math.Clamp(x - (width / 2), scale.Left, chart.Width - 4 - width), Math.Max(30, y - 12));
        (double X, double Y)[] free =
        [
            .. s_offsets.SelectMany(dy => new[] { (X: x + 12, Y: y + dy), (X: x - 12 - width, Y: y + dy) })
                .Where(c => c.X >= scale.Left && c.X + width <= chart.Width - 2 && c.Y - 12 >= 18 && c.Y + 4 <= scale.Low).DefaultIfEmpty(middle),
        ];
        (double X, double Y) best = free.Any(c => Clear(c) > Enough) ? free.First(c => Clear(c) > Enough) : free.MaxBy(Clear);
        w.Text("c-end halo", best.X, best.Y, chart.MarkWords.Y);

        // How far the curve keeps from the middle of words that stand there.
        double Clear((double X, double Y) c) => curve.SelectMany(p => p.Zip(p.Skip(1))).Where(s => s.Second.X > c.X - 4 && s.First.X < c.X + width + 4)
            .Select(s => Distance(c.Y - 5, s.First.Y, s.Second.Y)).DefaultIfEmpty(1000).Min();
    }

    private static double Distance(double y, double a, double b) => Math.Max(0, Math.Max(Math.Min(a, b) - y, y - Math.Max(a, b)));
}
