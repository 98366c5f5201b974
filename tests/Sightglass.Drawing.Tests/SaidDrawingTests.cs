using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Charts;
using Sightglass.Drawing.Diagram;
using Sightglass.Drawing.Overview;
using Sightglass.Drawing.Plan;
using Sightglass.Drawing.Strip;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Tests;

/// <summary>All words of drawings are said, and names are the book's in the language that is spoken.</summary>
public sealed class SaidDrawingTests
{
    /// <summary>Right unsaid: what is painted on the machine, and the names that the charts below are given.</summary>
    private static readonly string[] s_known =
    [
        .. DemoBooks.Curlew.Silhouettes.SelectMany(s => s.Shapes).Where(s => s.Style == "lettering").Select(s => s.Text ?? ""), "Volume", "Volume: 3 L", "starves, 1", "unit", "grade", "A title", "psi", "L",
    ];

    private static ClassBook Book => DemoBooks.Curlew;

    public static TheoryData<string, Func<string>> Drawings => new()
    {
        { "strip", () => StripDrawing.Render(Book, new StripOptions { CurrentPlace = Book.PlacesInOrder.First(p => p.OnGround).Name, Hazards = true }) },
        { "strip, runs of all sides", () => StripDrawing.Render(Book, new StripOptions { Scale = 60 }) },
        { "plan", () => PlanDrawing.Render(Book, new PlanOptions { CurrentPlace = Book.PlacesInOrder.First(p => p.OnGround).Name }) },
        { "overview", () => OverviewDrawing.Render(Book, new OverviewOptions()) },
        { "fuel", () => Diagram("fuel") },
        { "brake air", () => Diagram("brake air") },
        { "bound", () => new BoundScale(99, 98, 99).Render() },
        { "map", () => RangeMapDrawing.Render(new RangeMap("A title", new MapAxis("Volume", 0, 1), new MapAxis("grade", 0, 1), [new(0.1, 0.2, 0), new(0.2, 0.3, 1), new(0.5, 0.5, null, true)]) { Mechanisms = ["starves"] }) },
        { "histogram", () => HistogramDrawing.Render(new Histogram("A title", [1, 2, 3], "min")) },
        { "gauge", () => TraceGaugeDrawing.Render(new TraceGauge { Title = "Volume", Reading = [(0, 3)], Truth = [(0, 1)], From = 0, To = 4, Misleading = 1, Unit = "L" }) },
        { "legend", () => string.Concat(MediumMark.Legend.Select(m => $"<p>{m.Words}</p>")) },
        { "train", () => TrainPressureDrawing.Render(new TrainPressure { Title = "A title", Positions = [10], Moments = [(0, [110.0]), (5, [90.0])], Vehicles = [new("unit", 0, 20, true)], UntilNow = true }, SvgOptions.Inline) },
    };

    [Theory]
    [MemberData(nameof(Drawings))]
    public void Drawing_Marked_SaysAllThatStandsInIt(string name, Func<string> draw)
    {
        Assert.NotEmpty(name);
        using (Unsaid.Tongue(Book).Speak())
        {
            string drawing = draw();
            string left = string.Join('\n', drawing.Contains("class=\"diagram", StringComparison.Ordinal) ? Unsaid.InDiagram(drawing, Book, s_known) : Unsaid.In(drawing, s_known));
            Assert.True(left.Length == 0, left);
        }
    }

    /// <summary>Names are longer or shorter in another language: room is measured for what is drawn.</summary>
    [Fact]
    public void Strip_OfATranslatedBook_DrawsItsNames()
    {
        string label = Book.Items["aft supply valve"].Label;
        Tongue tongue = Tongue.Spanish.With(t => t == label ? "válvula de suministro del compartimento trasero" : null);
        using (tongue.Speak())
        {
            string strip = StripDrawing.Render(Book, new StripOptions { Scale = 60 });
            Assert.Contains("Lado izquierdo", strip, StringComparison.Ordinal);
            Assert.Contains(">Válvula de suministro del compartimento trasero<", strip, StringComparison.Ordinal);
            Assert.Contains("data-item=\"aft supply valve\"", strip, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("válvula de suministro del", "válvulas de suministro")]
    [InlineData("mirilla", "mirillas")]
    [InlineData("toma de conexión", "tomas de conexión")]
    [InlineData("indicación", "indicaciones")]
    [InlineData("luz, izquierda", "luces, izquierda")]
    [InlineData("filtro de la", "filtros")]
    public void Plural_InSpanish_IsOfTheNoun(string name, string several)
    {
        using (Tongue.Spanish.Speak())
        {
            Assert.Equal(several, Plural.Of(Plural.Trimmed(name)));
        }
    }

    private static string Diagram(string system)
    {
        DiagramInput input = DiagramInput.Of(Book, system);
        DiagramOptions options = new() { Interactive = true, Truth = true };
        return DiagramDrawing.Render(DiagramLayout.Of(input, options), DiagramState.Still, options);
    }
}
