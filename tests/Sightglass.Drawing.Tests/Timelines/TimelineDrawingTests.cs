using System.Globalization;
using System.Xml.Linq;
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

    /// <summary>The x at which a rectangle begins and ends.</summary>
    private static IEnumerable<double> Numbers(string path)
    {
        string[] parts = path[1..].Split('H');
        yield return double.Parse(parts[0].Split(' ')[0], CultureInfo.InvariantCulture);
        yield return double.Parse(parts[1].Split('V')[0], CultureInfo.InvariantCulture);
    }
}
