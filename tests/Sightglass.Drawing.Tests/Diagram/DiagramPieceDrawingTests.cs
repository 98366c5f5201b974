using System.Collections.Immutable;
using Sightglass.Drawing.Diagram;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Tests.Diagram;

public sealed class DiagramPieceDrawingTests
{
    private static readonly DiagramLayout s_layout = DiagramLayout.Of(DiagramInput.Of(DemoBooks.Curlew, "brake air"));

    [Fact]
    public void Linked_InBothWays_NamesItsNeighboursBothWays()
    {
        ImmutableArray<DiagramPiece> pieces = DiagramPieces.Linked(s_layout, 900, 700);
        Assert.Equal(Enumerable.Range(1, pieces.Length), pieces.Select(p => p.Number));
        Assert.Contains(pieces, p => p.Below is not null);
        Assert.All(pieces, p =>
        {
            Assert.True(p.Right is not { } right || pieces[right - 1].Left == p.Number);
            Assert.True(p.Below is not { } below || pieces[below - 1].Above == p.Number);
            Assert.True(p.Box.Width <= 900 && p.Box.Height <= 700);
        });
    }

    [Fact]
    public void Linked_InBothWays_KeepsEveryNameWholeWithItsSymbol()
    {
        ImmutableArray<DiagramPiece> pieces = DiagramPieces.Linked(s_layout, 900, 700);
        Assert.All(s_layout.Labels.Select(l => l.Box).Concat(s_layout.Parts.Select(p => p.Box)), b => Assert.Contains(pieces, p => Holds(p.Box, b)));
        Assert.All(DiagramCluster.Of(s_layout).Where(c => c.Box is { Width: < 880, Height: < 680 }), c => Assert.Contains(pieces, p => Holds(p.Box, c.Box)));
    }

    [Fact]
    public void Render_APiece_HasEveryWordWholeAndSaysWhereItGoesOn()
    {
        DiagramOptions options = new() { Interactive = false, Truth = false };
        foreach (DiagramPiece piece in DiagramPieces.Linked(s_layout, 900, 700))
        {
            string drawn = DiagramPieceDrawing.Render(s_layout, piece, DiagramState.Still, options);
            Assert.All(new[] { piece.Left, piece.Right, piece.Above, piece.Below }.OfType<int>(), n => Assert.Contains($">part {n}</text>", drawn, StringComparison.Ordinal));
            Assert.All(s_layout.Labels.Where(l => l.Box.DistanceTo(piece.Box) > 0 && s_layout.Labels.Count(o => o.Text == l.Text) == 1 && l.Style != "line-words"), l => Assert.DoesNotContain($">{l.Text}</text>", drawn, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Render_AWholeDiagram_IsTheDiagram()
    {
        DiagramOptions options = new();
        DiagramPiece whole = Assert.Single(DiagramPieces.Linked(s_layout, s_layout.Sheet.Width, s_layout.Sheet.Height));
        Assert.True(whole.IsAlone);
        Assert.Equal(DiagramDrawing.Render(s_layout, DiagramState.Still, options, SvgOptions.Inline with { IdPrefix = "p1-" }), DiagramPieceDrawing.Render(s_layout, whole, DiagramState.Still, options));
    }

    private static bool Holds(Bounds outer, Bounds inner) => outer.Left <= inner.Left && inner.Right <= outer.Right && outer.Low <= inner.Low && inner.High <= outer.High;
}
