using System.Xml.Linq;
using Sightglass.Book.Model;
using Sightglass.Drawing.Labels;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Strip;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Tests.Labels;

namespace Sightglass.Drawing.Tests.Strip;

public sealed class StripLayoutTests
{
    public static TheoryData<string> SomePlaces => ["nowhere", "fuel panel, right", "cab", "rear, right", "tank aft, left", "engine room, front"];

    [Theory]
    [MemberData(nameof(SomePlaces))]
    public void Of_TheDemoMachine_NoLabelsCloserThanEightPixels(string place)
    {
        StripLayout layout = StripLayout.Of(DemoBooks.Curlew, new StripOptions { CurrentPlace = place });
        Bounds[] labels = [.. layout.Items.Where(i => i.Flag is not null).Select(i => i.Flag!.Box), .. layout.Stops.Where(s => s.Label is not null).Select(s => s.Label!.Value)];
        Assert.True(labels.Length > 60);
        for (int i = 0; i < labels.Length; i++)
        {
            for (int j = i + 1; j < labels.Length; j++)
            {
                Assert.True(labels[i].DistanceTo(labels[j]) >= FlagPlacer.Gap - 1e-6, $"{labels[i]} {labels[j]}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(SomePlaces))]
    public void Of_TheDemoMachine_NoFlagOverAnothersPole(string place)
    {
        StripLayout layout = StripLayout.Of(DemoBooks.Curlew, new StripOptions { CurrentPlace = place });
        foreach (bool up in new[] { true, false })
        {
            FlagPlace[] flags = [.. layout.Items.Where(i => i.Flag?.Up == up).Select(i => i.Flag!.Place)];
            Assert.Null(FlagGeometry.Fault(flags));
        }
    }

    /// <summary>As the walk shows it, from every place: no name touches another, and in the light of the lamp only what is within reach has one.</summary>
    [Fact]
    public void Of_EveryPlaceOfTheDemoMachine_NamesStandApartAndNearOnesAreWithinReach()
    {
        foreach (string place in DemoBooks.Curlew.Places.Keys)
        {
            StripLayout layout = StripLayout.Of(DemoBooks.Curlew, new StripOptions { Scale = 38, MostTiers = 3, You = "", CurrentPlace = place });
            Bounds[] labels = [.. layout.Items.Where(i => i.Flag is not null).Select(i => i.Flag!.Box), .. layout.Stops.Where(s => s.Label is not null).Select(s => s.Label!.Value)];
            for (int i = 0; i < labels.Length; i++)
            {
                for (int j = 0; j < i; j++)
                {
                    Assert.True(labels[i].DistanceTo(labels[j]) >= FlagPlacer.Gap - 1e-6, $"{place}: {labels[i]} {labels[j]}");
                }
            }

            double here = layout.Here!.X;
            Assert.All(layout.Items.Where(i => i.Flag is not null && Math.Abs(i.X - here) < 3.4 * 38), i => Assert.True(i.IsHere, $"{place}: {i.Item.Name}"));
            Assert.Equal(layout.Items.Count(i => i.IsHere), layout.Items.Count(i => i.IsHere && i.Flag is not null) + layout.Unnamed.Count());
        }
    }

    [Fact]
    public void Of_TheDemoMachine_EverythingLiesOnTheSheet()
    {
        StripLayout layout = StripLayout.Of(DemoBooks.Curlew, new StripOptions { CurrentPlace = "rear coupler" });
        Assert.All(layout.Items.Where(i => i.Flag is not null), i => Assert.Equal(layout.Sheet, layout.Sheet.Union(i.Flag!.Box)));
        Assert.All(layout.Items, i => Assert.Equal(layout.Sheet, layout.Sheet.Union(new Bounds(i.X, i.Y, i.X, i.Y))));
    }

    [Fact]
    public void Of_WalkStartsRight_RunsRightToLeft()
    {
        StripLayout layout = StripLayout.Of(DemoBooks.Curlew);
        Assert.Equal([Side.Front, Side.Left, Side.Rear, Side.Right], layout.Sides.Select(s => s.Side));
        double[] ground = [.. layout.Stops.Where(s => s.Stop.Place.OnGround).Select(s => s.X)];
        Assert.Equal(ground.OrderDescending(), ground);
    }

    [Fact]
    public void Of_WalkStartsLeft_RunsLeftToRight()
    {
        StripLayout layout = StripLayout.Of(DemoBooks.Curlew with { WalkStart = Side.Left });
        Assert.Equal([Side.Left, Side.Rear, Side.Right, Side.Front], layout.Sides.Select(s => s.Side));
        double[] ground = [.. layout.Stops.Where(s => s.Stop.Place.OnGround).Select(s => s.X)];
        Assert.Equal(ground.Order(), ground);
    }

    [Fact]
    public void Of_ChoosingAnItem_MovesNothing()
    {
        StripOptions options = new() { CurrentPlace = "fuel panel, right" };
        StripLayout before = StripLayout.Of(DemoBooks.Curlew, options);
        StripLayout after = StripLayout.Of(DemoBooks.Curlew, options with { SelectedItem = "forward supply valve" });
        Assert.Equal(before.Items.Select(i => i.Flag?.Box), after.Items.Select(i => i.Flag?.Box));
    }

    [Fact]
    public void Of_StandingInTheCab_NamesWhatIsThere()
    {
        StripLayout outside = StripLayout.Of(DemoBooks.Curlew);
        StripLayout inside = StripLayout.Of(DemoBooks.Curlew, new StripOptions { CurrentPlace = "cab" });
        Assert.DoesNotContain(outside.Items, i => i.Item.Places is ["cab", ..]);
        Assert.True(inside.Items.Count(i => i.Item.Places is ["cab", ..] && i.Flag is not null) >= 8);
    }

    [Fact]
    public void Of_ABookWithoutSilhouettes_DrawsBoxes()
    {
        StripLayout layout = StripLayout.Of(DemoBooks.Smallest);
        Assert.Equal(4, layout.Sides.Length);
        Assert.All(layout.Sides, s => Assert.Equal("outline", Assert.Single(Assert.Single(s.Figures).Shapes).Style));
    }

    [Fact]
    public void Of_SmallScale_LeavesLabelsOut()
    {
        StripLayout layout = StripLayout.Of(DemoBooks.Curlew, new StripOptions { Scale = 20, CurrentPlace = "fuel panel, right" });
        Assert.All(layout.Items.Where(i => i.Flag is not null), i => Assert.True(i.IsHere));
    }

    [Fact]
    public void Of_HazardsOnSharedGround_ShareItsHeight()
    {
        StripLayout layout = StripLayout.Of(DemoBooks.Curlew);
        StripZone[] rear = [.. layout.Zones.Where(z => z.Side == Side.Rear)];
        Assert.True(rear.Length > 1);
        Assert.All(rear.SelectMany(a => rear.Where(b => b != a).Select(b => (a, b))), p => Assert.False(Overlap(p.a.Box, p.b.Box)));
    }

    [Theory]
    [InlineData(Theme.Light)]
    [InlineData(Theme.Dark)]
    [InlineData(Theme.Print)]
    public void Render_Alone_IsWellFormedAndNamesEveryFlaggedItem(Theme theme)
    {
        StripOptions options = new() { CurrentPlace = "fuel panel, right", SelectedItem = "forward sight glass, right" };
        string svg = StripDrawing.Render(DemoBooks.Curlew, options, SvgOptions.Alone with { Theme = theme });
        XDocument document = XDocument.Parse(svg);
        HashSet<string> drawn = [.. document.Descendants().Select(e => (string?)e.Attribute("data-item")).OfType<string>()];
        Assert.All(StripLayout.Of(DemoBooks.Curlew, options).Items, i => Assert.Contains(i.Item.Name, drawn));
        Assert.Equal(theme.ToString().ToLowerInvariant(), (string?)document.Root!.Attribute("data-theme"));
    }

    [Fact]
    public void Render_AnyDrawing_HasNoIdTwice()
    {
        string svg = StripDrawing.Render(DemoBooks.Curlew, new StripOptions { CurrentPlace = "cab" });
        string[] ids = [.. XDocument.Parse(svg).Descendants().Select(e => (string?)e.Attribute("id")).OfType<string>()];
        Assert.Equal(ids.Distinct().Count(), ids.Length);
    }

    private static bool Overlap(Bounds a, Bounds b) => a.Left < b.Right - 1e-6 && b.Left < a.Right - 1e-6 && a.Low < b.High - 1e-6 && b.Low < a.High - 1e-6;
}
