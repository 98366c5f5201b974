using System.Xml.Linq;
using Sightglass.Drawing.Lanes;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Tests;

public sealed class LaneChartDrawingTests
{
    private static readonly LaneChart s_chart = new()
    {
        Title = "What One went through",
        Now = 200,
        Lanes =
        [
            new LaneCurve("truth: tank", true, [(0, 0.5), (100, 0.4), (200, 0.2)], (0, 1), "20 %"),
            new LaneCurve("gauge", false, [(0, 0.5), (200, 0.5)], (0, 1), "50 %"),
            new LaneBars("truth: engine runs", true, [new(0, 120, "so", false)]),
            new LaneBars("place", false, [new(0, 80, "Cab", false), new(110, 200, "Tank <aft> & right", true)]),
            new LaneMarks("acts", [new(20, LaneMarkShape.Said, "asks"), new(40, LaneMarkShape.Touched, "turns"), new(60, LaneMarkShape.Broken, "fails"), new(70, LaneMarkShape.Bookmark, "")]),
        ],
        Events = [new(50, "a leak", true), new(55, "could be known", false)],
    };

    [Fact]
    public void Render_Lanes_TellsTruthByDashesHatchAndWord()
    {
        XElement svg = XElement.Parse(LaneChartDrawing.Render(s_chart, SvgOptions.Inline with { IdPrefix = "a-" }));
        Assert.Equal("What One went through", (string?)svg.Attribute("aria-label"));
        Assert.Single(Of(svg, "c-line c-truth"));
        Assert.Single(Of(svg, "c-line"));
        Assert.Single(Of(svg, "lane-so"));
        Assert.Contains(svg.Descendants("text"), t => t.Value.StartsWith("truth: tank", StringComparison.Ordinal) && ((string)t.Attribute("class")!).Contains("lane-truth", StringComparison.Ordinal));
        Assert.All(svg.Descendants().Select(e => (string?)e.Attribute("fill")).OfType<string>(), f => Assert.Equal("url(#a-hatch)", f));
        Assert.Single(Of(svg, "lane-event lane-hidden"));
    }

    /// <summary>Time runs to the right, stays stand one after the other, and nothing leaves the picture.</summary>
    [Fact]
    public void Render_Lanes_StayWithinTheirTime()
    {
        XElement svg = XElement.Parse(LaneChartDrawing.Render(s_chart));
        double[] bars = [.. svg.Descendants("rect").Where(r => ((string)r.Attribute("class")!).StartsWith("lane-bar", StringComparison.Ordinal)).Select(r => (double)r.Attribute("x")!)];
        Assert.Equal(2, bars.Length);
        Assert.True(bars[0] < bars[1]);
        Assert.All(svg.Descendants("rect"), r => Assert.True((double)r.Attribute("x")! + (double)r.Attribute("width")! <= s_chart.Width));
        Assert.Single(svg.Descendants("rect"), r => (string?)r.Attribute("class") == "lane-bar lane-here");
    }

    /// <summary>Words of two moments that lie close do not cover each other: the second's are left to the pointer.</summary>
    [Fact]
    public void Render_EventsThatLieClose_WritesTheFirst()
    {
        XElement svg = XElement.Parse(LaneChartDrawing.Render(s_chart));
        Assert.Contains(svg.Descendants("text"), t => t.Value == "a leak");
        Assert.DoesNotContain(svg.Descendants("text"), t => t.Value == "could be known");
        Assert.Contains(svg.Descendants("title"), t => t.Value == "could be known");
    }

    [Fact]
    public void Render_NothingYet_IsAnEmptyMinute() =>
        Assert.Contains("1:00", XElement.Parse(LaneChartDrawing.Render(new() { Title = "x", Now = 0 })).Value, StringComparison.Ordinal);

    [Fact]
    public void Vessels_OfShares_AreHatchedToTheirLevel()
    {
        XElement svg = XElement.Parse(VesselDrawing.Render([new("Forward compartment", 0.75, "75 %"), new("Aft", 1.4, "140 %"), new("Centre", -1, "0 %")], "Truth"));
        double[] heights = [.. svg.Descendants("rect").Select(r => (double)r.Attribute("height")!)];
        Assert.Equal([74 * 0.75, 74.0, 0.0], heights);
        Assert.Equal(3, Of(svg, "truth-line").Count());
    }

    private static IEnumerable<XElement> Of(XElement svg, string style) => svg.Descendants().Where(e => (string?)e.Attribute("class") == style);
}
