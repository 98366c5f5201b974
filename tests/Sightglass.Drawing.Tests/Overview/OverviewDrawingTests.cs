using System.Xml.Linq;
using Sightglass.Drawing.Overview;

namespace Sightglass.Drawing.Tests.Overview;

public sealed class OverviewDrawingTests
{
    [Fact]
    public void Render_TheDemoMachine_HasAStopForEveryGroundPlace()
    {
        XElement svg = XElement.Parse(OverviewDrawing.Render(DemoBooks.Curlew, new OverviewOptions { CurrentPlace = "cab" }));
        Assert.Equal(DemoBooks.Curlew.Places.Values.Count(p => p.OnGround), svg.Elements().Count(e => e.Attribute("data-place") is not null));
        XElement largest = svg.Elements().Where(e => e.Attribute("data-place") is not null).MaxBy(e => (double)e.Attribute("r")!)!;
        Assert.Equal("cab steps, right", (string)largest.Attribute("data-place")!);
    }

    [Fact]
    public void Render_AWindow_IsAFrameWithItsShareOfTheWidth()
    {
        XElement svg = XElement.Parse(OverviewDrawing.Render(DemoBooks.Curlew, new OverviewOptions { Window = (0.25, 0.75) }));
        double width = double.Parse(((string)svg.Attribute("viewBox")!).Split(' ')[2], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(width / 2, (double)svg.Elements().Single(e => (string?)e.Attribute("id") == "win").Attribute("width")!, 1);
    }
}
