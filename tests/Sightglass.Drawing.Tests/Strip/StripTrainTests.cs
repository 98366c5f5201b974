using System.Xml.Linq;
using Sightglass.Book.Model;
using Sightglass.Drawing.Labels;
using Sightglass.Drawing.Overview;
using Sightglass.Drawing.Plan;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Strip;
using Sightglass.Drawing.Walk;

namespace Sightglass.Drawing.Tests.Strip;

/// <summary>The walk along a train: every vehicle where it stands and as it faces, names only where the person is.</summary>
public sealed class StripTrainTests
{
    private static readonly ClassBook s_mail = DemoBooks.Curlew.Coupled("night mail");

    public static TheoryData<string> SomePlaces => ["cab steps, right", "rear coupler", "A coupler of car 3", "vestibule of car 2", "brake equipment, right of car 5", "B end, left of car 6", "A truck, left of car 1"];

    [Fact]
    public void Of_ATrain_ShowsEveryVehicleBetweenItsEnds()
    {
        StripLayout layout = StripLayout.Of(s_mail);
        foreach (StripSide side in layout.Sides.Where(s => s.Side is Side.Right or Side.Left))
        {
            Vehicle[] vehicles = [.. s_mail.Vehicles.OrderBy(v => v.From)];
            Assert.Equal(vehicles.Length, side.Figures.Length);
            Assert.All(vehicles.Zip(side.Figures), p =>
            {
                double[] ends = [side.Map.X(p.First.From), side.Map.X(p.First.To)];
                double[] drawn = [.. p.Second.Shapes.Where(s => s.Text is null).SelectMany(s => new[] { s.Path.Box()!.Value.Left, s.Path.Box()!.Value.Right }).Select(p.Second.Map.X)];
                Assert.InRange(drawn.Min(), ends.Min() - 0.01, ends.Max());
                Assert.InRange(drawn.Max(), ends.Min(), ends.Max() + 0.01);
            });
            Assert.True(side.Figures.Max(f => f.Shapes.Length) > 20, "silhouettes, not boxes");
        }
    }

    /// <summary>A turned vehicle shows its other side, its front at its other end, and its front end is the rear of the train.</summary>
    [Fact]
    public void Of_ATurnedVehicle_ShowsItsOtherSideAndEnd()
    {
        ClassBook train = DemoBooks.Curlew.Coupled("double-headed express");
        Vehicle turned = train.Vehicles.Single(v => v.IsTurned);
        StripLayout layout = StripLayout.Of(train);
        StripSide right = layout.Sides.Single(s => s.Side == Side.Right);
        StripFigure own = right.Figures[0], other = right.Figures[1];
        Assert.Equal(right.Map.X(turned.To), other.Map.X(0), 6);
        Assert.Equal(right.Map.X(turned.From), other.Map.X(turned.To - turned.From), 6);
        Assert.Equal(Own(Side.Right), own.Shapes.Length);
        Assert.Equal(Own(Side.Left), other.Shapes.Length);
        Assert.Equal(["4101"], Numbers(StripLayout.Of(DemoBooks.Curlew.For("4101").Coupled("double-headed express"))));
        StripSide rear = StripLayout.Of(DemoBooks.Curlew.Coupled("night mail")).Sides.Single(s => s.Side == Side.Rear);
        Assert.Equal(!rear.Map.Mirrored, Assert.Single(rear.Figures).Map.Mirrored);

        int Own(Side side) => DemoBooks.Curlew.Silhouettes.Where(s => s.Side == side).Sum(s => s.Shapes.Length);
        static string[] Numbers(StripLayout l) => [.. l.Sides.Single(s => s.Side == Side.Right).Figures.SelectMany(f => f.Shapes.Where(s => s.Text is { Length: 4 })).Select(s => s.Text!)];
    }

    [Theory]
    [MemberData(nameof(SomePlaces))]
    public void Of_ATrain_NamesStandApartAndAreOfTheVehicleWhereThePersonIs(string place)
    {
        StripLayout layout = StripLayout.Of(s_mail, new StripOptions { Scale = 38, MostTiers = 3, CurrentPlace = place });
        Bounds[] labels = [.. layout.Items.Where(i => i.Flag is not null).Select(i => i.Flag!.Box), .. layout.Stops.Where(s => s.Label is not null).Select(s => s.Label!.Value)];
        for (int i = 0; i < labels.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                Assert.True(labels[i].DistanceTo(labels[j]) >= FlagPlacer.Gap - 1e-6, $"{labels[i]} {labels[j]}");
            }
        }

        int here = s_mail.Places[place].Vehicle.Index;
        Assert.All(layout.Items.Where(i => i.Flag is not null), i => Assert.True(i.IsHere || i.Item.Vehicle.Index == here, i.Item.Name));
        Assert.DoesNotContain(layout.Items, i => i.Item.Kind.Name == "hose pair");
    }

    /// <summary>All hazards of one word on ground that touches are one zone.</summary>
    [Fact]
    public void Of_ATrain_OneZoneAWordBetweenTwoVehicles()
    {
        StripZone[] zones = [.. StripLayout.Of(s_mail).Zones];
        Assert.Contains(zones, z => z.Hazards.Length > 2);
        Assert.All(zones.SelectMany(a => zones.Where(b => b != a && b.Side == a.Side && b.Word == a.Word).Select(b => (a, b))),
            p => Assert.True(p.a.Box.Right < p.b.Box.Left || p.b.Box.Right < p.a.Box.Left));
    }

    /// <summary>Every ground place is met once, in one way round the train.</summary>
    [Fact]
    public void Of_ATrain_TheWalkGoesOnceRoundIt()
    {
        WalkRoute route = WalkRoute.Of(s_mail);
        Assert.Equal(s_mail.Places.Keys.Order(StringComparer.Ordinal), route.Stops.Select(s => s.Place.Name).Order(StringComparer.Ordinal));
        Side[] sides = [.. route.Stops.Where(s => s.Place.OnGround).Select(s => s.Side)];
        Assert.Equal(sides.Distinct(), sides.Where((s, i) => i == 0 || s != sides[i - 1]));
        double[] right = [.. route.Stops.Where(s => s.Place.OnGround && s.Side == Side.Right).Select(s => s.Place.Position.X)];
        Assert.Equal(right.Order(), right);
    }

    /// <summary>What is coupled before the machine has coordinates below zero.</summary>
    [Theory]
    [InlineData(-26.5, 0, Side.Front)]
    [InlineData(-10, 3, Side.Right)]
    [InlineData(-10, -3, Side.Left)]
    [InlineData(20.7, 0, Side.Rear)]
    public void Of_VehiclesAheadOfTheMachine_SidesGoRoundThemAll(double x, double y, Side expected) =>
        Assert.Equal(expected, new WalkSides(DemoBooks.Smallest with { Front = -25, Length = 45 }).OfOutside(new(x, y, 0)));

    [Fact]
    public void Plan_OfATrain_ShowsTheVehicleWhereThePersonIs()
    {
        XElement svg = XElement.Parse(PlanDrawing.Render(s_mail, new PlanOptions { CurrentPlace = "brake equipment, right of car 3" }));
        double[] at = [.. svg.Elements().Where(e => ((string?)e.Attribute("data-place"))?.EndsWith("of car 3", StringComparison.Ordinal) == true).Select(e => (double)e.Elements().Last().Attribute("cx")!)];
        Assert.All(at, x => Assert.InRange(x, 0, 336));
        Assert.True(at.Max() - at.Min() > 200, "as large as the drawing");
    }

    [Fact]
    public void Overview_OfATrain_ShowsEveryVehicle()
    {
        XElement svg = XElement.Parse(OverviewDrawing.Render(s_mail, new OverviewOptions { Scale = 3 }));
        Assert.True(svg.Elements().Count(e => (string?)e.Attribute("class") == "mi") >= 2 * s_mail.Vehicles.Length);
    }
}
