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

    /// <summary>No piece is narrower than this share of the widest, unless it is the last.</summary>
    private const double Least = 0.6;

    /// <summary>Room of a line's name above the line it belongs to, pixels.</summary>
    private const double NameAbove = 6;

    /// <summary>From a line to the middle of its name, at most.</summary>
    private const double NameReach = 22;

    /// <summary>How far from the edge the name of a line may stand.</summary>
    private const double NameFurthest = 300;

    /// <summary>The pieces, from the left, as parts of the sheet; the whole sheet where it is no wider. What is no wider than a piece is whole in one of them.</summary>
    /// <param name="layout">What is divided.</param>
    /// <param name="widest">Greatest width of a piece, pixels; 100 or more.</param>
    public static ImmutableArray<Bounds> Of(DiagramLayout layout, double widest)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentOutOfRangeException.ThrowIfLessThan(widest, 100);
        ImmutableArray<Bounds> whole = [.. Whole(layout).Select(b => b.Grow(Free)).Where(b => b.Width <= widest)];
        ImmutableArray<Bounds>.Builder pieces = ImmutableArray.CreateBuilder<Bounds>();
        Bounds rest = layout.Sheet;
        while (rest.Width > widest)
        {
            double edge = Edge(whole, rest.Left, widest);
            pieces.Add(rest with { Right = edge });
            double next = whole.Where(b => b.Left < edge && edge < b.Right).Select(b => b.Left).DefaultIfEmpty(edge).Min();
            rest = rest with { Left = next > rest.Left ? next : edge };
        }

        pieces.Add(rest);
        return pieces.ToImmutable();
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
            foreach (double edge in new[] { piece.Left, piece.Right }.Where(x => x > layout.Sheet.Left && x < layout.Sheet.Right))
            {
                w.Path("cut", new SvgPath().Segment(edge, piece.Low, edge, piece.High));
            }

            if (piece.Left > layout.Sheet.Left)
            {
                NameLines(w, layout, piece);
            }

            w.Close().Close().Break();
        }

        return w.ToString();
    }

    private static void NameLines(SvgWriter w, DiagramLayout layout, Bounds piece)
    {
        ImmutableArray<Bounds> taken = [.. Whole(layout)];
        foreach (double y in Across(layout, piece.Left))
        {
            DiagramLabel? name = layout.Labels.Where(l => l.Style == "line-words" && l.X < piece.Left && Math.Abs(((l.Box.Low + l.Box.High) / 2) - y) < NameReach).MaxBy(l => l.X);
            if (name is not null && RoomFor(name.Box, piece.Left, y, taken) is { } room)
            {
                w.Text("line-words", room.Left, y - NameAbove, name.Text);
            }
        }
    }

    /// <summary>Above a line, as near to the left edge as there is room.</summary>
    private static Bounds? RoomFor(Bounds name, double left, double y, ImmutableArray<Bounds> taken)
    {
        for (double x = left + Free; x < left + NameFurthest; x += Free)
        {
            Bounds box = new(x, y - NameAbove - name.Height, x + name.Width, y - NameAbove + 2);
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

    /// <summary>Where a piece ends: where it cuts through the least, and of such places the furthest.</summary>
    private static double Edge(ImmutableArray<Bounds> whole, double left, double widest)
    {
        double furthest = left + widest;
        return whole.SelectMany(b => new[] { b.Left, b.Right }).Append(furthest)
            .Where(x => x >= left + (Least * widest) && x <= furthest)
            .OrderBy(x => whole.Count(b => b.Left < x && x < b.Right)).ThenByDescending(x => x).First();
    }

    /// <summary>What is to be whole in one piece.</summary>
    private static IEnumerable<Bounds> Whole(DiagramLayout layout)
    {
        IEnumerable<Bounds> upright = layout.Pipes.Select(p => p.Points)
            .Concat(layout.Instruments.SelectMany(i => i.Lines))
            .SelectMany(line => line.Zip(line.Skip(1)))
            .Where(s => s.First.X == s.Second.X)
            .Select(s => new Bounds(s.First.X, Math.Min(s.First.Y, s.Second.Y), s.First.X, Math.Max(s.First.Y, s.Second.Y)));
        return Boxes(layout).Concat(upright);
    }

    private static IEnumerable<Bounds> Boxes(DiagramLayout layout) =>
    [
        .. layout.Bodies.Select(b => b.Box), .. layout.Parts.Select(p => p.Box), .. layout.Labels.Select(l => l.Box), .. layout.Instruments.Select(i => i.Box),
        .. layout.Crosses.Select(c => c.Lines.SelectMany(l => l).Select(p => new Bounds(p.X, p.Y, p.X, p.Y)).Aggregate((a, b) => a.Union(b))),
        .. layout.Glasses.Select(g => new Bounds(g.X, g.Top, g.X, g.Bottom)), .. layout.OpenEnds.Select(o => new Bounds(o.X - 6, o.Y - 6, o.X + 6, o.Y + 6)),
    ];
}
