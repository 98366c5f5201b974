using System.Xml.Linq;
using Sightglass.Drawing.Vessels;

namespace Sightglass.Drawing.Tests;

public sealed class VesselDrawingTests
{
    [Fact]
    public void Render_OfShares_AreHatchedToTheirLevel()
    {
        XElement svg = XElement.Parse(VesselDrawing.Render([new("Forward compartment", 0.75, "75 %"), new("Aft", 1.4, "140 %"), new("Centre", -1, "0 %")], "Truth"));
        double[] heights = [.. svg.Descendants("rect").Select(r => (double)r.Attribute("height")!)];
        Assert.Equal([74 * 0.75, 74.0, 0.0], heights);
        Assert.Equal(3, svg.Descendants().Count(e => (string?)e.Attribute("class") == "truth-line"));
    }
}
