using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Diagram;

/// <summary>
/// Draws couplings that are joined crosswise: a stub with the symbol at one hose of each, and from there to the other's hose. Everything else in a drawing stands upright or
/// lies level: what runs aslant is wrong.
/// </summary>
internal static class ThroughCrossings
{
    public static string Words => Say.It("crossed");

    /// <summary>Between two vehicles whose hoses are crossed, so that they can be seen to cross.</summary>
    public const double VehicleGap = 128;

    /// <summary>From the first hose to where its line turns aside; the symbol stands halfway. At the second hose half of it.</summary>
    private const double Stub = 24;

    /// <summary>How far lines run on from a hose to one that is not drawn.</summary>
    private const double Reach = VehicleGap - Stub;

    /// <summary>Draws what it can.</summary>
    /// <returns>The couplings that are drawn so.</returns>
    public static HashSet<string> Draw(DiagramBoard board, DiagramInput input)
    {
        HashSet<string> drawn = [];
        Dictionary<string, DiagramNode> couplings = input.Nodes.Where(n => n.Symbol == DiagramSymbol.Coupling).ToDictionary(n => n.Id, StringComparer.Ordinal);
        foreach (DiagramCrossing crossing in input.Crossings.Where(c => !drawn.Contains(c.One) && !drawn.Contains(c.Other)))
        {
            if (couplings.TryGetValue(crossing.One, out DiagramNode? one) && couplings.TryGetValue(crossing.Other, out DiagramNode? other)
                && Ends(board, one) is { Count: > 0 } upper && Ends(board, other) is { Count: > 0 } lower && upper.Select(e => e.X).SequenceEqual(lower.Select(e => e.X)))
            {
                drawn.Add(one.Id);
                drawn.Add(other.Id);
                (one, upper, other, lower) = upper[0].Y < lower[0].Y ? (one, upper, other, lower) : (other, lower, one, upper);
                Draw(board, crossing.Id, (one, upper), (other, lower));
            }
        }

        return drawn;
    }

    // From the left.
    private static List<(double X, double Y)> Ends(DiagramBoard board, DiagramNode coupling) =>
        [.. new[] { coupling.From, coupling.To }.OfType<string>().Where(board.LinePoints.ContainsKey).Select(e => board.LinePoints[e]).OrderBy(e => e.X)];

    private static void Draw(DiagramBoard board, string id, (DiagramNode Node, List<(double X, double Y)> Ends) upper, (DiagramNode Node, List<(double X, double Y)> Ends) lower)
    {
        bool whole = upper.Ends.Count > 1;
        double from = upper.Ends[0].X;
        double way = whole || from > board.Pipes.SelectMany(p => p.Points).Average(p => p.X) ? 1 : -1;
        double turn = from + (way * Stub), to = whole ? upper.Ends[1].X - (Stub / 2) : turn + (way * Reach);
        double top = upper.Ends[0].Y, foot = lower.Ends[0].Y;
        foreach ((DiagramNode node, double y) in new[] { (upper.Node, top), (lower.Node, foot) })
        {
            board.Pipe(node.Id, [(from, y), (turn, y)], [(node.Id, 0)], node.Medium);
            board.Part(node, from + (way * Stub / 2), y, 0);
            if (whole)
            {
                board.Pipe(node.Id, [(to, y), (upper.Ends[1].X, y)], [(node.Id, 0)], node.Medium);
            }
        }

        ImmutableArray<ImmutableArray<(double X, double Y)>> lines = [[(turn, top), (to, foot)], [(turn, foot), (to, top)]];
        board.Reserved.AddRange(lines);
        double middle = (turn + to) / 2, half = board.Width(Words, true) / 2;
        (double X, double Y)[] words = [(middle, top - (board.LabelSize * 0.8)), (middle, foot + (board.LabelSize * 1.4))];
        board.Crosses.Add(new(id, lines, [.. words]));
        foreach ((double x, double y) in words)
        {
            board.Labels.Add(new("", "value", x - half, y, "start", new Bounds(x - half, y - (board.LabelSize * 0.8), x + half, y + (board.LabelSize * 0.25))));
        }
    }
}
