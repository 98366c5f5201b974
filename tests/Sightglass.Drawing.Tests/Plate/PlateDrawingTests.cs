using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Sightglass.Book.Model;
using Sightglass.Drawing.Plate;
using Sightglass.Drawing.Strip;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Tests.Plate;

/// <summary>A plate holds what its window shows of the side, and little more. By arithmetic.</summary>
public sealed partial class PlateDrawingTests
{
    private const string Train = "local train";

    private static readonly ClassBook s_train = DemoBooks.Curlew.For(DemoBooks.Curlew.RoadNumbers.Keys.First()).Coupled(Train);

    public static TheoryData<string> Places => [.. s_train.Places.Keys];

    /// <summary>Every shape of the whole side with a point in the window is on the plate, stroke by stroke; the plate of a train is no larger than its window asks for.</summary>
    [Theory]
    [MemberData(nameof(Places))]
    public void Render_AtAPlace_HoldsEveryShapeInView(string place)
    {
        XElement svg = XElement.Parse(PlateDrawing.Render(s_train, place, []));
        double[] view = [.. svg.Attribute("viewBox")!.Value.Split(' ').Select(Number)];
        (double left, double right) = (view[0], view[0] + view[2]);
        HashSet<string> there = [.. svg.Descendants().Where(e => e.Name.LocalName == "path").Select(e => (string)e.Attribute("d")!)];
        StripSide side = PlateGround.Of(s_train)[PlateGround.Of(s_train).Route.Find(place)!.Side].Side;
        SvgWriter all = SvgDocument.Begin(SvgOptions.Inline, "all", 0, 0, 1, 1, "all");
        SilhouetteDrawing.Draw(all, side);
        int outside = 0;
        foreach (string path in XElement.Parse(SvgDocument.End(all)).Descendants().Where(e => e.Name.LocalName == "path").Select(e => (string)e.Attribute("d")!))
        {
            double[] along = [.. Points().Matches(Arcs().Replace(path, "L")).Select(m => Number(m.Groups[1].Value))];
            bool isIn = along.Any(x => x >= left && x <= right) || (along.Length > 0 && along.Min() < left && along.Max() > right);
            Assert.True(!isIn || there.Contains(path), $"{path} is missing at {place}");
            outside += isIn || there.Contains(path) ? 0 : 1;
        }

        Assert.True(side.Figures.Length == 1 || outside > there.Count, $"{outside} left out, {there.Count} drawn");
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    /// <summary>What stands before the end of an arc.</summary>
    [GeneratedRegex(@"A\S+ \S+ \S+ [01] [01] ")]
    private static partial Regex Arcs();

    /// <summary>The x of each point that is written as x and y.</summary>
    [GeneratedRegex(@"(-?\d+(?:\.\d+)?)[ ,]-?\d+(?:\.\d+)?")]
    private static partial Regex Points();
}
