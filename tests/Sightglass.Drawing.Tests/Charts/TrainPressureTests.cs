using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using Sightglass.Drawing.Charts;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Tests.Charts;

/// <summary>The pressure along a train as one picture.</summary>
public sealed class TrainPressureTests
{
    [Fact]
    public void Choose_OfManyMoments_TheFirstTheLastAndEqualChanges()
    {
        TrainPressure train = Emergency(20) with { Curves = 6 };
        ImmutableArray<int> chosen = CurveChoice.Of(train);
        Assert.InRange(chosen.Length, 4, 6);
        Assert.Equal((0, train.Moments.Length - 1), (chosen[0], chosen[^1]));
        Assert.Equal(chosen.Distinct().Order(), chosen);
    }

    [Fact]
    public void Choose_WhereNothingChanges_One()
    {
        TrainPressure train = Of(5, [0, 1, 2], (_, _) => 110);
        Assert.Equal([0], CurveChoice.Of(train));
        Assert.Empty(CurveChoice.Of(train with { Moments = [] }));
    }

    /// <summary>Each curve has its time on it, no name stands on another name or within 9 px of a line that is not its own.</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(8)]
    [InlineData(50)]
    public void Render_ATrain_NamesStandClear(int cars)
    {
        XElement svg = Parse(Emergency(cars));
        (double X, double Y, string Words)[] names = [.. Of(svg, "c-lab c-on").Select(e => (Number(e, "x"), Number(e, "y"), e.Value))];
        int curves = Of(svg, "c-curve").Count();
        Assert.InRange(curves, 4, 8);
        Assert.InRange(names.Length, curves - 2, curves);
        Assert.Equal(names.Length, names.Select(n => n.Words).Distinct().Count());
        foreach ((double x, double y, string words) in names)
        {
            Assert.DoesNotContain(names, n => n.Words != words && Math.Abs(n.X - x) < 34 && Math.Abs(n.Y - y) < 16);
        }
    }

    [Fact]
    public void Render_ATrain_CurvesGoThroughTheirPressures()
    {
        XElement svg = Parse(Of(1, [0, 10], (t, x) => t == 0 ? 100 : x < 15 ? 60 : 80));
        double[][] heights = [.. Of(svg, "c-curve").Select(e => Numbers((string)e.Attribute("d")!))];
        Assert.Equal(2, heights.Length);
        Assert.Equal(heights[0][1], heights[0][^1]);
        Assert.True(heights[1][1] > heights[1][^1] && heights[1][^1] > heights[0][1], "lower pressure stands lower");
    }

    [Fact]
    public void Render_Vehicles_AreDrawnInOrderWithNamesThatFit()
    {
        XElement svg = Parse(Emergency(6));
        Assert.Equal(7, svg.Descendants().Count(e => ((string?)e.Attribute("class"))?.StartsWith("c-vehicle", StringComparison.Ordinal) == true));
        Assert.Contains(svg.Descendants(), e => (string?)e.Attribute("class") == "c-lab c-in" && e.Value == "unit");
        Assert.DoesNotContain(Parse(Emergency(150)).Descendants(), e => (string?)e.Attribute("class") == "c-lab" && e.Value == "car 3");
    }

    /// <summary>Nothing leaves the picture, and it is told to who cannot see it, whatever stands in it.</summary>
    [Fact]
    public void Render_HolesAndOddNumbers_StaysInThePicture()
    {
        XElement svg = Parse(Of(4, [0, 1, 2], (t, x) => t == 1 ? double.NaN : x > 60 ? double.PositiveInfinity : 1e6));
        Assert.DoesNotContain("NaN", svg.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", svg.ToString(), StringComparison.Ordinal);
        Assert.Equal("Brake pipe <&>: after 2 s 1000000 psi at the head, 1000000 psi at the rear", ((string)svg.Attribute("aria-label")!).Replace("\u202F", "", StringComparison.Ordinal));
        Assert.EndsWith("nothing was measured", (string)Parse(Of(4, [], (_, _) => 0)).Attribute("aria-label")!, StringComparison.Ordinal);
    }

    /// <summary>An emergency let out at the head: a front of 280 m/s (common practice for what an emergency travels at, no source), behind it the pressure falls.</summary>
    private static TrainPressure Emergency(int cars) =>
        Of(cars, [.. Enumerable.Range(0, 101).Select(i => i * 0.1)], (t, x) => 110 * Math.Exp(-Math.Max(0, t - (x / 280)) / 1.5)) with { Lead = "Let out at the head." };

    private static TrainPressure Of(int cars, double[] times, Func<double, double, double> pressure)
    {
        ImmutableArray<TrainVehicle> vehicles = [new("unit", 0, 20, true), .. Enumerable.Range(1, cars).Select(i => new TrainVehicle(string.Create(CultureInfo.InvariantCulture, $"car {i}"), 20 + ((i - 1) * 26), 20 + (i * 26)))];
        ImmutableArray<double> positions = [.. vehicles.Select(v => (v.From + v.To) / 2)];
        return new()
        {
            Title = "Brake pipe <&>",
            Positions = positions,
            Moments = [.. times.Select(t => (t, positions.Select(x => pressure(t, x)).ToImmutableArray()))],
            Vehicles = vehicles,
        };
    }

    private static XElement Parse(TrainPressure train) => XElement.Parse(TrainPressureDrawing.Render(train, SvgOptions.Inline));

    private static IEnumerable<XElement> Of(XElement svg, string style) => svg.Descendants().Where(e => (string?)e.Attribute("class") == style);

    private static double Number(XElement e, string name) => double.Parse((string)e.Attribute(name)!, CultureInfo.InvariantCulture);

    private static double[] Numbers(string d) =>
        [.. d.Split(['M', 'L', ' '], StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
}
