using System.Collections.Immutable;

namespace Sightglass.Drawing.Diagram;

/// <summary>A line that goes through a train, as points along it: the brake pipe.</summary>
/// <param name="Name">As drawn on the machine.</param>
/// <param name="Points">Names of the lines it is made of and metres on the machine's axis, from the head.</param>
public sealed record ThroughLine(string Name, ImmutableArray<(string Node, double X)> Points)
{
    /// <summary>The line that goes through most vehicles; null where none does.</summary>
    public static ThroughLine? LongestOf(DiagramInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        List<List<DiagramNode>> vehicles = [.. input.Nodes.Where(n => n.Symbol != DiagramSymbol.Coupling).GroupBy(n => n.Vehicle).OrderBy(g => g.Average(n => n.Order)).Select(g => g.ToList())];
        List<List<ThroughBus>> buses = [.. vehicles.Select(ThroughBuses.Of)];
        List<(int Vehicle, ThroughBus Bus)>? longest = ThroughTrain.Rows(buses, [.. input.Nodes.Where(n => n.Symbol == DiagramSymbol.Coupling)]).MaxBy(r => r.Count);
        if (longest is null)
        {
            return null;
        }

        ThroughBus named = (longest.Find(b => vehicles[b.Vehicle][0].VehicleName.Length == 0).Bus ?? longest[0].Bus)!;
        string name = named.Lines.FirstOrDefault(n => !n.IsEnd)?.Label ?? named.Nodes[0].Label;
        return new(name, [.. longest.SelectMany(b => PointsOf(b.Bus)).OrderBy(p => p.X)]);
    }

    // Lines have no place of their own: they are spread between the ends.
    private static IEnumerable<(string Node, double X)> PointsOf(ThroughBus bus)
    {
        List<DiagramNode> lines = [.. bus.Lines.Where(n => !n.IsEnd)];
        double from = bus.Left?.Order ?? bus.Right!.Order, to = bus.Right?.Order ?? bus.Left!.Order;
        return lines.Select((n, i) => (n.Id, from + ((to - from) * (i + 0.5) / lines.Count)));
    }
}
