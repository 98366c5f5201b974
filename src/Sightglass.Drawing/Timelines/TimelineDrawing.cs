using System.Collections.Immutable;
using Sightglass.Drawing.Charts;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Timelines;

/// <summary>Draws lanes over time. The time axis begins and ends at <see cref="Ends"/>, so that a page can lay a slider over it.</summary>
public static class TimelineDrawing
{
    private const double Size = 13;
    private const double NameWidth = 150;
    private const double Numbers = 76;
    private const double Edge = 16;
    private const double Top = 22;
    private const double Bottom = 26;
    private const double Gap = 10;
    private const double AboveRow = 20;

    /// <summary>The lanes as SVG.</summary>
    public static string Render(Timeline lanes, SvgOptions? svg = null)
    {
        ArgumentNullException.ThrowIfNull(lanes);
        svg ??= SvgOptions.Inline;
        double height = Height(lanes);
        SvgWriter w = SvgDocument.Begin(svg, "timeline", 0, 0, lanes.Width, height, lanes.Title);
        (double left, double right) = Ends(lanes);
        ChartScale scale = new(lanes.Across.From, Math.Max(lanes.Across.To, lanes.Across.From + 1), 0, 1, left, right, 0, height - Bottom);
        Moments(w, lanes, scale);
        double y = Top;
        foreach (TimelineLane lane in lanes.Lanes)
        {
            y = Name(w, lanes, lane, y);
            Lane(w, lane, scale, y, lanes.NamesAbove);
            y += Deep(lane) + Gap;
        }

        TimeChartDrawing.Axis(w, scale, true, "");
        return SvgDocument.End(w);
    }

    /// <summary>Where the axis of time begins and ends, pixels from the left.</summary>
    public static (double Left, double Right) Ends(Timeline lanes)
    {
        ArgumentNullException.ThrowIfNull(lanes);
        return lanes.NamesAbove ? (12, lanes.Width - Edge) : (NameWidth, lanes.Width - Numbers);
    }

    /// <summary>Pixels from the top to the bottom.</summary>
    public static double Height(Timeline lanes)
    {
        ArgumentNullException.ThrowIfNull(lanes);
        return Top + lanes.Lanes.Sum(l => Deep(l) + Gap + (lanes.NamesAbove ? AboveRow : 0)) + Bottom;
    }

    private static double Deep(TimelineLane lane) => lane.Trace is not null ? 52 : lane.Bars.Any(b => b.Sort == TimelineBarSort.Box) ? 28 : 20;

    private static double Name(SvgWriter w, Timeline lanes, TimelineLane lane, double y)
    {
        string look = lane.IsTruth ? "ln-name ln-name-truth" : "ln-name";
        if (lanes.NamesAbove)
        {
            w.Text(look, 0, y + Size, TextMeasure.Fit(lane.Name, TextFace.Sans500, Size, lanes.Width - (lane.Trace is null ? 0 : 110)));
            return y + AboveRow;
        }

        IReadOnlyList<string> rows = TextMeasure.Wrap(lane.Name, TextFace.Sans500, Size, NameWidth - 14);
        int most = lane.Trace is not null ? 3 : 2;
        double first = y + (Deep(lane) / 2) + 4.5 - ((Math.Min(rows.Count, most) - 1) * 7.5);
        for (int i = 0; i < rows.Count && i < most; i++)
        {
            string row = i == most - 1 && rows.Count > most ? rows[i] + " …" : rows[i];
            w.Text(look, 0, first + (i * 15), TextMeasure.Fit(row, TextFace.Sans500, Size, NameWidth - 8));
        }

        return y;
    }

    private static void Moments(SvgWriter w, Timeline lanes, ChartScale scale)
    {
        List<(double From, double To)> taken = [];
        foreach (TimelineMoment moment in lanes.Moments)
        {
            double x = scale.X(moment.At);
            w.Path(moment.IsBroken ? "ln-moment ln-moment-bad" : "ln-moment", new SvgPath().Segment(x, Top - 4, x, scale.Low));
            double width = TextMeasure.Width(moment.Words, TextFace.Sans500, Size);
            double from = Math.Clamp(x - (width / 2), 0, Math.Max(0, lanes.Width - width - 2));
            if (taken.All(t => from > t.To + 10 || from + width + 10 < t.From))
            {
                w.Text(moment.IsBroken ? "ln-word ln-word-bad" : "ln-word", from, Size, moment.Words);
                taken.Add((from, from + width));
            }
        }
    }

    private static void Lane(SvgWriter w, TimelineLane lane, ChartScale scale, double y, bool narrow)
    {
        double deep = Deep(lane), middle = y + (deep / 2);
        if (lane.Trace is { } trace)
        {
            Trace(w, trace, scale, y, deep, narrow);
        }
        else
        {
            w.Path("c-grid", new SvgPath().Segment(scale.Left, middle, scale.Right, middle));
        }

        foreach (TimelineBar bar in lane.Bars)
        {
            Bar(w, bar, scale, y, deep);
        }

        TimelineMark[] marks = [.. lane.Marks.OrderBy(m => m.At)];
        for (int i = 0; i < marks.Length; i++)
        {
            double x = scale.X(marks[i].At);
            double room = (i + 1 < marks.Length ? scale.X(marks[i + 1].At) - 10 : scale.Right) - x - 12;
            Mark(w, marks[i], x, middle);
            if (marks[i].Label.Length > 0 && room > 44)
            {
                w.Text("ln-label", x + 11, middle + 4.5, TextMeasure.Fit(marks[i].Label, TextFace.Sans400, Size, room));
            }
        }
    }

    private static void Bar(SvgWriter w, TimelineBar bar, ChartScale scale, double y, double deep)
    {
        double from = scale.X(bar.From), to = Math.Max(scale.X(bar.To), from + 1), middle = y + (deep / 2);
        w.Open("g").Title(bar.Words);
        switch (bar.Sort)
        {
            case TimelineBarSort.Way:
                w.Path("ln-way", new SvgPath().Segment(from, middle, to, middle));
                break;
            case TimelineBarSort.Holds:
                w.Path("ln-holds", new SvgPath().Segment(from, middle, to, middle));
                break;
            default:
                w.Path("ln-box", new SvgPath().Rectangle(from, y, to - from, deep));
                if (to - from > 30 && TextMeasure.Fit(bar.Words, TextFace.Sans400, Size, to - from - 10) is { Length: > 2 } words)
                {
                    w.Text("c-words", from + 6, middle + 4.5, words);
                }

                break;
        }

        w.Close();
    }

    private static void Mark(SvgWriter w, TimelineMark mark, double x, double y)
    {
        w.Open("g").Title(mark.Words);
        switch (mark.Sort)
        {
            case TimelineMarkSort.Act:
                w.Path("d-ink", new SvgPath().Rectangle(x - 4.5, y - 4.5, 9, 9));
                break;
            case TimelineMarkSort.Said:
                w.Element("circle", ("class", "ln-open"), ("cx", x), ("cy", y), ("r", 4.6));
                break;
            case TimelineMarkSort.Word:
                w.Path("d-ink", new SvgPath().Move(x - 5.5, y + 4.5).Line(x, y - 5.5).Line(x + 5.5, y + 4.5).Close());
                break;
            case TimelineMarkSort.Truth:
                w.Path("truth-mark", Diamond(x, y, 5.6));
                break;
            case TimelineMarkSort.Broken:
                w.Path("bad", Diamond(x, y, 6.6));
                break;
            case TimelineMarkSort.Lost:
                w.Path("c-event", new SvgPath().Segment(x - 5, y - 5, x + 5, y + 5).Segment(x - 5, y + 5, x + 5, y - 5));
                break;
            default:
                w.Path("c-event", new SvgPath().Segment(x, y - 7, x, y + 7));
                break;
        }

        w.Close();
    }

    private static SvgPath Diamond(double x, double y, double r) => new SvgPath().Move(x, y - r).Line(x + r, y).Line(x, y + r).Line(x - r, y).Close();

    private static void Trace(SvgWriter w, TimelineTrace trace, ChartScale scale, double y, double deep, bool narrow)
    {
        ImmutableArray<double> all = [.. trace.Truth.Concat(trace.Shown.SelectMany(s => s)).Select(p => p.Y).Where(double.IsFinite)];
        if (all.IsEmpty)
        {
            return;
        }

        (double low, double high) = (all.Min(), all.Max());
        if (high - low < 1e-9 * Math.Max(1, Math.Abs(high)))
        {
            (low, high) = (low - 1, high + 1);
        }

        double Y(double value) => y + deep - 3 - ((value - low) / (high - low) * (deep - 6));
        w.Path("c-grid", new SvgPath().Segment(scale.Left, y + deep, scale.Right, y + deep));
        w.Path("c-line c-truth", ChartLine.Path(ChartLine.Thin(trace.Truth.Where(p => double.IsFinite(p.Y)).Select(p => (scale.X(p.X), Y(p.Y))), scale.Right - scale.Left)));
        foreach (ImmutableArray<(double X, double Y)> shown in trace.Shown)
        {
            w.Path("ln-shown", ChartLine.Path(shown.Select(p => (scale.X(p.X), Y(p.Y)))));
            if (scale.X(shown[^1].X) - scale.X(shown[0].X) < 3)
            {
                w.Element("circle", ("class", "d-ink"), ("cx", scale.X(shown[0].X)), ("cy", Y(shown[0].Y)), ("r", 2.6));
            }
        }

        string unit = trace.Unit.Length > 0 ? "\u202F" + trace.Unit : "";
        (string top, string foot) = (ChartNumber.Text(high, trace.Decimals) + unit, ChartNumber.Text(low, trace.Decimals) + unit);
        if (narrow)
        {
            w.Text("ln-number", scale.Right, y - AboveRow + Size, $"{foot} … {top}", ("text-anchor", "end"));
        }
        else
        {
            w.Text("ln-number", scale.Right + 6, Y(high) + 8, top);
            w.Text("ln-number", scale.Right + 6, Y(low) + 1, foot);
        }
    }
}
