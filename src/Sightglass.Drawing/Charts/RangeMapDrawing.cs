using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Charts;

/// <summary>Draws a map of cases: a point where it ended well, a mark by mechanism where it failed.</summary>
public static class RangeMapDrawing
{
    private const double LegendPitch = 20;

    /// <summary>The map as SVG, with its legend below.</summary>
    public static string Render(RangeMap map, SvgOptions? svg = null)
    {
        svg ??= SvgOptions.Inline;
        int[] seen = [.. map.Points.Where(p => p.Mechanism is not null).Select(p => p.Mechanism!.Value).Distinct().Order()];
        int stopped = map.Points.Count(p => p.Stopped);
        double legend = map.Mechanisms.IsEmpty && stopped == 0 ? 0 : ((seen.Length + (stopped > 0 ? 1 : 0)) * LegendPitch) + 8;
        SvgWriter w = SvgDocument.Begin(svg, "chart", 0, 0, map.Width, map.Height + legend, map.Title);
        double left = 34 + Ticks(map.Up, 5).Select(t => TextMeasure.Width(t.Words, TextFace.Sans400, 13)).DefaultIfEmpty(0).Max();
        ChartScale scale = new(map.Across.From, map.Across.To, map.Up.From, map.Up.To, left, map.Width - 10, 10, map.Height - 42);
        w.Element("rect", ("class", "c-field"), ("x", scale.Left), ("y", scale.High), ("width", scale.Right - scale.Left), ("height", scale.Low - scale.High));
        Beyond(w, map, scale, svg.IdPrefix);
        w.Path("c-dots", Dots(map, scale));
        foreach (MapPoint point in map.Points.Where(p => p.Stopped))
        {
            Ring(w, scale.X(point.X), scale.Y(point.Y));
        }

        foreach (MapPoint point in map.Points.Where(p => p.Mechanism is not null))
        {
            MechanismMark.Draw(w, point.Mechanism!.Value, scale.X(point.X), scale.Y(point.Y));
        }

        Axes(w, map, scale);
        Legend(w, map, seen, stopped, scale.Left);
        return SvgDocument.End(w);
    }

    private static void Beyond(SvgWriter w, RangeMap map, ChartScale scale, string prefix)
    {
        if (map.Bounds.IsEmpty)
        {
            return;
        }

        w.Open("defs").Open("pattern", ("id", prefix + "fails"), ("width", 6), ("height", 6), ("patternUnits", "userSpaceOnUse"), ("patternTransform", "rotate(45)"))
            .Element("rect", ("class", "bad-wash"), ("width", 6), ("height", 6)).Element("path", ("class", "bad-hatch"), ("d", "M0 0V6")).Close().Close();
        foreach ((ImmutableArray<(double X, double Y)> line, ImmutableArray<(double X, double Y)> beyond) in map.Bounds)
        {
            w.Path("c-beyond", ChartLine.Path(line.Concat(beyond).Select(p => (scale.X(p.X), scale.Y(p.Y)))).Close(), ("fill", $"url(#{prefix}fails)"));
            w.Path("c-bound", ChartLine.Path(line.Select(p => (scale.X(p.X), scale.Y(p.Y)))));
        }
    }

    private static SvgPath Dots(RangeMap map, ChartScale scale)
    {
        SvgPath dots = new();
        foreach (MapPoint point in map.Points.Where(p => p.Mechanism is null && !p.Stopped))
        {
            double x = scale.X(point.X);
            dots.Segment(x, scale.Y(point.Y), x + 0.01, scale.Y(point.Y));
        }

        return dots;
    }

    private static void Axes(SvgWriter w, RangeMap map, ChartScale scale)
    {
        w.Path("c-axis", new SvgPath().Polyline([(scale.Left, scale.High), (scale.Left, scale.Low), (scale.Right, scale.Low)]));
        foreach ((double at, string words) in Ticks(map.Across, (int)((scale.Right - scale.Left) / 90) + 1))
        {
            w.Path("c-axis", new SvgPath().Segment(scale.X(at), scale.Low, scale.X(at), scale.Low + 5)).Text("c-lab", scale.X(at), scale.Low + 18, words, ("text-anchor", "middle"));
        }

        foreach ((double at, string words) in Ticks(map.Up, 5))
        {
            w.Path("c-axis", new SvgPath().Segment(scale.Left - 5, scale.Y(at), scale.Left, scale.Y(at))).Text("c-lab", scale.Left - 8, scale.Y(at) + 4.5, words, ("text-anchor", "end"));
        }

        w.Text("c-words", (scale.Left + scale.Right) / 2, map.Height - 6, map.Across.Words, ("text-anchor", "middle"));
        w.Open("text", ("class", "c-words"), ("transform", $"translate(13 {SvgNumber.Format((scale.High + scale.Low) / 2)}) rotate(-90)"), ("text-anchor", "middle")).Content(map.Up.Words).Close();
    }

    private static IEnumerable<(double At, string Words)> Ticks(MapAxis axis, int most)
    {
        if (!axis.Choices.IsEmpty)
        {
            double strip = (axis.To - axis.From) / axis.Choices.Length;
            return axis.Choices.Select((c, i) => (axis.From + (strip * (i + 0.5)), c));
        }

        int decimals = ChartNumber.DecimalsFor(ChartTicks.RoundStep(axis.To - axis.From, most));
        return ChartTicks.Round(axis.From, axis.To, most).Select(t => (t, ChartNumber.Text(t, decimals)));
    }

    private static void Ring(SvgWriter w, double x, double y) => w.Element("circle", ("class", "c-stop"), ("cx", x), ("cy", y), ("r", 3));

    private static void Legend(SvgWriter w, RangeMap map, int[] seen, int stopped, double left)
    {
        double y = map.Height + 10;
        foreach (int mechanism in map.Mechanisms.IsEmpty ? [] : seen)
        {
            int count = map.Points.Count(p => p.Mechanism == mechanism);
            string name = mechanism < map.Mechanisms.Length ? map.Mechanisms[mechanism] : Say.With($"mechanism {mechanism + 1}");
            MechanismMark.Draw(w, mechanism, left + 6, y);
            w.Text("c-words", left + 20, y + 4.5, $"{name}, {count}");
            y += LegendPitch;
        }

        if (stopped > 0)
        {
            Ring(w, left + 6, y);
            w.Text("c-words", left + 20, y + 4.5, Say.With($"stopped safely, {stopped}"));
        }
    }
}
