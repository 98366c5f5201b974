using Sightglass.Drawing.Shapes;
using M = Sightglass.Drawing.Diagram.ThroughMeasure;

namespace Sightglass.Drawing.Diagram;

/// <summary>
/// Lays a network out along the lines that go through its vehicles: reservoirs stand above, cylinders below, the lines run straight from end to end between them, and
/// everything else is a column from row to row. Vehicles stand side by side, their lines at the same heights.
/// </summary>
internal sealed class ThroughPlanner
{
    private readonly DiagramInput _input;
    private readonly DiagramBoard _board;
    private readonly double _size;

    public ThroughPlanner(DiagramInput input, DiagramOptions options)
    {
        (_input, _size) = (input, options.LabelSize);
        _board = new DiagramBoard(options);
    }

    public DiagramLayout Plan()
    {
        List<DiagramNode> couplings = [.. _input.Nodes.Where(n => n.Symbol == DiagramSymbol.Coupling)];
        List<List<DiagramNode>> vehicles = [.. _input.Nodes.Where(n => n.Symbol != DiagramSymbol.Coupling).GroupBy(n => n.Vehicle).OrderBy(g => g.Average(n => n.Order)).Select(g => g.ToList())];
        List<List<ThroughBus>> buses = [.. vehicles.Select(ThroughBuses.Of)];
        List<List<(int Vehicle, ThroughBus Bus)>> rows = ThroughTrain.Rows(buses, couplings);
        List<ThroughBlock> blocks = [.. vehicles.Select((v, i) => new ThroughBlock(v, [.. rows.Select(r => r.Find(b => b.Vehicle == i).Bus)]))];
        Order(blocks);
        HashSet<string> marked = [];
        List<ThroughSpread> spreads = [];
        double left = 0;
        for (int i = 0; i < blocks.Count; i++)
        {
            ThroughSpread spread = new(blocks[i], _input, _size, left, marked);
            spreads.Add(spread);
            left = spread.Right + (i + 1 < blocks.Count && AreCrossed(blocks[i], blocks[i + 1]) ? ThroughCrossings.VehicleGap : M.VehicleGap);
        }

        Heights(blocks);
        for (int i = 0; i < blocks.Count; i++)
        {
            new ThroughInk(blocks[i], spreads[i], _board, _size, couplings).Draw();
        }

        if (blocks.Count > 1)
        {
            Captions(blocks, spreads);
        }

        HashSet<string> crossed = ThroughCrossings.Draw(_board, _input);
        ThroughTrain.Couple(_board, [.. couplings.Where(c => !crossed.Contains(c.Id))]);
        foreach (ThroughBlock block in blocks)
        {
            ThroughNames.Write(block, _board);
        }

        return Finish();
    }

    private bool AreCrossed(ThroughBlock ahead, ThroughBlock behind) =>
        _input.Nodes.Any(n => _input.Crossings.Any(c => c.One == n.Id) && ahead.Nodes.Any(a => a.Id == n.From || a.Id == n.To) && behind.Nodes.Any(b => b.Id == n.From || b.Id == n.To));

    // What each vehicle is, above it.
    private void Captions(List<ThroughBlock> blocks, List<ThroughSpread> spreads)
    {
        double y = _board.Solid().Select(b => b.Low).DefaultIfEmpty(0).Min() - (2 * _size);
        for (int i = 0; i < blocks.Count; i++)
        {
            int vehicle = blocks[i].Nodes[0].Vehicle;
            _board.Label(_input.Captions.GetValueOrDefault(vehicle, blocks[i].Nodes[0].VehicleName), "body-words", spreads[i].InnerLeft, y, "start");
        }
    }

    // The vehicle with most on it says in which order the lines that go through lie.
    private static void Order(List<ThroughBlock> blocks)
    {
        if (blocks.MaxBy(b => b.Columns.Count) is not { } first)
        {
            return;
        }

        ThroughOrder.Apply(first, false);
        List<int> order = [.. first.Buses.Select(b => b.Number)];
        foreach (ThroughBlock block in blocks.Where(b => b != first))
        {
            block.SetBusOrder(order);
            ThroughOrder.Apply(block, true);
        }
    }

    private void Heights(List<ThroughBlock> blocks)
    {
        int count = blocks.Select(b => b.Buses.Count).DefaultIfEmpty(0).Max();
        double[] gaps = [.. Enumerable.Range(0, Math.Max(0, count - 1)).Select(i => blocks.Max(b => b.Buses[i].Gap))];
        foreach (ThroughBlock block in blocks)
        {
            for (int i = 0; i < gaps.Length; i++)
            {
                block.Buses[i].Gap = gaps[i];
            }
        }

        // Vessels are as high as a tank everywhere: the row lies at their feet.
        double above = blocks.Select(b => b.Rows.TakeWhile(r => r.Sort != ThroughRowSort.Bus).Sum(r => r.Gap)).DefaultIfEmpty(0).Max();
        foreach (ThroughBlock block in blocks)
        {
            List<ThroughRow> over = [.. block.Rows.TakeWhile(r => r.Sort != ThroughRowSort.Bus)];
            double y = DiagramMeasure.TankHeight + (over.Count < block.Rows.Count ? above - over.Sum(r => r.Gap) : 0);
            over[0].Y = DiagramMeasure.TankHeight;
            over[0].Gap += y - DiagramMeasure.TankHeight;
            y = DiagramMeasure.TankHeight;
            foreach (ThroughRow row in block.Rows)
            {
                row.Y = y;
                y += row.Gap;
            }
        }
    }

    private DiagramLayout Finish()
    {
        Bounds sheet = _board.Solid().Concat(_board.Pipes.Select(p => p.Points).Concat(_board.Crosses.SelectMany(c => c.Lines)).SelectMany(p => p).Select(p => new Bounds(p.X, p.Y, p.X, p.Y).Grow(8)))
            .Concat(_board.OpenEnds.Select(e => new Bounds(e.X - 8, e.Y - 10, e.X + 8, e.Y + 10))).DefaultIfEmpty(new Bounds(0, 0, 1, 1)).Aggregate((a, b) => a.Union(b));
        return _board.Layout(_input, sheet.Grow(10));
    }
}
