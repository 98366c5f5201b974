using Sightglass.Book.Model;
using Sightglass.Drawing.Walk;

namespace Sightglass.Drawing.Tests.Walk;

public sealed class WalkRouteTests
{
    [Fact]
    public void Of_TheDemoMachine_GoesRoundOnce()
    {
        WalkStop[] ground = [.. WalkRoute.Of(DemoBooks.Curlew).Stops.Where(s => s.Place.OnGround)];
        Assert.Equal("cab steps, right", ground[0].Place.Name);
        Assert.Equal("front, right", ground[^1].Place.Name);
        Assert.Equal([Side.Right, Side.Rear, Side.Left, Side.Front], ground.Select(s => s.Side).Distinct());
    }

    [Fact]
    public void Of_TheDemoMachine_HasEveryPlaceOnce()
    {
        string[] names = [.. WalkRoute.Of(DemoBooks.Curlew).Stops.Select(s => s.Place.Name)];
        Assert.Equal(DemoBooks.Curlew.Places.Keys.Order(StringComparer.Ordinal), names.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Of_TheCab_IsEnteredFromItsSteps()
    {
        WalkStop cab = WalkRoute.Of(DemoBooks.Curlew).Find("cab")!;
        Assert.Equal("cab steps, right", cab.EnteredFrom);
        Assert.Equal(Side.Right, cab.Side);
    }

    [Fact]
    public void Of_NeighboursOnOneSide_SecondsAreDistanceOverSpeed()
    {
        WalkStop steps = WalkRoute.Of(DemoBooks.Curlew, speed: 1.1).Find("cab steps, right")!;
        Assert.Equal((4.4 - 2.2) / 1.1, steps.SecondsOnward!.Value, 9);
    }

    [Fact]
    public void Of_RoundACorner_GoesAlongBothEdges()
    {
        WalkStop steps = WalkRoute.Of(DemoBooks.Curlew, speed: 1).Find("rear steps, right")!;
        Assert.Equal((21.7 - 19.5) + (2.4 - 1.0), steps.SecondsOnward!.Value, 9);
    }

    [Theory]
    [InlineData(5, 2.4, Side.Right)]
    [InlineData(5, -2.4, Side.Left)]
    [InlineData(-0.7, 1, Side.Front)]
    [InlineData(21.9, 0, Side.Rear)]
    [InlineData(0.3, 2.4, Side.Right)]
    public void OfOutside_APoint_IsOnItsSide(double x, double y, Side side) =>
        Assert.Equal(side, new WalkSides(DemoBooks.Curlew).OfOutside(new Point3(x, y, 0)));
}
