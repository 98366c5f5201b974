using Sightglass.Drawing.Labels;

namespace Sightglass.Drawing.Tests.Labels;

public sealed class FlagPlacerTests
{
    [Fact]
    public void Place_FlagsFarApart_AllStandInTheFirstTier()
    {
        FlagRequest[] requests = [new(0, 80), new(200, 80), new(400, 80)];
        Assert.All(FlagPlacer.Place(requests), p => Assert.Equal(0, p.Tier));
    }

    [Fact]
    public void Place_TwoNeighbours_FlyApartInOneTier()
    {
        var places = FlagPlacer.Place([new FlagRequest(100, 80), new FlagRequest(130, 80)]);
        Assert.Equal((FlagDirection.Left, FlagDirection.Right), (places[0].Direction, places[1].Direction));
        Assert.All(places, p => Assert.Equal(0, p.Tier));
    }

    [Fact]
    public void Place_SixNeighbours_NeedThreeTiers()
    {
        FlagRequest[] requests = [.. Enumerable.Range(0, 6).Select(i => new FlagRequest(100 + (i * 20), 120))];
        Assert.Equal(2, FlagPlacer.Place(requests).Max(p => p.Tier));
    }

    [Fact]
    public void Place_OnePole_StaysWhereItIs() => Assert.Equal(314.5, FlagPlacer.Place([new FlagRequest(314.5, 60)])[0].Pole);

    [Fact]
    public void Place_ThreeAtOneSpot_PolesSpreadEvenly()
    {
        var places = FlagPlacer.Place([new FlagRequest(50, 40), new FlagRequest(50, 40), new FlagRequest(50, 40)]);
        Assert.Equal([50 - FlagPlacer.PoleSpacing, 50, 50 + FlagPlacer.PoleSpacing], places.Select(p => p.Pole).Order());
    }
}
