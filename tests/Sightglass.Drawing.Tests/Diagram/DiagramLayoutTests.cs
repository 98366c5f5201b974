using Sightglass.Drawing.Diagram;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Tests.Diagram;

public sealed class DiagramLayoutTests
{
    private static DiagramLayout Curlew => DiagramLayout.Of(DiagramInput.Of(DemoBooks.Curlew, "fuel"));

    public static TheoryData<string> Named => ["one", "circuit", "air", "twin", "curlew", "smallest"];

    [Theory]
    [MemberData(nameof(Named))]
    public void Of_ANetwork_IsDrawnWholeWithoutOverlap(string name) => Assert.Null(DiagramGeometry.Fault(DiagramLayout.Of(Network(name))));

    // Found by exploring: three symbols on one way up stood as high as the line they lead to.
    [Fact]
    public void Of_LongRiser_EndsBelowItsReturnLine()
    {
        DiagramLayout layout = DiagramLayout.Of(Networks.LongRiser);
        Assert.Null(DiagramGeometry.Fault(layout));
        double lane = layout.Pipes.SelectMany(p => p.Points).Min(p => p.Y);
        Assert.All(layout.Parts, p => Assert.True(p.Box.Low > lane));
    }

    // Found by exploring: a gauge on a line that nothing joins.
    [Fact]
    public void Of_GaugeOnALoneLine_IsDrawn()
    {
        DiagramNode gauge = new("gauge", DiagramRole.Gauge, DiagramSymbol.Gauge, "gauge") { Of = ["line"] };
        DiagramLayout layout = DiagramLayout.Of(Networks.Of(Networks.Line("line"), gauge));
        Assert.Null(DiagramGeometry.Fault(layout));
        Assert.Single(layout.Instruments);
    }

    // As large as pages show it.
    [Theory]
    [InlineData(19)]
    [InlineData(22)]
    [InlineData(26)]
    public void Of_TheFuelSystemInLargeLetters_IsDrawnWholeWithoutOverlap(double size) =>
        Assert.Null(DiagramGeometry.Fault(DiagramLayout.Of(DiagramInput.Of(DemoBooks.Curlew, "fuel"), new DiagramOptions { LabelSize = size })));

    [Fact]
    public void Of_TheFuelSystemOnAScreenOf1366_LettersAre13PixelsOrMore()
    {
        DiagramOptions options = new() { LabelSize = 22 };
        const double plate = 864;
        Assert.True(options.LabelSize * plate / DiagramLayout.Of(DiagramInput.Of(DemoBooks.Curlew, "fuel"), options).Sheet.Width >= 13);
    }

    [Fact]
    public void Of_TheFuelSystem_IdenticalPartsStandOnOneLine()
    {
        DiagramLayout layout = Curlew;
        Assert.Single(layout.Parts.Where(p => p.Node.Id.EndsWith("supply valve", StringComparison.Ordinal)).Select(p => p.Y).Distinct());
        Assert.Single(layout.Parts.Where(p => p.Node.Id.EndsWith("return valve", StringComparison.Ordinal)).Select(p => p.Y).Distinct());
        Assert.Single(layout.Bodies.Where(b => b.Node.Role == DiagramRole.Tank).Select(b => b.Box.Low).Distinct());
    }

    [Fact]
    public void Of_TheFuelSystem_SupplyIsBelowAndReturnAbove()
    {
        DiagramLayout layout = Curlew;
        double tankTop = layout.Bodies.First(b => b.Node.Role == DiagramRole.Tank).Box.Low;
        double tankBottom = layout.Bodies.First(b => b.Node.Role == DiagramRole.Tank).Box.High;
        Assert.All(layout.Parts.Where(p => p.Node.Id.EndsWith("supply valve", StringComparison.Ordinal)), p => Assert.True(p.Y > tankBottom));
        Assert.All(layout.Parts.Where(p => p.Node.Id.EndsWith("return valve", StringComparison.Ordinal)), p => Assert.True(p.Y < tankTop));
        Assert.All(layout.Pipes.Where(p => p.Id.StartsWith("return-header", StringComparison.Ordinal)), p => Assert.True(p.Points[0].Y < tankTop));
    }

    [Fact]
    public void Of_TheFuelSystem_TanksStandFromFrontToRearAndFlowGoesRight()
    {
        DiagramLayout layout = Curlew;
        Assert.Equal(["Forward", "Centre", "Aft"], layout.Bodies.Where(b => b.Node.Role == DiagramRole.Tank).OrderBy(b => b.Box.Left).Select(b => b.Node.Label));
        double[] run = [.. new[] { "emergency cut-off valve", "fuel strainer", "fuel pump", "secondary filter" }.Select(n => layout.Parts.Single(p => p.Node.Id == n).X)];
        Assert.Equal(run.Order(), run);
        Assert.Single(new[] { "emergency cut-off valve", "fuel strainer", "fuel pump", "secondary filter" }.Select(n => layout.Parts.Single(p => p.Node.Id == n).Y).Distinct());
    }

    [Fact]
    public void Of_TheFuelSystem_HasItsGaugesGlassesAndPushButtons()
    {
        DiagramLayout layout = Curlew;
        Assert.Equal(6, layout.Glasses.Length);
        Assert.Equal(4, layout.Instruments.Count(i => i.Node.Symbol == DiagramSymbol.Button));
        Assert.Contains(layout.Instruments, i => i.Node.Id == "cab fuel gauge");
    }

    [Fact]
    public void Of_AHeader_CarriesTheSumOfWhatJoinsIt()
    {
        DiagramLayout layout = Curlew;
        DiagramPipe[] pieces = [.. layout.Pipes.Where(p => p.Id.StartsWith("supply-header", StringComparison.Ordinal)).OrderBy(p => p.Points[0].X)];
        Assert.Equal(2, pieces.Length);
        Assert.Equal([("forward supply valve", 1)], pieces[0].Terms);
        Assert.Equal([("forward supply valve", 1), ("centre supply valve", 1)], pieces[1].Terms);
    }

    [Fact]
    public void Render_ASmallDiagram_IsAsKept()
    {
        string svg = DiagramDrawing.Render(DiagramLayout.Of(Networks.Circuit), DiagramState.Still with { Levels = DiagramState.Still.Levels.Add("tank", 0.5) });
        Golden.Check("circuit.svg", svg);
    }

    [Fact]
    public void Render_ForATrainee_HoldsNoTruth()
    {
        DiagramState state = DiagramState.Still with { Levels = DiagramState.Still.Levels.Add("tank", 0.31), Amounts = DiagramState.Still.Amounts.Add("tank", "417 L") };
        string svg = DiagramDrawing.Render(DiagramLayout.Of(Networks.OneTank), state, new DiagramOptions { Truth = false });
        Assert.DoesNotContain("truth", svg, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("417", svg, StringComparison.Ordinal);
    }

    private static DiagramInput Network(string name) => name switch
    {
        "one" => Networks.OneTank,
        "circuit" => Networks.Circuit,
        "air" => Networks.Air,
        "twin" => Networks.Twin,
        "curlew" => DiagramInput.Of(DemoBooks.Curlew, "fuel"),
        _ => DiagramInput.Of(DemoBooks.Smallest),
    };
}
