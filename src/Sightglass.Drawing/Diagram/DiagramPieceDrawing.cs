using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Diagram;

/// <summary>Draws one piece of a diagram by itself, with marks at its edges that say in which other piece it goes on.</summary>
public static class DiagramPieceDrawing
{
    /// <summary>Height of a row of marks, in sizes of labels.</summary>
    public const double MarkRow = 1.7;

    /// <summary>Width and height of the drawing, pixels: the piece with its marks.</summary>
    public static (double Width, double Height) SizeOf(DiagramPiece piece, DiagramOptions options)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(options);
        return (piece.Box.Width, Head(piece, options) + piece.Box.Height + Foot(piece, options));
    }

    /// <summary>The piece as a drawing; a whole diagram is drawn as it always is.</summary>
    /// <param name="layout">What the piece is of.</param>
    /// <param name="piece">One of <see cref="DiagramPieces.Linked"/>.</param>
    /// <param name="state">What it shows.</param>
    /// <param name="options">Those of the layout.</param>
    public static string Render(DiagramLayout layout, DiagramPiece piece, DiagramState state, DiagramOptions options)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(piece);
        SvgOptions svg = SvgOptions.Inline with { IdPrefix = $"p{piece.Number}-" };
        if (piece.IsAlone)
        {
            return DiagramDrawing.Render(layout, state, options, svg);
        }

        (double width, double height) = SizeOf(piece, options);
        Bounds box = piece.Box;
        SvgWriter w = SvgDocument.Begin(svg, "diagram", 0, 0, width, height, Say.With($"{layout.Input.Title}, part {piece.Number}"));
        DiagramLayout shown = Within(layout, box);
        DiagramPen pen = new(w, shown, DiagramValues.Of(shown, state, svg.IdPrefix), options, svg.IdPrefix);

        // The inner one shows nothing beyond its box.
        w.Open("svg", ("x", 0), ("y", Head(piece, options)), ("width", box.Width), ("height", box.Height), ("viewBox", $"{SvgNumber.Format(box.Left)} {SvgNumber.Format(box.Low)} {SvgNumber.Format(box.Width)} {SvgNumber.Format(box.Height)}"));
        DiagramDrawing.Draw(pen);
        Cut(w, layout.Sheet, box);
        DiagramPieces.NameLines(w, layout, box, options);
        w.Close();
        Marks(pen, piece, width, height);
        return SvgDocument.End(w);
    }

    /// <summary>Where the drawing is cut.</summary>
    internal static void Cut(SvgWriter w, Bounds sheet, Bounds piece)
    {
        foreach (double x in new[] { piece.Left, piece.Right }.Where(x => x > sheet.Left && x < sheet.Right))
        {
            w.Path("cut", new SvgPath().Segment(x, piece.Low, x, piece.High));
        }

        foreach (double y in new[] { piece.Low, piece.High }.Where(y => y > sheet.Low && y < sheet.High))
        {
            w.Path("cut", new SvgPath().Segment(piece.Left, y, piece.Right, y));
        }
    }

    private static double Head(DiagramPiece piece, DiagramOptions options) => (piece.Left ?? piece.Right ?? piece.Above) is null ? 0 : options.LabelSize * MarkRow;

    private static double Foot(DiagramPiece piece, DiagramOptions options) => piece.Below is null ? 0 : options.LabelSize * MarkRow;

    private static void Marks(DiagramPen pen, DiagramPiece piece, double width, double height)
    {
        double size = pen.Options.LabelSize;
        double top = size;
        Mark(pen, piece.Left, 0, top, "start", (-1, 0));
        Mark(pen, piece.Above, width / 2, top, "middle", (0, -1));
        Mark(pen, piece.Right, width, top, "end", (1, 0));
        Mark(pen, piece.Below, width / 2, height - (size * 0.4), "middle", (0, 1));
    }

    /// <summary>The number of a piece beside an arrowhead that points to it.</summary>
    private static void Mark(DiagramPen pen, int? number, double x, double y, string anchor, (double X, double Y) way)
    {
        if (number is null)
        {
            return;
        }

        double half = pen.Options.LabelSize * 0.32;
        string words = Say.With($"part {number}");
        double text = TextMeasure.Width(words, TextFace.Sans600, pen.Options.LabelSize);
        double gap = pen.Options.LabelSize * 0.4;
        double left = anchor switch { "start" => x, "end" => x - text - gap - (2 * half), _ => x - ((text + gap + (2 * half)) / 2) };
        double middle = anchor == "end" ? left + text + gap + half : left + half;
        double high = y - half - 1;
        (double X, double Y) tip = (middle + (way.X * half), high + (way.Y * half));
        (double X, double Y) foot = (middle - (way.X * half), high - (way.Y * half));
        pen.Writer.Path("d-ink", new SvgPath().Polyline([tip, (foot.X + (way.Y * half), foot.Y + (way.X * half)), (foot.X - (way.Y * half), foot.Y - (way.X * half))]).Close());
        pen.Writer.Text("d-lab strong", anchor == "end" ? left : left + (2 * half) + gap, y, words, ("style", pen.FontSize()));
    }

    /// <summary>What lies in the box at least in part; of words, and of symbols with theirs, what lies in it whole, or would in none.</summary>
    private static DiagramLayout Within(DiagramLayout layout, Bounds box)
    {
        bool Meets(Bounds b) => b.DistanceTo(box) <= 0;
        bool Holds(Bounds b) => ((b.Left >= box.Left && b.Right <= box.Right) || b.Width > box.Width) && ((b.Low >= box.Low && b.High <= box.High) || b.Height > box.Height);
        DiagramCluster[] cut = [.. DiagramCluster.Of(layout).Where(c => !Holds(c.Box))];
        HashSet<DiagramLabel> cutNames = [.. cut.SelectMany(c => c.Labels)];
        HashSet<DiagramPart> cutParts = [.. cut.SelectMany(c => c.Parts)];
        return layout with
        {
            Sheet = box,
            Bodies = [.. layout.Bodies.Where(b => Meets(b.Box))],
            Parts = [.. layout.Parts.Where(p => Meets(p.Box) && !cutParts.Contains(p))],
            Pipes = [.. layout.Pipes.Where(p => p.Points.Zip(p.Points.Skip(1)).Any(s => Meets(Of(s.First).Union(Of(s.Second)))))],
            Instruments = [.. layout.Instruments.Where(i => Meets(i.Box) || i.Lines.Any(l => l.Zip(l.Skip(1)).Any(s => Meets(Of(s.First).Union(Of(s.Second))))))],
            Labels = [.. layout.Labels.Where(l => Meets(l.Box) && Holds(l.Box) && !cutNames.Contains(l))],
        };
    }

    private static Bounds Of((double X, double Y) point) => new(point.X, point.Y, point.X, point.Y);
}
