using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Tests;

/// <summary>Walking: along the outline at 1.3 m/s, and by the legs a book gives (common practice, no source).</summary>
public sealed class WayTableTests
{
    private const string Places = """
        places:
          front: { x: 0 m, y: 0 m, z: 0 m, text: In front. }
          right: { x: 5 m, y: 2 m, z: 0 m, text: Right. }
          rear: { x: 10 m, y: 0 m, z: 0 m, text: Behind. }
          left: { x: 5 m, y: -2 m, z: 0 m, text: Left. }
          cab: { x: 2 m, y: 0 m, z: 2 m, text: Up. }
          roof: { x: 2 m, y: 0 m, z: 4 m, text: Nowhere. }
        legs:
          - { from: front, to: cab, takes: 12 s, by: steps }

        """;

    private static readonly WayTable s_ways = Plants.Compile(Places).Ways;

    [Theory]
    [InlineData("front", "front", 0)]
    [InlineData("front", "right", 7 / 1.3)]
    [InlineData("front", "rear", 14 / 1.3)]
    [InlineData("right", "left", 14 / 1.3)]
    [InlineData("front", "cab", 12)]
    [InlineData("rear", "cab", (14 / 1.3) + 12)]
    [InlineData("cab", "roof", double.PositiveInfinity)]
    public void Seconds_BetweenPlaces_ShortestWay(string from, string to, double seconds)
    {
        Assert.Equal(seconds, s_ways.Seconds(s_ways.IndexOf(from), s_ways.IndexOf(to)), 1e-9);
        Assert.Equal(seconds, s_ways.Seconds(s_ways.IndexOf(to), s_ways.IndexOf(from)), 1e-9);
    }

    [Fact]
    public void Next_OnALongWay_GoesThroughTheNeighbour()
    {
        int next = s_ways.Next(s_ways.IndexOf("rear"), s_ways.IndexOf("cab"));
        Assert.Contains(s_ways.Places[next].Name, (string[])["right", "left"]);
        Assert.Equal(-1, s_ways.Next(s_ways.IndexOf("cab"), s_ways.IndexOf("roof")));
        Assert.Equal(-1, s_ways.IndexOf("nowhere"));
    }
}
