using System.Collections.Immutable;
using System.Xml.Linq;
using Sightglass.Drawing.Diagram;

namespace Sightglass.Drawing.Tests.Diagram;

/// <summary>Diagrams along the lines that go through vehicles.</summary>
public sealed class ThroughLayoutTests
{
    [Fact]
    public void Of_AnyTrain_IsDrawnWholeWithoutOverlap() =>
        Trains.Any.Holds(n => Assert.True(DiagramGeometry.Fault(DiagramLayout.Of(n)) is null, "as told"), iter: 300, print: n => $"{DiagramGeometry.Fault(DiagramLayout.Of(n))} in {Networks.Words(n)}");

    [Fact]
    public void Render_AnyTrain_IsWellFormedAndHasNoIdTwice() => Trains.Any.Holds(
        n =>
        {
            XDocument document = XDocument.Parse(DiagramDrawing.Render(DiagramLayout.Of(n), DiagramState.Still));
            string[] ids = [.. document.Descendants().Select(e => (string?)e.Attribute("id")).OfType<string>()];
            Assert.Equal(ids.Distinct().Count(), ids.Length);
        },
        iter: 60);

    /// <summary>A line that goes through lies at one height from the first hose to the last, whatever vehicles it passes.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(6)]
    public void Of_ATrain_BrakePipeIsOneStraightLine(int cars)
    {
        DiagramLayout layout = DiagramLayout.Of(Trains.Of(cars));
        Assert.Null(DiagramGeometry.Fault(layout));
        string[] on = [.. layout.Parts.Where(p => p.Node.Id.Contains("cock", StringComparison.Ordinal) || p.Node.Symbol == DiagramSymbol.Coupling).Select(p => p.Node.Id)];
        Assert.Equal((2 * (cars + 1)) + cars, on.Length);
        Assert.Single(layout.Parts.Where(p => on.Contains(p.Node.Id)).Select(p => p.Y).Distinct());
    }

    /// <summary>Air into a car flows the same way through every stretch of its brake pipe from the hose to what takes it.</summary>
    [Fact]
    public void Of_ATrain_FlowIsCarriedAlongThePipe()
    {
        DiagramLayout layout = DiagramLayout.Of(Trains.Of(1));
        ImmutableDictionary<string, double> flows = new Dictionary<string, double> { ["relay valve"] = 1, ["rear cock"] = 1, ["coupling before car 1"] = 1, ["front cock of car 1"] = -1, ["charging valve of car 1"] = 1 }.ToImmutableDictionary();
        DiagramValues values = DiagramValues.Of(layout, DiagramState.Still with { Flows = flows });
        double y = layout.Parts.First(p => p.Node.Id == "rear cock").Y;
        DiagramPipe[] carrying = [.. layout.Pipes.Where(p => p.Points.All(q => Math.Abs(q.Y - y) < 0.01) && values[$"fl-{p.Id}", "class"] != "flow")];
        double from = layout.Pipes.Single(p => p.Id == "relay-valve").Points[^1].X, to = layout.Pipes.Single(p => p.Id == "charging-valve-of-car-1").Points.MaxBy(q => q.Y).X;
        Assert.Equal(from, carrying.Min(p => p.Points.Min(q => q.X)), 0.01);
        Assert.Equal(to, carrying.Max(p => p.Points.Max(q => q.X)), 0.01);
        Assert.Equal(to - from, carrying.Sum(p => Math.Abs(p.Points[^1].X - p.Points[0].X)), 0.1);
        Assert.All(carrying, p => Assert.Equal(p.Points[^1].X > p.Points[0].X ? "flow on" : "flow on rev", values[$"fl-{p.Id}", "class"]));
    }

    /// <summary>A control that is opened and shut says so to who cannot see it, as a valve does.</summary>
    [Fact]
    public void Render_AControlThatIsOpened_SaysWhetherItIs()
    {
        DiagramInput train = Trains.Of(1);
        train = train with { Nodes = train.Nodes.Add(new("release valve", DiagramRole.Control, DiagramSymbol.Handle, "Release valve") { Of = ["control valve of car 1"], IsSwitch = true, IsOperated = true, Vehicle = 1, VehicleName = "car 1" }) };
        DiagramLayout layout = DiagramLayout.Of(train);
        string Checked(DiagramState state) => (string)XDocument.Parse(DiagramDrawing.Render(layout, state)).Descendants().Single(e => (string?)e.Attribute("data-item") == "release valve").Attribute("aria-checked")!;
        Assert.Equal("false", Checked(DiagramState.Still));
        Assert.Equal("true", Checked(DiagramState.Still with { Openings = ImmutableDictionary<string, double>.Empty.Add("release valve", 1) }));
    }

    [Fact]
    public void LongestOf_ATrain_IsTheBrakePipeFromTheHead()
    {
        ThroughLine line = ThroughLine.LongestOf(Trains.Of(3))!;
        Assert.Equal(["brake pipe", "brake pipe of car 1", "brake pipe of car 2", "brake pipe of car 3"], line.Points.Select(p => p.Node));
        Assert.Equal(line.Points.Select(p => p.X).Order(), line.Points.Select(p => p.X));
        Assert.Null(ThroughLine.LongestOf(Networks.Air));
    }

    [Fact]
    public void Fold_SixLikeCars_AreDrawnOnce()
    {
        DiagramInput folded = DiagramFold.Of(Trains.Of(6), _ => "");
        Assert.Equal([0, 1], folded.Nodes.Where(n => n.Symbol != DiagramSymbol.Coupling).Select(n => n.Vehicle).Distinct());
        Assert.Equal("cars 1 to 6, 6 alike", folded.Captions[1]);
        Assert.Equal(["coupling before car 1"], folded.Nodes.Where(n => n.Symbol == DiagramSymbol.Coupling).Select(n => n.Id));
        Assert.Null(DiagramGeometry.Fault(DiagramLayout.Of(folded)));
    }

    [Fact]
    public void Fold_OneCarThatStandsOtherwise_StandsForItself()
    {
        DiagramInput folded = DiagramFold.Of(Trains.Of(6), id => id == "rear cock of car 4" ? "closed" : "open");
        Assert.Equal(["this machine", "cars 1 to 3, 3 alike", "car 4", "cars 5 to 6, 2 alike"], folded.Captions.Values);
        DiagramNode before = folded.Nodes.Single(n => n.Id == "coupling before car 4");
        Assert.Equal(("rear hose of car 1", "front hose of car 4"), (before.From, before.To));
        Assert.Null(DiagramGeometry.Fault(DiagramLayout.Of(folded)));
    }

    [Fact]
    public void Fold_ACoupledHoseThatParted_DividesTheCars()
    {
        DiagramInput folded = DiagramFold.Of(Trains.Of(4), id => id == "coupling before car 3" ? "parted" : "");
        Assert.Contains(folded.Nodes, n => n.Id == "coupling before car 3");
    }
}
