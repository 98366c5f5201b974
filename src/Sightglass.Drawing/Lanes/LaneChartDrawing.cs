using Sightglass.Drawing.Charts;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Lanes;

/// <summary>Draws lanes over time: curves, stays, acts, and what came about through all of them.</summary>
public static class LaneChartDrawing
{
    private const double Names = 96;
    private const double Ends = 12;
    private const double Axis = 30;
    private const double Head = 20;
    private const double LabelSize = 13;

    /// <summary>The least span, seconds, so that the first minute is not stretched over all of the width.</summary>
    private const double LeastSpan = 60;

    /// <summary>The chart as SVG; ids begin with the prefix of the options.</summary>
    public static string Render(LaneChart chart, SvgOptions? svg = null)
    {
        ArgumentNullException.ThrowIfNull(chart);
        svg ??= SvgOptions.Inline;
        double foot = Head + chart.Lanes.Sum(l => l.Height);
        double to = Math.Max(chart.To ?? chart.Now * 1.06, LeastSpan);
        double X(double seconds) => Names + (Math.Clamp(seconds, 0, to) / to * (chart.Width - Names - Ends));
        SvgWriter w = SvgDocument.Begin(svg, "lanes", 0, 0, chart.Width, foot + Axis, chart.Title);
        string hatch = svg.IdPrefix + "hatch";
        w.Open("defs").Open("pattern", ("id", hatch), ("width", 6), ("height", 6), ("patternUnits", "userSpaceOnUse"), ("patternTransform", "rotate(45)")).Element("path", ("class", "truth-hatch"), ("d", "M0 0V6")).Close().Close();
        double y = Head;
        foreach (Lane lane in chart.Lanes)
        {
            Name(w, lane, y);
            switch (lane)
            {
                case LaneCurve curve:
                    Curve(w, curve, X, y, hatch);
                    break;
                case LaneBars bars:
                    Bars(w, bars, X, y, hatch);
                    break;
                case LaneMarks marks:
                    Marks(w, marks, X, y + (lane.Height / 2));
                    break;
            }

            y += lane.Height;
        }

        Events(w, chart, X, foot);
        Clock(w, chart, X, to, foot);
        return SvgDocument.End(w);
    }

    private static void Name(SvgWriter w, Lane lane, double y)
    {
        double line = y + (lane.Height / 2) + 4.5;
        IReadOnlyList<string> lines = TextMeasure.Wrap(lane.Name, TextFace.Sans400, LabelSize, Names - 8);
        line -= (Math.Min(lines.Count, 2) - 1) * 7.5;
        foreach (string words in lines.Take(2))
        {
            w.Text(lane.IsTruth ? "c-lab lane-truth" : "c-lab", 0, line, TextMeasure.Fit(words, TextFace.Sans400, LabelSize, Names - 8));
            line += 15;
        }
    }

    private static void Curve(SvgWriter w, LaneCurve curve, Func<double, double> x, double y, string hatch)
    {
        double low = y + curve.Height - 6;
        double span = curve.Scale.To - curve.Scale.From;
        double Y(double value) => low - (span > 0 ? Math.Clamp((value - curve.Scale.From) / span, 0, 1) * (curve.Height - 12) : 0);
        if (curve.Points.IsEmpty)
        {
            return;
        }

        (double X, double Y)[] points = [.. ChartLine.Thin(curve.Points.Select(p => (x(p.X), Y(p.Y))), x(double.MaxValue) - Names)];
        if (curve.IsTruth)
        {
            w.Element("path", ("d", new SvgPath().Polyline(points).Line(points[^1].X, low).Line(points[0].X, low).Close().ToString()), ("fill", $"url(#{hatch})"));
        }

        w.Path("c-grid", new SvgPath().Segment(Names, low, points[^1].X, low));
        w.Path(curve.IsTruth ? "c-line c-truth" : "c-line", ChartLine.Path(points));
        double end = TextMeasure.Width(curve.End, TextFace.Sans600, LabelSize);
        double beside = points[^1].X - 6 - end;
        double at = points[^1].Y - 5 < y + 12 ? points[^1].Y + 15 : points[^1].Y - 5;
        w.Text(curve.IsTruth ? "lane-end lane-truth" : "lane-end", Math.Max(Names + 2, beside), Math.Min(at, low - 2), curve.End);
    }

    private static void Bars(SvgWriter w, LaneBars lane, Func<double, double> x, double y, string hatch)
    {
        double middle = y + (lane.Height / 2);
        double? before = null;
        foreach (LaneBar bar in lane.Bars)
        {
            (double left, double right) = (x(bar.From), x(bar.To));
            if (!lane.IsTruth && before is { } end && left - end > 1)
            {
                w.Path("plan-leg lane-way", new SvgPath().Segment(end, middle, left, middle));
            }

            before = right;
            double width = Math.Max(right - left - 1, 1.5);
            w.Open("g").Title(bar.Words);
            w.Element("rect", ("class", lane.IsTruth ? "lane-so" : bar.IsHere ? "lane-bar lane-here" : "lane-bar"), ("fill", lane.IsTruth ? $"url(#{hatch})" : null), ("x", left), ("y", middle - 12), ("width", width), ("height", 24));
            if (width > 30)
            {
                w.Text(lane.IsTruth ? "lane-end lane-truth" : "c-words", left + 5, middle + 4.5, TextMeasure.Fit(bar.Words, TextFace.Sans400, LabelSize, width - 8));
            }

            w.Close();
        }
    }

    private static void Marks(SvgWriter w, LaneMarks lane, Func<double, double> x, double y)
    {
        foreach (LaneMark mark in lane.Marks)
        {
            double at = x(mark.At);
            w.Open("g").Title(mark.Words);
            switch (mark.Shape)
            {
                case LaneMarkShape.Said:
                    w.Element("circle", ("class", "lane-ring"), ("cx", at), ("cy", y), ("r", 4.5));
                    break;
                case LaneMarkShape.Touched:
                    w.Element("rect", ("class", "d-ink"), ("x", at - 4.5), ("y", y - 4.5), ("width", 9), ("height", 9));
                    break;
                case LaneMarkShape.Bookmark:
                    w.Path("d-ink", new SvgPath().Polyline([(at - 4, y - 6), (at + 4, y - 6), (at + 4, y + 6), (at, y + 2), (at - 4, y + 6)]).Close());
                    break;
                default:
                    w.Path("bad", new SvgPath().Polyline([(at, y - 7), (at + 7, y), (at, y + 7), (at - 7, y)]).Close());
                    w.Path("lane-cross", new SvgPath().Segment(at - 2.4, y - 2.4, at + 2.4, y + 2.4).Segment(at + 2.4, y - 2.4, at - 2.4, y + 2.4));
                    break;
            }

            w.Close();
        }
    }

    /// <summary>Words stand above all lanes, and are left out where the last ones still stand: the pointer finds them all the same.</summary>
    private static void Events(SvgWriter w, LaneChart chart, Func<double, double> x, double foot)
    {
        LaneEvent[] events = [.. chart.Events.OrderBy(e => e.At)];
        foreach (LaneEvent e in events)
        {
            w.Open("g").Title(e.Words);
            w.Path(e.IsTruth ? "lane-event lane-hidden" : "lane-event", new SvgPath().Segment(x(e.At), 4, x(e.At), foot));
            w.Close();
        }

        double free = 0;
        foreach (LaneEvent e in events)
        {
            double at = x(e.At);
            double room = chart.Width - at - 8;
            if (at >= free && room > 60)
            {
                string words = TextMeasure.Fit(e.Words, TextFace.Sans600, LabelSize, Math.Min(240, room));
                w.Text(e.IsTruth ? "lane-end lane-truth" : "lane-end", at + 4, 14, words);
                free = at + 14 + TextMeasure.Width(words, TextFace.Sans600, LabelSize);
            }
        }
    }

    private static void Clock(SvgWriter w, LaneChart chart, Func<double, double> x, double to, double foot)
    {
        SvgPath axis = new SvgPath().Segment(Names, foot, x(to), foot);
        foreach (double tick in ChartTicks.Clock(0, to, 7))
        {
            axis.Segment(x(tick), foot, x(tick), foot + 5);
            w.Text("c-lab", x(tick), foot + 20, ChartNumber.Clock(tick), ("text-anchor", "middle"));
        }

        w.Path("c-axis", axis);
        double now = x(chart.Now);
        w.Path("lane-now", new SvgPath().Segment(now, Head - 4, now, foot));
        w.Path("d-ink", new SvgPath().Polyline([(now - 5, foot), (now + 5, foot), (now, foot + 7)]).Close());
    }
}
