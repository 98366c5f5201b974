using M = Sightglass.Drawing.Diagram.DiagramMeasure;

namespace Sightglass.Drawing.Diagram;

/// <summary>Heights of the rows above and below the tanks: the first symbol of every vertical pipe stands on one line, and so on.</summary>
internal sealed class DiagramRows
{
    private const double Arrow = 14;
    private const double Clear = 14;

    public DiagramRows(IReadOnlyList<DiagramChain> chains)
    {
        double[] fills = Halves(chains, DiagramRoute.Fill);
        double[] returns = Halves(chains, DiagramRoute.Return);
        double[] drains = Halves(chains, DiagramRoute.Drain);
        double[] supplies = Halves(chains, DiagramRoute.Supply);
        Fill = Stack(fills, -11, -8);
        double fillTop = fills.Length > 0 ? Fill[^1] - fills[^1] : 0;
        Return = Stack(returns, fills.Length > 0 ? fillTop - 34 : -27, -34);
        double low = returns.Length > 0 ? Return[^1] - returns[^1] - 26 : fills.Length > 0 ? fillTop - 43 : -52;
        TopLane = Math.Min(low, M.TankHeight - M.MachineHeight - Rise(chains));
        Drain = Stack(drains, M.TankHeight + 7, 8);
        double drainEnd = drains.Length > 0 ? Drain[^1] + drains[^1] + Arrow : M.TankHeight;
        Supply = Stack(supplies, M.TankHeight + (drains.Length > 0 ? 45 : 31), 34);
        double supplyEnd = supplies.Length > 0 ? Supply[^1] + supplies[^1] + 35 : M.TankHeight + 58;
        Lane = Math.Max(supplyEnd, drainEnd + 26);
    }

    /// <summary>Middles of the symbols from the tank outward.</summary>
    public double[] Fill { get; }

    public double[] Return { get; }

    public double[] Drain { get; }

    public double[] Supply { get; }

    public double TopLane { get; }

    public double Lane { get; }

    /// <summary>A chain's symbols as they follow each other from the tank.</summary>
    public static IEnumerable<DiagramLink> FromTank(DiagramChain chain)
    {
        bool away = chain.Route == DiagramRoute.Drain || (chain.Route == DiagramRoute.Supply && chain.From is { IsTank: true });
        return away ? chain.Links : Enumerable.Reverse(chain.Links);
    }

    // Between a machine's top and the return side the symbols of the longest riser have room.
    private static double Rise(IReadOnlyList<DiagramChain> chains) => chains.Where(c => c.Route == DiagramRoute.Riser && c.Links.Count > 0)
        .Select(c => ((c.Links.Count - 1) * M.RowPitch) + Half(c.Links[0]) + Half(c.Links[^1]) + (2 * Clear)).DefaultIfEmpty(0).Max();

    private static double Half(DiagramLink link) => DiagramPart.SizeOf(link.Path.Symbol).Along;

    private static double[] Halves(IReadOnlyList<DiagramChain> chains, DiagramRoute route)
    {
        List<double> halves = [];
        foreach (DiagramChain chain in chains.Where(c => c.Route == route))
        {
            int row = 0;
            foreach (DiagramLink link in FromTank(chain))
            {
                double half = Half(link);
                if (row == halves.Count)
                {
                    halves.Add(half);
                }

                halves[row] = Math.Max(halves[row], half);
                row++;
            }
        }

        return [.. halves];
    }

    private static double[] Stack(double[] halves, double edge, double gap)
    {
        double[] rows = new double[halves.Length];
        int way = Math.Sign(gap);
        for (int i = 0; i < halves.Length; i++)
        {
            rows[i] = edge + (way * halves[i]);
            edge = rows[i] + (way * halves[i]) + gap;
        }

        return rows;
    }
}
