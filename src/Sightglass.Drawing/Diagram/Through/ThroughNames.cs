using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Diagram;

/// <summary>Writes the names of lines above them, where nothing stands.</summary>
internal static class ThroughNames
{
    public static void Write(ThroughBlock block, DiagramBoard board)
    {
        foreach (ThroughRow row in block.Rows)
        {
            IReadOnlyList<DiagramNode> ends = [.. new[] { row.Bus?.Left, row.Bus?.Right }.OfType<DiagramNode>()];
            foreach (DiagramNode line in row.Nodes.Where(n => n.Role == DiagramRole.Line && n.Label.Length > 0).OrderBy(n => ends.Contains(n) ? 0 : 1))
            {
                Write(line, board, row.Y, ends.Contains(line));
            }
        }
    }

    private static void Write(DiagramNode line, DiagramBoard board, double y, bool isEnd)
    {
        double[] xs = [.. board.Pipes.Where(p => p.Id.StartsWith(PipeOf(line), StringComparison.Ordinal) && p.Points.All(q => Math.Abs(q.Y - y) < 0.01)).SelectMany(p => p.Points).Select(p => p.X)];
        if (xs.Length == 0 && board.LinePoints.TryGetValue(line.Id, out (double X, double Y) point))
        {
            xs = [point.X];
        }

        if (xs.Length == 0)
        {
            return;
        }

        double width = board.WidthOf(line.Label, "line-words");
        double from = xs.Min() + (isEnd ? 0 : 8), to = xs.Max() - width - (isEnd ? 0 : 8);
        if (isEnd && board.LinePoints.TryGetValue(line.Id, out (double X, double Y) hose))
        {
            bool left = hose.X <= xs.Average();
            (from, to) = left ? (hose.X, hose.X + 60) : (hose.X - width - 60, hose.X - width);
            if (!left)
            {
                (from, to) = (to, from);
            }
        }

        int steps = Math.Max(0, (int)(Math.Abs(to - from) / 6));
        IEnumerable<double> spots = Enumerable.Range(0, steps + 1).Select(i => from + (Math.Sign(to - from) * i * 6.0));
        foreach (double x in spots.Append(xs.Min() - width - 8).Append(xs.Max() + 8))
        {
            foreach (double baseline in isEnd ? [y - 18] : new[] { y - 8, y + board.LineHeight + 2 })
            {
                Bounds box = new(x, baseline - (board.LabelSize * 0.8), x + width, baseline + (board.LabelSize * 0.25));
                if (board.IsFree(box, 3) && board.IsClearOfPipes(box, 3))
                {
                    board.Label(line.Label, "line-words", x, baseline, "start", line.Medium);
                    return;
                }
            }
        }
    }

    /// <summary>How the stretches of a line are named.</summary>
    public static string PipeOf(DiagramNode line) => Svg.Slug.Of("along " + line.Id);
}
