using System.Collections.Immutable;
using Sightglass.Drawing.Charts;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Timelines;

/// <summary>Draws lanes over time. The time axis begins and ends at <see cref="Ends"/>, so that a page can lay a slider over it.</summary>
public static class TimelineDrawing
{
    private const double Size = 13;
    private const double Numbers = 76;
    private const double Edge = 16;
    private const double Top = 22;
    /// <summary>Below the lanes: numbers of the axis.</summary>
    public const double Bottom = 26;
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
        string hatch = svg.IdPrefix + "hatch";
        if (lanes.Lanes.Any(l => l is { IsTruth: true, Trace.End.Length: > 0 } || l.Bars.Any(b => b.Sort == TimelineBarSort.Truth)))
        {
            w.Open("defs").Open("pattern", ("id", hatch), ("width", 6), ("height", 6), ("patternUnits", "userSpaceOnUse"), ("patternTransform", "rotate(45)")).Element("path", ("class", "truth-hatch"), ("d", "M0 0V6")).Close().Close();
        }

        Moments(w, lanes, scale);
        double y = Top;
        foreach (TimelineLane lane in lanes.Lanes)
        {
            y = Name(w, lanes, lane, y);
            Lane(w, lanes, lane, scale, y, $"url(#{hatch})");
            y += Deep(lane) + Gap;
        }

        TimeChartDrawing.Axis(w, scale, true, "");
        if (lanes.Now is { } now)
        {
            double x = scale.X(now);
            w.Path("ln-now", new SvgPath().Segment(x, Top - 4, x, scale.Low));
            w.Path("d-ink", new SvgPath().Polyline([(x - 5, scale.Low), (x + 5, scale.Low), (x, scale.Low + 7)]).Close());
        }

        return SvgDocument.End(w);
    }

    /// <summary>Where the axis of time begins and ends, pixels from the left.</summary>
    public static (double Left, double Right) Ends(Timeline lanes)
    {
        ArgumentNullException.ThrowIfNull(lanes);
        return lanes.NamesAbove ? (12, lanes.Width - Edge) : (lanes.Names, lanes.Width - (lanes.Scales ? Numbers : Edge));
    }

    /// <summary>Pixels from the top to the bottom.</summary>
    public static double Height(Timeline lanes)
    {
        ArgumentNullException.ThrowIfNull(lanes);
        return Top + lanes.Lanes.Sum(l => Deep(l) + Gap + (lanes.NamesAbove ? AboveRow : 0)) + Bottom;
    }

    private static double Deep(TimelineLane lane) => lane.Trace is not null ? 52 : lane.Bars.Any(b => b.Sort is not (TimelineBarSort.Way or TimelineBarSort.Holds)) ? 28 : 20;

    private static double Name(SvgWriter w, Timeline lanes, TimelineLane lane, double y)
    {
        string look = lane.IsTruth ? "ln-name ln-name-truth" : "ln-name";
        if (lanes.NamesAbove)
        {
            w.Text(look, 0, y + Size, TextMeasure.Fit(lane.Name, TextFace.Sans500, Size, lanes.Width - (lane.Trace is null ? 0 : 110)));
            return y + AboveRow;
        }

        IReadOnlyList<string> rows = TextMeasure.Wrap(lane.Name, TextFace.Sans500, Size, lanes.Names - 14);
        int most = lane.Trace is not null ? 3 : 2;
        double first = y + (Deep(lane) / 2) + 4.5 - ((Math.Min(rows.Count, most) - 1) * 7.5);
        for (int i = 0; i < rows.Count && i < most; i++)
        {
            string row = i == most - 1 && rows.Count > most ? rows[i] + " …" : rows[i];
            w.Text(look, 0, first + (i * 15), TextMeasure.Fit(row, TextFace.Sans500, Size, lanes.Names - 8));
        }

        return y;
    }

    private static void Moments(SvgWriter w, Timeline lanes, ChartScale scale)
    {
        List<(double From, double To)> taken = [];
        foreach (TimelineMoment moment in lanes.Moments)
        {
            double x = scale.X(moment.At);
            w.Open("g").Title(moment.Words);
            w.Path(moment.IsBroken ? "ln-moment ln-moment-bad" : moment.IsTruth ? "ln-moment ln-moment-truth" : "ln-moment", new SvgPath().Segment(x, Top - 4, x, scale.Low));
            w.Close();
            double width = TextMeasure.Width(moment.Words, TextFace.Sans500, Size);
            // Beside its line, where nothing that stands at the moment goes through the words.
            double from = x + 8 + width < lanes.Width ? x + 8 : Math.Max(0, x - 8 - width);
            if (taken.All(t => from > t.To + 10 || from + width + 10 < t.From))
            {
                w.Text(moment.IsBroken ? "ln-word ln-word-bad" : moment.IsTruth ? "ln-word ln-word-truth" : "ln-word", from, Size, moment.Words);
                taken.Add((from, from + width));
            }
        }
    }

    private static void Lane(SvgWriter w, Timeline lanes, TimelineLane lane, ChartScale scale, double y, string hatch)
    {
        double deep = Deep(lane), middle = y + (deep / 2);
        if (lane.Trace is { } trace)
        {
            Trace(w, lanes, trace, scale, y, deep, lane.IsTruth ? hatch : "");
        }
        else
        {
            w.Path("c-grid", new SvgPath().Segment(scale.Left, middle, scale.Right, middle));
        }

        foreach (TimelineBar bar in lane.Bars)
        {
            Bar(w, bar, scale, y, deep, hatch);
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

    private static void Bar(SvgWriter w, TimelineBar bar, ChartScale scale, double y, double deep, string hatch)
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
                bool isTruth = bar.Sort == TimelineBarSort.Truth;
                w.Element("path", ("class", isTruth ? "ln-so" : bar.Sort == TimelineBarSort.Here ? "ln-box ln-here" : "ln-box"), ("fill", isTruth ? hatch : null), ("d", new SvgPath().Rectangle(from, y, to - from, deep).ToString()));
                if (to - from > 30 && TextMeasure.Fit(bar.Words, TextFace.Sans400, Size, to - from - 10) is { Length: > 2 } words)
                {
                    w.Text(isTruth ? "ln-end ln-word-truth" : "c-words", from + 6, middle + 4.5, words);
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
            case TimelineMarkSort.Bookmark:
                w.Path("d-ink", new SvgPath().Polyline([(x - 4, y - 6), (x + 4, y - 6), (x + 4, y + 6), (x, y + 2), (x - 4, y + 6)]).Close());
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

    private static void Trace(SvgWriter w, Timeline lanes, TimelineTrace trace, ChartScale scale, double y, double deep, string hatch)
    {
        ImmutableArray<double> all = [.. trace.Truth.Concat(trace.Shown.SelectMany(s => s)).Select(p => p.Y).Where(double.IsFinite)];
        if (all.IsEmpty)
        {
            return;
        }

        (double low, double high) = trace.Scale ?? (all.Min(), all.Max());
        if (high - low < 1e-9 * Math.Max(1, Math.Abs(high)))
        {
            (low, high) = (low - 1, high + 1);
        }

        double Y(double value) => y + deep - 3 - (Math.Clamp((value - low) / (high - low), 0, 1) * (deep - 6));
        (double X, double Y)[] truth = [.. ChartLine.Thin(trace.Truth.Where(p => double.IsFinite(p.Y)).Select(p => (scale.X(p.X), Y(p.Y))), scale.Right - scale.Left)];
        if (hatch.Length > 0 && trace.End.Length > 0 && truth.Length > 0)
        {
            w.Element("path", ("d", new SvgPath().Polyline(truth).Line(truth[^1].X, y + deep).Line(truth[0].X, y + deep).Close().ToString()), ("fill", hatch));
        }

        w.Path("c-grid", new SvgPath().Segment(scale.Left, y + deep, scale.Right, y + deep));
        w.Path("c-line c-truth", ChartLine.Path(truth));
        foreach (ImmutableArray<(double X, double Y)> shown in trace.Shown)
        {
            w.Path("ln-shown", ChartLine.Path(ChartLine.Thin(shown.Select(p => (scale.X(p.X), Y(p.Y))), scale.Right - scale.Left)));
            if (scale.X(shown[^1].X) - scale.X(shown[0].X) < 3)
            {
                w.Element("circle", ("class", "d-ink"), ("cx", scale.X(shown[0].X)), ("cy", Y(shown[0].Y)), ("r", 2.6));
            }
        }

        if (trace.End.Length > 0)
        {
            (double X, double Y) last = truth.Length > 0 ? truth[^1] : (scale.X(trace.Shown[^1][^1].X), Y(trace.Shown[^1][^1].Y));
            End(w, trace.End, last, scale, y, deep, hatch.Length > 0);
        }

        Scale(w, lanes, trace, scale, y, (low, Y(low)), (high, Y(high)));
    }

    /// <summary>The last value, over its line where there is room, else under it.</summary>
    private static void End(SvgWriter w, string words, (double X, double Y) last, ChartScale scale, double y, double deep, bool isTruth)
    {
        double beside = last.X - 6 - TextMeasure.Width(words, TextFace.Sans600, Size);
        double at = last.Y - 5 < y + 12 ? last.Y + 15 : last.Y - 5;
        w.Text(isTruth ? "ln-end ln-word-truth" : "ln-end", beside > scale.Left ? beside : last.X + 10, Math.Min(at, y + deep - 2), words);
    }

    private static void Scale(SvgWriter w, Timeline lanes, TimelineTrace trace, ChartScale scale, double y, (double Value, double Y) low, (double Value, double Y) high)
    {
        string unit = trace.Unit.Length > 0 ? "\u202F" + trace.Unit : "";
        (string top, string foot) = (ChartNumber.Text(high.Value, trace.Decimals) + unit, ChartNumber.Text(low.Value, trace.Decimals) + unit);
        if (!lanes.Scales)
        {
            return;
        }

        if (lanes.NamesAbove)
        {
            w.Text("ln-number", scale.Right, y - AboveRow + Size, $"{foot} … {top}", ("text-anchor", "end"));
        }
        else
        {
            w.Text("ln-number", scale.Right + 6, high.Y + 8, top);
            w.Text("ln-number", scale.Right + 6, low.Y + 1, foot);
        }
    }
}
