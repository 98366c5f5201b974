using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using Sightglass.Drawing.Charts;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Tests.Charts;

/// <summary>One value over another, with a mark.</summary>
public sealed class CurveChartTests
{
    /// <summary>The ring stands on the curve, dashed lines lead from it to both scales, and the picture says it in words.</summary>
    [Fact]
    public void Render_Mark_StandsOnTheCurve()
    {
        XElement svg = Parse(Chart(x => x * x, 0, 10) with { Mark = (5, 25) });
        (double x, double y) = Circle(svg, "c-share");
        double[] curve = Numbers(Of(svg, "c-line").Single());
        int at = Enumerable.Range(0, curve.Length / 2).MinBy(i => Math.Abs(curve[2 * i] - x));
        Assert.Equal(curve[(2 * at) + 1], y, 0.6);
        double[] lead = Numbers(Of(svg, "c-asked").Single());
        Assert.Contains(lead, v => Math.Abs(v - x) < 0.06);
        Assert.Contains(lead, v => Math.Abs(v - y) < 0.06);
        Assert.Equal("up, m over across, s: at 5 s it is 25 m", (string)svg.Attribute("aria-label")!);
    }

    /// <summary>Where there is no value the curve has a gap; beyond the frame it is cut at the edge, not drawn along it.</summary>
    [Fact]
    public void Render_GapAndBeyond_AreCut()
    {
        XElement gap = Parse(Chart(x => x is > 4 and < 6 ? double.NaN : x, 0, 10));
        Assert.Equal(2, Of(gap, "c-line").Count());
        XElement high = Parse(Chart(x => 10 / x, 0.1, 10) with { Mark = (5, 2), Up = (0, 8) });
        double[] ys = [.. Numbers(Of(high, "c-line").Single()).Where((_, i) => i % 2 == 1)];
        Assert.Equal(ys.Min(), ys[0]);
        Assert.Equal(ys.Length, ys.Distinct().Count());
    }

    [Fact]
    public void Render_Counted_HasADotForEach()
    {
        XElement svg = Parse(Chart(x => x, 1, 6) with { IsCounted = true, Points = [.. Enumerable.Range(1, 6).Select(x => ((double)x, (double)x))], Mark = (4, 4), Up = (1, 6) });
        Assert.Equal(6, svg.Descendants().Count(e => (string?)e.Attribute("class") == "c-on"));
        Assert.Empty(Of(svg, "c-line"));
    }

    /// <summary>Wherever the mark is, its words stand within the picture and not on the curve.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(9.5)]
    [InlineData(10)]
    public void Render_Words_StandClearOfTheCurve(double at)
    {
        foreach (Func<double, double> f in new Func<double, double>[] { x => x * x, x => 100 - (x * x), x => 50, x => x })
        {
            CurveChart chart = Chart(f, 0, 10) with { Mark = (at, f(at)) };
            XElement svg = Parse(chart);
            XElement words = svg.Descendants().Single(e => ((string?)e.Attribute("class"))?.StartsWith("c-end", StringComparison.Ordinal) == true);
            (double x, double y) = (Number(words, "x"), Number(words, "y"));
            Assert.InRange(x, 0, chart.Width - 20);
            Assert.InRange(y, 15, chart.Height - 40);
            double[] curve = Numbers(Of(svg, "c-line").Single());
            for (int i = 0; i < curve.Length; i += 2)
            {
                Assert.False(curve[i] > x && curve[i] < x + 25 && Math.Abs(curve[i + 1] - (y - 5)) < 5, $"words at ({x}, {y}) on the curve");
            }
        }
    }

    private static CurveChart Chart(Func<double, double> f, double from, double to)
    {
        ImmutableArray<(double X, double Y)> points = [.. Enumerable.Range(0, 121).Select(i => from + ((to - from) * i / 120)).Select(x => (x, f(x)))];
        double[] ys = [.. points.Select(p => p.Y).Where(double.IsFinite)];
        return new()
        {
            Across = "across, s",
            Upwards = "up, m",
            Points = points,
            Mark = (from, f(from)),
            MarkWords = ("5 s", "25 m"),
            Up = (ys.Min(), ys.Max() > ys.Min() ? ys.Max() : ys.Min() + 1),
            Width = 480,
            Height = 270,
        };
    }

    private static XElement Parse(CurveChart chart) => XElement.Parse(CurveChartDrawing.Render(chart, SvgOptions.Inline));

    private static IEnumerable<string> Of(XElement svg, string style) => svg.Descendants().Where(e => (string?)e.Attribute("class") == style).Select(e => (string)e.Attribute("d")!);

    private static (double X, double Y) Circle(XElement svg, string style)
    {
        XElement circle = svg.Descendants().Single(e => (string?)e.Attribute("class") == style);
        return (Number(circle, "cx"), Number(circle, "cy"));
    }

    private static double Number(XElement e, string name) => double.Parse((string)e.Attribute(name)!, CultureInfo.InvariantCulture);

    private static double[] Numbers(string path) => [.. path.Split(['M', 'L', 'H', 'V', ' ', ','], StringSplitOptions.RemoveEmptyEntries).Select(v => double.Parse(v, CultureInfo.InvariantCulture))];
}
