using System.Globalization;
using System.Text;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Book.Walking;
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

    /// <summary>With two ways up, 12 s by the steps and 20 s by the ladder; what is shut is worked out once.</summary>
    [Fact]
    public void Without_WhatAWayGoesBy_LeavesTheOthers()
    {
        WayTable ways = Plants.Compile(Places.Replace("takes: 12 s, by: steps }", "takes: 12 s, through: [steps] }\n  - { from: rear, to: cab, takes: 20 s, through: [ladder] }\nitems: { steps: { kind: passage }, ladder: { kind: passage } }", StringComparison.Ordinal)).Ways;
        WayTable one = ways.Without("steps"), none = one.Without("ladder");
        Assert.Equal(12, Seconds(ways), 1e-9);
        Assert.Equal((14 / 1.3) + 20, Seconds(one), 1e-9);
        Assert.Equal(double.PositiveInfinity, Seconds(none));
        Assert.Equal(["steps"], ways.Through(ways.IndexOf("cab"), ways.IndexOf("front")));
        Assert.Empty(ways.Through(ways.IndexOf("front"), ways.IndexOf("right")));
        Assert.Same(none, ways.Without("ladder").Without("steps"));
        Assert.Same(ways, none.With("ladder").With("steps"));

        static double Seconds(WayTable ways) => ways.Seconds(ways.IndexOf("front"), ways.IndexOf("cab"));
    }

    [Fact]
    public void Next_OnALongWay_GoesThroughTheNeighbour()
    {
        int next = s_ways.Next(s_ways.IndexOf("rear"), s_ways.IndexOf("cab"));
        Assert.Contains(s_ways.Places[next].Name, (string[])["right", "left"]);
        Assert.Equal(-1, s_ways.Next(s_ways.IndexOf("cab"), s_ways.IndexOf("roof")));
        Assert.Equal(-1, s_ways.IndexOf("nowhere"));
    }

    /// <summary>A place between two coupled vehicles is reached from either side, and is on nobody's way.</summary>
    [Fact]
    public void Seconds_PlaceBetweenVehicles_EndsAWayAndIsOnNone()
    {
        WayTable ways = Plants.Compile("""
            places:
              right front: { x: 4 m, y: 2 m, z: 0 m, text: Right. }
              right rear: { x: 7 m, y: 2 m, z: 0 m, text: Right. }
              left: { x: 5 m, y: -2 m, z: 0 m, text: Left. }
              between: { x: 5 m, y: 0 m, z: 0 m, text: Between. }
              end door: { x: 5 m, y: 0 m, z: 1.5 m, text: Up. }
            legs:
              - { from: between, to: end door, takes: 5 s, by: ladder }
              - { from: left, to: end door, takes: 60 s, by: steps }

            """).Ways;
        Assert.Equal(3 / 1.3, Seconds("between", "right front"), 1e-9);
        Assert.Equal(2 / 1.3, Seconds("between", "left"), 1e-9);
        Assert.Equal(6 / 1.3, Seconds("between", "right rear"), 1e-9);
        Assert.Equal(5, Seconds("between", "end door"), 1e-9);
        Assert.Equal(5 / 1.3, Seconds("left", "right front"), 1e-9); // round the front: 1 m + 4 m
        Assert.Equal(60, Seconds("left", "end door"), 1e-9);
        Assert.Equal(60 + (5 / 1.3), Seconds("right front", "end door"), 1e-9); // not through the gap

        double Seconds(string from, string to) => ways.Seconds(ways.IndexOf(from), ways.IndexOf(to));
    }

    /// <summary>The same as by working out all ways at once (Floyd and Warshall's algorithm, from memory).</summary>
    [Fact]
    public void Seconds_RandomBooks_AsByAllPairs()
    {
        Random chance = new(5);
        for (int book = 0; book < 150; book++)
        {
            int count = chance.Next(2, 25);
            StringBuilder places = new("places:\n");
            for (int i = 0; i < count; i++)
            {
                int height = chance.Next(3) == 2 ? 2 : 0;
                places.Append(CultureInfo.InvariantCulture, $"  p{i}: {{ x: {chance.Next(-200, 1200)} cm, y: {2 * chance.Next(-1, 2)} m, z: {height} m, text: A place. }}\n");
            }

            IEnumerable<Leg> legs = Enumerable.Range(0, chance.Next(30))
                .Select(_ => new Leg($"p{chance.Next(count)}", $"p{chance.Next(count)}", Span.None, chance.Next(1, 90), "steps"));
            AssertSame(Plants.Compile(places.ToString()).Book with { Legs = [.. legs] }, 1e-9);
        }
    }

    /// <summary>In the demo book no time to walk differs by a tick, and no place lies within the outline.</summary>
    [Fact]
    public void Seconds_DemoBook_AsByAllPairsToTheTick()
    {
        ClassBook book = Books.Curlew.Book;
        AssertSame(book, 0.01 / SimTime.TicksPerSecond);
        Assert.Empty(new GroundWays(book, Books.Curlew.Ways.Places).Within);
    }

    private static void AssertSame(ClassBook book, double tolerance)
    {
        WayTable ways = new(book);
        double[,] all = AllPairs(book, ways);
        for (int a = 0; a < ways.Places.Length; a++)
        {
            for (int b = 0; b < ways.Places.Length; b++)
            {
                double seconds = ways.Seconds(a, b);
                Assert.True(seconds == all[a, b] || Math.Abs(seconds - all[a, b]) <= tolerance, $"{ways.Places[a].Name} to {ways.Places[b].Name}: {seconds}, {all[a, b]} by all pairs");
                int next = ways.Next(a, b);
                Assert.Equal(double.IsInfinity(seconds), next < 0);
                Assert.True(next < 0 || a == b || Math.Abs(ways.Seconds(a, next) + ways.Seconds(next, b) - seconds) < 1e-9, "the next place is not on the way");
            }
        }
    }

    private static double[,] AllPairs(ClassBook book, WayTable ways)
    {
        int n = ways.Places.Length;
        double[,] seconds = new double[n, n];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                seconds[i, j] = i == j ? 0 : double.PositiveInfinity;
            }
        }

        GroundWays ground = new(book, ways.Places);
        HashSet<int> dead = [.. ground.Within];
        IEnumerable<(int, int, double)> joints = [.. ground.Joints.Select(j => (j.From, j.To, j.Metres / 1.3)), .. book.Legs.Select(l => (ways.IndexOf(l.From), ways.IndexOf(l.To), l.Seconds))];
        foreach ((int a, int b, double s) in joints)
        {
            seconds[a, b] = seconds[b, a] = Math.Min(s, seconds[a, b]);
        }

        for (int k = 0; k < n; k++)
        {
            for (int i = 0; i < n && !dead.Contains(k); i++)
            {
                for (int j = 0; j < n; j++)
                {
                    seconds[i, j] = Math.Min(seconds[i, j], seconds[i, k] + seconds[k, j]);
                }
            }
        }

        return seconds;
    }
}
