using Sightglass.Plant.Plans;
using Sightglass.Tests.Support;

namespace Sightglass.Plant.Tests;

/// <summary>People go through coupled ends where both vehicles let them: the demo's coaches at both ends, the machine at its rear, the older baggage car at none.</summary>
public sealed class GangwayTests
{
    /// <summary>3 s to the end of a vehicle and 3 s on from it, 24 s along a coach, as the book says.</summary>
    [Theory]
    [InlineData("local train", "rear vestibule", "vestibule of car 1", 6)]
    [InlineData("local train", "rear vestibule", "vestibule of car 2", 6 + 24 + 6)]
    [InlineData("local train", "vestibule of car 1", "B end vestibule of car 2", 24 + 6 + 24)]
    [InlineData("night mail", "B end vestibule of car 5", "B end vestibule of car 6", 6)] // the last car is turned
    public void Seconds_ThroughGangways_AsTheirTimes(string train, string from, string to, double seconds)
    {
        WayTable ways = new(Books.Curlew.Book.Coupled(train));
        Assert.Equal(seconds, ways.Seconds(ways.IndexOf(from), ways.IndexOf(to)), 1e-9);
    }

    [Fact]
    public void Seconds_OneEndWithoutGangway_RoundByTheGround()
    {
        WayTable ways = new(Books.Curlew.Book.Coupled("night mail"));
        (int from, int to) = (ways.IndexOf("rear vestibule"), ways.IndexOf("vestibule of car 1"));
        Assert.True(ways.Seconds(from, to) > 16 + 7, "there is no way but down the ladder and up the steps");
        Assert.True(ways.Places[ways.Next(to, from)].OnGround);
    }

    /// <summary>A coach that is coupled to nothing behind leads nowhere there.</summary>
    [Fact]
    public void Legs_LastVehicle_NoneBeyond() => Assert.Equal(3, Books.Curlew.Book.Coupled("local train").Legs.Count(l => l.By == "gangway"));
}
