using System.Collections.Immutable;
using System.Xml.Linq;
using Sightglass.Drawing.Charts;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Tests.Charts;

public sealed class ChartDrawingTests
{
    private static readonly ImmutableArray<(double X, double Y)> _reading = [.. Enumerable.Range(0, 100).Select(i => (i * 18.0, 80 - (i * 0.03)))];
    private static readonly ImmutableArray<(double X, double Y)> _truth = [.. Enumerable.Range(0, 100).Select(i => (i * 18.0, 80 - (i * 0.2)))];

    [Fact]
    public void Time_WithTruth_SaysTheWordAndIsDashed()
    {
        XElement svg = Parse(TimeChartDrawing.Render(Time()));
        Assert.Contains(Words(svg), t => t == "truth 60 %");
        Assert.Single(svg.Descendants(), e => (string?)e.Attribute("class") == "c-line c-truth");
    }

    [Fact]
    public void Time_ForATrainee_HoldsNoTruth() =>
        Assert.DoesNotContain("truth", TimeChartDrawing.Render(Time() with { Truth = false }), StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void Time_EventsOutsideTheStretch_AreLeftOut()
    {
        TimeChart chart = Time() with { Events = [new(-5, "before"), new(300, "within"), new(99999, "after")] };
        string svg = TimeChartDrawing.Render(chart);
        Assert.Contains("within", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("before", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("after", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Time_ManyPoints_AreThinnedButKeepTheirExtremes()
    {
        (double X, double Y)[] points = [.. Enumerable.Range(0, 100_000).Select(i => (i / 1000.0, i == 54_321 ? 9.0 : 1.0))];
        List<(double X, double Y)> thin = ChartLine.Thin(points, 100);
        Assert.True(thin.Count < 500);
        Assert.Contains(thin, p => p.Y == 9);
    }

    [Fact]
    public void Time_NoPoints_IsAnEmptyFrame() =>
        Assert.NotEmpty(Parse(TimeChartDrawing.Render(Time() with { Series = [] })).Elements());

    [Fact]
    public void Time_TwoLinesEndingTogether_NamesStandApart()
    {
        TimeChart chart = Time() with { Series = [new("one", _reading), new("two", _reading)] };
        double[] ys = [.. Parse(TimeChartDrawing.Render(chart)).Descendants().Where(e => (string?)e.Attribute("class") == "c-end").Select(e => (double)e.Attribute("y")!)];
        Assert.True(Math.Abs(ys[0] - ys[1]) >= 17.9);
    }

    [Fact]
    public void Gauge_ReadingAndTruthApart_SaysByHowMuchItMisleads()
    {
        TraceGauge gauge = new() { Title = "Fuel gauge", Reading = _reading, Truth = _truth, From = 0, To = 100, Unit = "%", Misleading = 5 };
        Assert.Contains("misleads by 17", Words(Parse(TraceGaugeDrawing.Render(gauge))));
        Assert.DoesNotContain(Words(Parse(TraceGaugeDrawing.Render(gauge with { Misleading = 30 }))), t => t.StartsWith("misleads", StringComparison.Ordinal));
    }

    [Fact]
    public void Gauge_ReadingNearTruth_SaysNothingOfIt()
    {
        TraceGauge gauge = new() { Title = "Fuel gauge", Reading = [(0, 50)], Truth = [(0, 52)], From = 0, To = 100, Unit = "%", Misleading = 5, Step = 2 };
        Assert.DoesNotContain("truth", string.Join(' ', Words(Parse(TraceGaugeDrawing.Render(gauge)))), StringComparison.Ordinal);
        Assert.Contains("truth 52 %", Words(Parse(TraceGaugeDrawing.Render(gauge with { Step = 1 }))));
    }

    // A picture has no text of its own for those who cannot see it: its label says all of it.
    [Fact]
    public void Gauge_ItsLabel_SaysWhatIsWritten()
    {
        TraceGauge gauge = new() { Title = "Fuel gauge", Reading = _reading, Truth = _truth, From = 0, To = 100, Unit = "%", Misleading = 5 };
        Assert.Equal("Fuel gauge: 77 %, truth 60 %, misleads by 17", (string?)Parse(TraceGaugeDrawing.Render(gauge)).Attribute("aria-label"));
        Assert.Equal("Fuel gauge: truth 60 %", (string?)Parse(TraceGaugeDrawing.Render(gauge with { Reading = [] })).Attribute("aria-label"));
    }

    [Fact]
    public void Plot_ChartsAndBands_StandOverOneScaleOfTime()
    {
        TimePlot plot = new()
        {
            Title = "A run",
            Charts = [Time(), Time() with { Unit = "kg", Series = [new("a much longer name than the others have", _reading)] }],
            Bands = [new("engine runs", [(0, "yes"), (900, "no"), (1200, "yes")]) { Heavy = "yes" }],
            Across = (0, 1800),
        };
        XElement svg = Parse(TimePlotDrawing.Render(plot, SvgOptions.Inline));
        Assert.Equal(2, svg.Descendants().Count(e => (string?)e.Attribute("class") == "c-bar"));
        double[] starts = [.. svg.Descendants().Where(e => (string?)e.Attribute("class") == "c-lab" && e.Value == "0:00").Select(e => (double)e.Attribute("x")!)];
        Assert.Equal(3, starts.Length);
        Assert.Single(starts.Distinct());
        Assert.Equal(svg.Descendants().Count(e => e.Attribute("id") is not null), svg.Descendants().Select(e => (string?)e.Attribute("id")).OfType<string>().Distinct().Count());
    }

    [Fact]
    public void Map_StoppedSafely_IsARingAndCountedApart()
    {
        RangeMap map = new("Map", new MapAxis("leak", 0, 40), new MapAxis("grade", 0, 1), [new(1, 0.5), new(2, 0.5, null, true), new(30, 0.2, 0)]) { Mechanisms = ["starves"] };
        XElement svg = Parse(RangeMapDrawing.Render(map));
        Assert.Contains("stopped safely, 1", Words(svg));
        Assert.Equal(2, svg.Descendants().Count(e => (string?)e.Attribute("class") == "c-stop"));
    }

    [Fact]
    public void Histogram_Values_AreAllCounted()
    {
        Histogram histogram = new("Time", [1, 2, 2, 3, 50, -4]);
        Assert.Equal(6, histogram.Counts(0, 10).Sum());
        Assert.Contains("median 2", HistogramDrawing.Render(histogram), StringComparison.Ordinal);
    }

    [Fact]
    public void Histogram_NoValues_SaysSo() => Assert.Contains("no cases", HistogramDrawing.Render(new Histogram("Time", [])), StringComparison.Ordinal);

    [Fact]
    public void Map_Points_HaveTheirMarksAndALegendWithCounts()
    {
        RangeMap map = new("Map", new MapAxis("leak, mm", 0, 40), new MapAxis("throttle", 0, 1) { Choices = ["idle", "notch 1"] }, [new(1, 0.5), new(30, 0.2, 0), new(31, 0.2, 0), new(9, 0.9, 2)])
        {
            Mechanisms = ["starves", "overflows", "misread"],
        };
        string[] words = Words(Parse(RangeMapDrawing.Render(map)));
        Assert.Contains("starves, 2", words);
        Assert.Contains("misread, 1", words);
        Assert.DoesNotContain(words, w => w.StartsWith("overflows", StringComparison.Ordinal));
        Assert.Contains("notch 1", words);
    }

    [Fact]
    public void Bound_ALowShare_WidensTheScale()
    {
        Assert.Contains("98", Words(Parse(new BoundScale(99.4, 99.1, 99).Render())));
        Assert.Contains("0", Words(Parse(new BoundScale(12, 8).Render())));
    }

    [Theory]
    [InlineData(Theme.Light)]
    [InlineData(Theme.Print)]
    public void Render_AllCharts_AreWellFormed(Theme theme)
    {
        SvgOptions svg = SvgOptions.Alone with { Theme = theme };
        Parse(TimeChartDrawing.Render(Time(), svg));
        Parse(HistogramDrawing.Render(new Histogram("<&>", [1, 2, 3]), svg));
        Parse(RankBars.Render("Ranges", [("leak & level", 0.6, "60 %"), ("<grade>", 0.1, "10 %")], svg: svg));
        Parse(new CaseLine("Case", _truth, [(10, "2"), (20, "3 waits")], (40, "starves")).Render(svg));
        Parse(new BoundScale(99, 98).Render(svg));
    }

    private static TimeChart Time() => new() { Title = "Fuel", Unit = "%", Series = [new("fuel gauge", _reading), new("", _truth, true)] };

    private static XElement Parse(string svg) => XElement.Parse(svg);

    private static string[] Words(XElement svg) => [.. svg.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value)];
}
