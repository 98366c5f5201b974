using System.Collections.Immutable;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Diagram;

/// <summary>
/// Divides a wide diagram into pieces that are printed one after the other, and draws them. Where only pipes that run across lie they meet; else they overlap, and what
/// one of them cuts through is whole in the next. Each says again how the lines are called that come into it.
/// </summary>
public static class DiagramPieces
{
    /// <summary>Pixels kept free beside what is whole.</summary>
    private const double Free = 8;

    /// <summary>From the base line of a line's name down to the line, in sizes of labels.</summary>
    private const double NameAbove = 0.46;

    /// <summary>From a line to the middle of its name, at most, in sizes of labels.</summary>
    private const double NameReach = 1.7;

    /// <summary>How far from the edge the name of a line may stand.</summary>
    private const double NameFurthest = 300;

    /// <summary>The pieces, row by row from the left, as parts of the sheet; the whole sheet where it is no larger. What is no larger than a piece is whole in one of them.</summary>
    /// <param name="layout">What is divided.</param>
    /// <param name="widest">Greatest width of a piece, pixels; 100 or more.</param>
    /// <param name="highest">Greatest height of a piece, pixels; 100 or more.</param>
    public static ImmutableArray<Bounds> Of(DiagramLayout layout, double widest, double highest = double.PositiveInfinity) =>
        [.. Linked(layout, widest, highest).Select(p => p.Box)];

    /// <summary>The pieces, each with those that it goes on in. Where nothing of the drawing lies there is none.</summary>
    /// <inheritdoc cref="Of" path="/param"/>
    public static ImmutableArray<DiagramPiece> Linked(DiagramLayout layout, double widest, double highest = double.PositiveInfinity)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentOutOfRangeException.ThrowIfLessThan(widest, 100);
        ArgumentOutOfRangeException.ThrowIfLessThan(highest, 100);
        Bounds sheet = layout.Sheet;
        Bounds[] boxes = [.. Boxes(layout).Concat(DiagramCluster.Of(layout).Select(c => c.Box)).Select(b => b.Grow(Free))];
        ImmutableArray<(double From, double To)> columns = DiagramCuts.Of(boxes.Concat(Straight(layout, upright: true)).Select(b => (b.Left, b.Right)), sheet.Left, sheet.Right, widest);
        ImmutableArray<(double From, double To)> rows = DiagramCuts.Of(boxes.Concat(Straight(layout, upright: false)).Select(b => (b.Low, b.High)), sheet.Low, sheet.High, highest);
        Bounds[] drawn = [.. Boxes(layout), .. Lines(layout).Select(l => new Bounds(Math.Min(l.From.X, l.To.X), Math.Min(l.From.Y, l.To.Y), Math.Max(l.From.X, l.To.X), Math.Max(l.From.Y, l.To.Y)))];
        Dictionary<(int Row, int Column), int> numbers = [];
        foreach ((int row, int column) in rows.SelectMany((_, r) => columns.Select((_, c) => (r, c))))
        {
            if (drawn.Any(b => b.DistanceTo(Box(row, column)) <= 0))
            {
                numbers[(row, column)] = numbers.Count + 1;
            }
        }

        return
        [
            .. numbers.OrderBy(n => n.Value).Select(n => new DiagramPiece(n.Value, Box(n.Key.Row, n.Key.Column))
            {
                Left = At(n.Key.Row, n.Key.Column - 1),
                Right = At(n.Key.Row, n.Key.Column + 1),
                Above = At(n.Key.Row - 1, n.Key.Column),
                Below = At(n.Key.Row + 1, n.Key.Column),
            }),
        ];

        Bounds Box(int row, int column) => new(columns[column].From, rows[row].From, columns[column].To, rows[row].To);
        int? At(int row, int column) => numbers.TryGetValue((row, column), out int number) ? number : null;
    }

    /// <summary>
    /// The pieces as drawings that show parts of another one of the same page, so that they are as alive as that: <see cref="DiagramDrawing.Render(DiagramLayout, DiagramState, DiagramOptions?, SvgOptions?)"/>
    /// with the same prefix.
    /// </summary>
    public static string Render(DiagramLayout layout, double widest, string prefix)
    {
        SvgWriter w = new();
        foreach (Bounds piece in Of(layout, widest))
        {
            // The inner one shows nothing beyond its box, whatever room the outer one is given.
            string width = SvgNumber.Format(piece.Width);
            string height = SvgNumber.Format(piece.Height);
            w.Open("svg", ("class", "diagram piece"), ("viewBox", $"0 0 {width} {height}"));
            w.Open("svg", ("width", width), ("height", height), ("viewBox", $"{SvgNumber.Format(piece.Left)} {SvgNumber.Format(piece.Low)} {width} {height}"));
            w.Element("use", ("href", $"#{prefix}{DiagramDrawing.All}"));
            DiagramPieceDrawing.Cut(w, layout.Sheet, piece);
            NameLines(w, layout, piece, new DiagramOptions());
            w.Close().Close().Break();
        }

        return w.ToString();
    }

    /// <summary>Says again how the lines are called that come into a piece from its left.</summary>
    internal static void NameLines(SvgWriter w, DiagramLayout layout, Bounds piece, DiagramOptions options)
    {
        ImmutableArray<Bounds> taken = [.. Boxes(layout), .. Straight(layout, upright: true)];
        foreach (double y in Across(layout, piece.Left).Where(y => piece.Left > layout.Sheet.Left && y > piece.Low && y < piece.High))
        {
            double reach = NameReach * options.LabelSize;
            DiagramLabel? name = layout.Labels.Where(l => l.Style == "line-words" && l.X < piece.Left && Math.Abs(((l.Box.Low + l.Box.High) / 2) - y) < reach).MaxBy(l => l.X);
            if (name is not null && RoomFor(name.Box, piece.Left, y - (NameAbove * options.LabelSize), taken) is { } room && room.Low >= piece.Low && room.Right <= piece.Right)
            {
                w.Text("line-words", room.Left, y - (NameAbove * options.LabelSize), name.Text, ("style", options.FontSize()));
            }
        }
    }

    /// <summary>Above a line, as near to the left edge as there is room.</summary>
    /// <param name="y">Of the base line.</param>
    private static Bounds? RoomFor(Bounds name, double left, double y, ImmutableArray<Bounds> taken)
    {
        for (double x = left + Free; x < left + NameFurthest; x += Free)
        {
            Bounds box = new(x, y - name.Height, x + name.Width, y + 2);
            if (!taken.Any(b => b.DistanceTo(box) <= 0))
            {
                return box;
            }
        }

        return null;
    }

    /// <summary>Heights at which pipes run across a place.</summary>
    private static IEnumerable<double> Across(DiagramLayout layout, double x) =>
        layout.Pipes.SelectMany(p => p.Points.Zip(p.Points.Skip(1)))
            .Where(s => s.First.Y == s.Second.Y && Math.Min(s.First.X, s.Second.X) < x && x < Math.Max(s.First.X, s.Second.X))
            .Select(s => s.First.Y).Distinct().Order();

    /// <summary>Straight stretches of lines that a cut along them would split: no wider, or no higher, than the room beside them.</summary>
    private static IEnumerable<Bounds> Straight(DiagramLayout layout, bool upright) =>
        Lines(layout).Where(l => upright ? l.From.X == l.To.X : l.From.Y == l.To.Y)
            .Select(l => new Bounds(Math.Min(l.From.X, l.To.X), Math.Min(l.From.Y, l.To.Y), Math.Max(l.From.X, l.To.X), Math.Max(l.From.Y, l.To.Y)).Grow(Free));

    private static IEnumerable<((double X, double Y) From, (double X, double Y) To)> Lines(DiagramLayout layout) =>
        layout.Pipes.Select(p => p.Points).Concat(layout.Instruments.SelectMany(i => i.Lines)).SelectMany(line => line.Zip(line.Skip(1)));

    /// <summary>What is to be whole in one piece.</summary>
    private static IEnumerable<Bounds> Boxes(DiagramLayout layout) =>
    [
        .. layout.Bodies.Select(b => b.Box), .. layout.Parts.Select(p => p.Box), .. layout.Labels.Select(l => l.Box), .. layout.Instruments.Select(i => i.Box),
        .. layout.Crosses.Select(c => c.Lines.SelectMany(l => l).Select(p => new Bounds(p.X, p.Y, p.X, p.Y)).Aggregate((a, b) => a.Union(b))),
        .. layout.Glasses.Select(g => new Bounds(g.X, g.Top, g.X, g.Bottom)), .. layout.OpenEnds.Select(o => new Bounds(o.X - 6, o.Y - 6, o.X + 6, o.Y + 6)),
    ];
}
