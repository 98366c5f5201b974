using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Diagram;

/// <summary>What goes from vehicle to vehicle: which line of one is which of the next, and the couplings between them.</summary>
internal static class ThroughTrain
{
    /// <summary>The lines that go through the train, each with its part in every vehicle that has one; couplings say which belong together.</summary>
    public static List<List<(int Vehicle, ThroughBus Bus)>> Rows(IReadOnlyList<List<ThroughBus>> buses, IReadOnlyList<DiagramNode> couplings)
    {
        List<List<(int Vehicle, ThroughBus Bus)>> rows = [];
        for (int v = 0; v < buses.Count; v++)
        {
            foreach (ThroughBus bus in buses[v])
            {
                int vehicle = v;
                HashSet<string> here = [.. bus.Nodes.Select(n => n.Id)];
                IEnumerable<string> others = couplings.Where(c => (c.From is { } f && here.Contains(f)) || (c.To is { } t && here.Contains(t))).SelectMany(c => new[] { c.From, c.To }).OfType<string>().Where(e => !here.Contains(e));
                List<(int Vehicle, ThroughBus Bus)>? row = rows.Find(r => r.TrueForAll(b => b.Vehicle != vehicle) && others.Any(o => r.Exists(b => b.Bus.Nodes.Any(n => n.Id == o))));
                if (row is null)
                {
                    rows.Add([(v, bus)]);
                }
                else
                {
                    row.Add((v, bus));
                }
            }
        }

        return rows;
    }

    /// <summary>Draws couplings: between the hoses of two vehicles, or beyond the hose of the only one that is drawn.</summary>
    public static void Couple(DiagramBoard board, IReadOnlyList<DiagramNode> couplings)
    {
        foreach (DiagramNode coupling in couplings)
        {
            List<(double X, double Y)> ends = [.. new[] { coupling.From, coupling.To }.OfType<string>().Where(board.LinePoints.ContainsKey).Select(e => board.LinePoints[e])];
            if (ends.Count == 2 && Math.Abs(ends[0].Y - ends[1].Y) < 0.01)
            {
                board.Pipe(coupling.Id, ends, [(coupling.Id, 1)], coupling.Medium);
                board.Part(coupling, (ends[0].X + ends[1].X) / 2, ends[0].Y, 0);
            }
            else if (ends.Count > 0)
            {
                Stub(board, coupling, ends[0]);
            }
        }
    }

    private static void Stub(DiagramBoard board, DiagramNode coupling, (double X, double Y) end)
    {
        bool left = end.X <= board.Pipes.SelectMany(p => p.Points).Average(p => p.X);
        double x = end.X + (left ? -22 : 22);
        board.Pipe(coupling.Id, [end, (x + (left ? -22 : 22), end.Y)], [(coupling.Id, coupling.From is { } from && board.LinePoints.ContainsKey(from) ? 1 : -1)], coupling.Medium);
        board.Part(coupling, x, end.Y, 0);
    }
}
