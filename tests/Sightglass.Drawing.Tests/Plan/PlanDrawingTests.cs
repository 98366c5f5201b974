using System.Xml.Linq;
using Sightglass.Drawing.Plan;

namespace Sightglass.Drawing.Tests.Plan;

public sealed class PlanDrawingTests
{
    [Fact]
    public void Render_TheDemoMachine_HasEveryPlaceInsideTheDrawing()
    {
        XElement svg = XElement.Parse(PlanDrawing.Render(DemoBooks.Curlew, new PlanOptions { CurrentPlace = "fuel panel, right" }));
        double height = double.Parse(((string)svg.Attribute("viewBox")!).Split(' ')[3], System.Globalization.CultureInfo.InvariantCulture);
        XElement[] stops = [.. svg.Descendants().Where(e => ((string?)e.Attribute("class"))?.StartsWith("plan-stop", StringComparison.Ordinal) == true)];
        Assert.Equal(DemoBooks.Curlew.Places.Count, stops.Length);
        Assert.All(stops, s => Assert.InRange((double)s.Attribute("cx")!, 0, 336));
        Assert.All(stops, s => Assert.InRange((double)s.Attribute("cy")!, 0, height));
    }

    [Fact]
    public void Render_SeenFromAbove_TheRightSideIsUpWithTheFrontToTheLeft()
    {
        XElement svg = XElement.Parse(PlanDrawing.Render(DemoBooks.Curlew));
        double Y(string place) => (double)svg.Elements().Single(e => (string?)e.Attribute("data-place") == place).Elements().Last().Attribute("cy")!;
        double X(string place) => (double)svg.Elements().Single(e => (string?)e.Attribute("data-place") == place).Elements().Last().Attribute("cx")!;
        Assert.True(Y("fuel panel, right") < Y("fuel panel, left"));
        Assert.True(X("front coupler") < X("rear coupler"));
    }

    [Fact]
    public void Render_Inside_TheWayWalkedEndsAtTheEntry()
    {
        string outside = PlanDrawing.Render(DemoBooks.Curlew, new PlanOptions { CurrentPlace = "machinery steps, right" });
        string inside = PlanDrawing.Render(DemoBooks.Curlew, new PlanOptions { CurrentPlace = "engine room, rear" });
        Assert.Equal(Walked(outside), Walked(inside));
    }

    [Fact]
    public void Render_ABookWithoutPlaces_IsTheMachineAlone() =>
        Assert.DoesNotContain("plan-stop", PlanDrawing.Render(DemoBooks.Smallest), StringComparison.Ordinal);

    private static string Walked(string svg) =>
        (string)XElement.Parse(svg).Elements().Single(e => (string?)e.Attribute("class") == "plan-walked").Attribute("d")!;
}
