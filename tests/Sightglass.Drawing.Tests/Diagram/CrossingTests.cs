using System.Collections.Immutable;
using System.Xml.Linq;
using CsCheck;
using Sightglass.Book.Model;
using Sightglass.Drawing.Diagram;

namespace Sightglass.Drawing.Tests.Diagram;

/// <summary>Hoses joined crosswise, as they are drawn: nothing but them runs aslant, and where they are right nothing is drawn.</summary>
public sealed class CrossingTests
{
    private const string Pair = "brake pipe and main reservoir pipe hoses at the rear";
    private const string BrakePipe = "brake pipe coupling at the rear";
    private const string MainPipe = "main reservoir pipe coupling at the rear";

    private static readonly Lazy<ClassBook> s_train = new(() => DemoBooks.Curlew.Coupled("local train"));

    private static Gen<DiagramInput> AnyCrossed =>
        from train in Trains.Any
        from crossed in Gen.Bool.Array[4]
        select train with
        {
            Crossings =
            [
                .. Enumerable.Range(2, 3).Where(v => crossed[v - 2]).Select(v => new DiagramCrossing($"mistake before car {v}", $"coupling 0 before car {v}", $"coupling 1 before car {v}"))
                    .Where(c => train.Nodes.Any(n => n.Id == c.One) && train.Nodes.Any(n => n.Id == c.Other)),
            ],
        };

    [Fact]
    public void Of_AnyTrainWithCrossedHoses_IsDrawnWholeWithoutOverlap() => AnyCrossed.Holds(
        n =>
        {
            DiagramLayout layout = DiagramLayout.Of(n);
            Assert.True(DiagramGeometry.Fault(layout) is null, "as told");
            Assert.Equal(n.Crossings.Select(c => c.Id), layout.Crosses.Select(c => c.Id));
            Assert.All(layout.Crosses, c => Assert.All(c.Lines, l => Assert.Equal(layout.Sheet, layout.Sheet.Union(new(l.Min(p => p.X), l.Min(p => p.Y), l.Max(p => p.X), l.Max(p => p.Y))))));
        },
        iter: 300,
        print: n => $"{DiagramGeometry.Fault(DiagramLayout.Of(n))} in {Networks.Words(n)}");

    /// <summary>Each line runs from a hose of one vehicle to the hose of the other line at the next, so the two cross.</summary>
    [Fact]
    public void Of_CrossedAtTheRear_EachLineEndsAtTheOther()
    {
        DiagramLayout layout = Layout("brake air", null, Pair);
        DiagramCross cross = Assert.Single(layout.Crosses);
        double brake = layout.Parts.Single(p => p.Node.Id == BrakePipe).Y, main = layout.Parts.Single(p => p.Node.Id == MainPipe).Y;
        Assert.NotEqual(brake, main);
        Assert.All(cross.Lines, l => Assert.Equal(new[] { brake, main }.Order(), l.Select(p => p.Y).Order()));
        Assert.Equal(2, cross.Lines.Select(l => l[0].Y).Distinct().Count());
        Assert.Null(DiagramGeometry.Fault(layout));
    }

    /// <summary>The other line is of another system: it is there with its hoses, in its own colour, and only while the hoses are crossed.</summary>
    [Theory]
    [InlineData("brake air", MainPipe, "main")]
    [InlineData("main reservoir air", BrakePipe, "brake")]
    public void Of_OtherLineOfAnotherSystem_IsThereInItsColourWhileCrossed(string system, string other, string medium)
    {
        DiagramLayout crossed = Layout(system, null, Pair);
        Assert.Contains(crossed.Pipes, p => p.Medium == medium && p.Terms.Any(t => t.Node == other));
        DiagramLayout right = Layout(system, null);
        Assert.DoesNotContain(right.Parts, p => p.Node.Id == other);
        Assert.Empty(right.Crosses);
    }

    /// <summary>Of the machine and of the car behind it, not of the next.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 1)]
    [InlineData(2, 0)]
    public void Of_OneVehicle_ShowsItWhereItIsCoupledSo(int vehicle, int expected)
    {
        DiagramLayout layout = Layout("brake air", vehicle, Pair);
        Assert.Equal(expected, layout.Crosses.Length);
        Assert.Null(DiagramGeometry.Fault(layout));
    }

    [Fact]
    public void Render_Crossed_SaysSoAsTruthAlone()
    {
        DiagramLayout layout = Layout("brake air", 1, Pair);
        string? Said(DiagramOptions options) => (string?)XDocument.Parse(DiagramDrawing.Render(layout, DiagramState.Still, options)).Descendants()
            .SingleOrDefault(e => ((string?)e.Attribute("class"))?.Split(' ').Contains("cross") == true)?.Attribute("aria-label");
        Assert.Equal($"{Pair} are crossed", Said(new()));
        Assert.Null(Said(new() { Truth = false }));
    }

    [Fact]
    public void Fold_CrossedHoses_DivideTheCars()
    {
        DiagramInput train = Trains.Of(4);
        train = train with { Crossings = [new("mistake", "coupling before car 3", "another coupling")] };
        Assert.Contains(DiagramFold.Of(train, _ => "").Nodes, n => n.Id == "coupling before car 3");
    }

    /// <summary>A drawing of one system shows a line of another in the colour of what that carries: the brakes are fed with main reservoir air.</summary>
    [Fact]
    public void Of_LineOfAnotherSystem_HasItsOwnMedium()
    {
        DiagramLayout layout = DiagramLayout.Of(DiagramInput.Of(DemoBooks.Curlew, "brake air"));
        string[] main = [.. layout.Pipes.Where(p => p.Medium == "main").Select(p => p.Id)];
        Assert.NotEmpty(main);
        Assert.All(main, p => Assert.StartsWith("along-", p, StringComparison.Ordinal));
        Assert.All(layout.Labels.Where(l => l.Medium == "main"), l => Assert.Equal("line-words", l.Style));
    }

    /// <summary>As on the machine, a car's main reservoir pipe is drawn as main reservoir air.</summary>
    [Fact]
    public void Of_MainReservoirPipeOfACar_IsMainReservoirAir()
    {
        DiagramLayout car = Layout("main reservoir air", 2);
        Assert.Contains(car.Parts, p => p.Node.Id == "supply check valve of car 2");
        Assert.All(car.Pipes, p => Assert.Equal("main", p.Medium));
        Assert.DoesNotContain(Layout("brake air", 2).Input.Nodes, n => n.Medium == "main");
    }

    private static DiagramLayout Layout(string system, int? vehicle, params string[] crossed) => DiagramLayout.Of(DiagramInput.Of(s_train.Value, system, vehicle, crossed));
}
