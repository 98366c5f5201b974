using System.Collections.Immutable;
using Sightglass.Drawing.Diagram;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Tests.Diagram;

public sealed class DiagramPiecesTests
{
    private const double Widest = 900;

    [Fact]
    public void Of_AnyTrain_CoversTheSheetAndKeepsEverythingWholeOnce() =>
        Trains.Any.Holds(
        input =>
        {
            DiagramLayout layout = DiagramLayout.Of(input);
            ImmutableArray<Bounds> pieces = DiagramPieces.Of(layout, Widest);
            Assert.Equal(layout.Sheet.Left, pieces[0].Left);
            Assert.Equal(layout.Sheet.Right, pieces[^1].Right);
            Assert.All(pieces, p => Assert.True(p.Width <= Widest + 1e-9 && p.Width > 0));
            Assert.All(pieces.Zip(pieces.Skip(1)), n => Assert.True(n.Second.Left > n.First.Left && n.Second.Left <= n.First.Right));
            Assert.All(
                layout.Bodies.Select(b => b.Box).Concat(layout.Parts.Select(p => p.Box)).Concat(layout.Labels.Select(l => l.Box)).Where(b => b.Width < Widest - 20),
                b => Assert.Contains(pieces, p => p.Left <= b.Left && b.Right <= p.Right));
        },
        iter: 100);

    [Fact]
    public void Of_ASheetNoWiderThanAPiece_IsThatSheet()
    {
        DiagramLayout layout = DiagramLayout.Of(DiagramInput.Of(DemoBooks.Curlew, "fuel"));
        Assert.Equal([layout.Sheet], DiagramPieces.Of(layout, layout.Sheet.Width));
    }

    [Fact]
    public void Render_TheBrakeAir_NamesItsLinesAgainInEachPiece()
    {
        DiagramLayout layout = DiagramLayout.Of(DiagramInput.Of(DemoBooks.Curlew, "brake air"));
        string[] drawn = DiagramPieces.Render(layout, Widest, "d-").Split("class=\"diagram piece\"")[1..];
        Assert.Equal(DiagramPieces.Of(layout, Widest).Length, drawn.Length);
        Assert.All(drawn, p => Assert.Contains("href=\"#d-all\"", p, StringComparison.Ordinal));
        Assert.All(drawn[1..], p => Assert.Contains(">Brake pipe<", p, StringComparison.Ordinal));
        Assert.DoesNotContain(">Brake pipe<", drawn[0], StringComparison.Ordinal);
    }
}
