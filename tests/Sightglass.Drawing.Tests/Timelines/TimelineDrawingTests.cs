using System.Globalization;
using System.Xml.Linq;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Timelines;

namespace Sightglass.Drawing.Tests.Timelines;

public sealed class TimelineDrawingTests
{
    private static readonly Timeline s_timeline = new()
    {
        Title = "What happened",
        Across = (0, 600),
        Moments = [new(300, "decided here", IsBroken: true), new(290, "could be known")],
        Lanes =
        [
            new("place") { Bars = [new(0, 100, "Cab"), new(100, 130, "to the tank", TimelineBarSort.Way), new(130, 600, "Tank aft, right")] },
            new("hands") { Marks = [new(150, TimelineMarkSort.Act, "A hand put to it.", "Aft supply valve"), new(156, TimelineMarkSort.Act, "A hand put to it.", "Aft return valve")] },
            new("truth: level", IsTruth: true) { Trace = new([(0, 80), (600, 20)], [[(130, 70), (300, 50)]], "cm", 0) },
        ],
    };

    /// <summary>A page lays its slider over the axis: the first second stands at its left end, the last at its right.</summary>
    [Theory]
    [InlineData(1240, false)]
    [InlineData(356, true)]
    public void Render_OfLanes_BeginsAndEndsWhereItSays(double width, bool narrow)
    {
        Timeline timeline = s_timeline with { Width = width, NamesAbove = narrow };
        (double left, double right) = TimelineDrawing.Ends(timeline);
        XElement drawing = XElement.Parse(TimelineDrawing.Render(timeline));
        double[] boxes = [.. drawing.Descendants("path").Where(p => (string?)p.Attribute("class") == "ln-box").SelectMany(p => Numbers(p.Attribute("d")!.Value))];
        Assert.Equal(left, boxes[0], 1);
        Assert.Contains(boxes, x => Math.Abs(x - right) < 0.1);
        Assert.Equal(FormattableString.Invariant($"0 0 {width} {TimelineDrawing.Height(timeline)}"), drawing.Attribute("viewBox")!.Value);
    }

    /// <summary>Words give way: those of the moment that is named first stay, and a mark close before another has none.</summary>
    [Fact]
    public void Render_WhereRoomIsShort_LeavesWordsOut()
    {
        string[] words = [.. XElement.Parse(TimelineDrawing.Render(s_timeline)).Descendants("text").Select(t => t.Value)];
        Assert.Contains("decided here", words);
        Assert.DoesNotContain("could be known", words);
        Assert.DoesNotContain("Aft supply valve", words);
        Assert.Contains("Aft return valve", words);
        Assert.Contains("80\u202Fcm", words);
    }

    /// <summary>What is known to the instructor alone says so and is dashed; what was read is not.</summary>
    [Fact]
    public void Render_OfTruth_IsDashedBesideWhatWasRead()
    {
        XElement drawing = XElement.Parse(TimelineDrawing.Render(s_timeline));
        Assert.Single(drawing.Descendants("path"), p => (string?)p.Attribute("class") == "c-line c-truth");
        Assert.Single(drawing.Descendants("path"), p => (string?)p.Attribute("class") == "ln-shown");
        Assert.Contains(drawing.Descendants("text"), t => (string?)t.Attribute("class") == "ln-name ln-name-truth" && t.Value.StartsWith("truth", StringComparison.Ordinal));
    }

    private static readonly Timeline s_live = new()
    {
        Title = "What One goes through",
        Across = (0, 212),
        Now = 200,
        Width = 560,
        Names = 96,
        Scales = false,
        Moments = [new(50, "a leak", IsTruth: true), new(55, "could be known")],
        Lanes =
        [
            new("truth: tank", IsTruth: true) { Trace = new([(0, 0.5), (100, 0.4), (200, 0.2)], [], "", 0) { Scale = (0, 1), End = "20 %" } },
            new("gauge") { Trace = new([], [[(0, 0.5), (200, 0.5)]], "", 0) { Scale = (0, 1), End = "50 %" } },
            new("truth: engine runs", IsTruth: true) { Bars = [new(0, 120, "so", TimelineBarSort.Truth)] },
            new("place") { Bars = [new(0, 80, "Cab"), new(80, 110, "on the way", TimelineBarSort.Way), new(110, 200, "Tank <aft> & right", TimelineBarSort.Here)] },
            new("acts") { Marks = [new(20, TimelineMarkSort.Said, "asks"), new(40, TimelineMarkSort.Act, "turns"), new(60, TimelineMarkSort.Broken, "fails"), new(70, TimelineMarkSort.Bookmark, "")] },
        ],
    };

    /// <summary>Under way: truth by dashes, hatch and word; the last values beside their lines, no numbers at the side; where somebody stands is lit; a line stands at now.</summary>
    [Fact]
    public void Render_UnderWay_TellsTruthAndNow()
    {
        XElement svg = XElement.Parse(TimelineDrawing.Render(s_live, SvgOptions.Inline with { IdPrefix = "a-" }));
        Assert.Single(Of(svg, "c-line c-truth"));
        Assert.Single(Of(svg, "ln-so"));
        Assert.Single(Of(svg, "ln-box ln-here"));
        Assert.Single(Of(svg, "ln-now"));
        Assert.Single(Of(svg, "ln-moment ln-moment-truth"));
        Assert.All(svg.Descendants().Select(e => (string?)e.Attribute("fill")).OfType<string>(), f => Assert.Equal("url(#a-hatch)", f));
        Assert.Equal(["20 %", "50 %"], svg.Descendants("text").Where(t => ((string)t.Attribute("class")!).StartsWith("ln-end", StringComparison.Ordinal) && t.Value.Contains('%', StringComparison.Ordinal)).Select(t => t.Value));
        Assert.Empty(Of(svg, "ln-number"));
        Assert.DoesNotContain(svg.Descendants("text"), t => t.Value == "could be known"); // its words would cover those before: the pointer finds them
        Assert.Contains(svg.Descendants("title"), t => t.Value == "could be known");
    }

    [Fact]
    public void Render_NothingYet_IsAnEmptyMinute() =>
        Assert.Contains("1:00", XElement.Parse(TimelineDrawing.Render(s_live with { Across = (0, 60), Now = 0, Lanes = [], Moments = [] })).Value, StringComparison.Ordinal);

    private static IEnumerable<XElement> Of(XElement svg, string style) => svg.Descendants().Where(e => (string?)e.Attribute("class") == style);

    /// <summary>The x at which a rectangle begins and ends.</summary>
    private static IEnumerable<double> Numbers(string path)
    {
        string[] parts = path[1..].Split('H');
        yield return double.Parse(parts[0].Split(' ')[0], CultureInfo.InvariantCulture);
        yield return double.Parse(parts[1].Split('V')[0], CultureInfo.InvariantCulture);
    }
}
