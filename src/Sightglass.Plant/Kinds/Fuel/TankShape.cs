using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;

namespace Sightglass.Plant.Kinds.Fuel;

/// <summary>A tank's shape as its item says it.</summary>
internal sealed class TankShape
{
    private readonly IReadOnlyList<(double Volume, double Height)> _table = [];
    private readonly string _sort;

    private TankShape(string sort, double length, double width, double depth, double capacity, IReadOnlyList<(double, double)>? table = null) =>
        (_sort, Length, Width, Depth, Capacity, _table) = (sort, length, width, depth, capacity, table ?? []);

    /// <summary>Along the machine, m.</summary>
    public double Length { get; }

    /// <summary>Across the machine, m.</summary>
    public double Width { get; }

    /// <summary>Floor to roof, m.</summary>
    public double Depth { get; }

    /// <summary>Below the roof, m³.</summary>
    public double Capacity { get; }

    /// <summary>Whether its store follows the tilt of its floor.</summary>
    public bool IsPrismatic => _sort is "prismatic" or "upright cylinder";

    /// <summary>The shape, or null after errors.</summary>
    public static TankShape? Of(Item item, DiagnosticList found)
    {
        double? length = item.Find("length");
        double? width = item.Find("width");
        double? radius = item.Find("radius");
        double? depth = item.Find("depth");
        double? area = item.Find("floor area");
        switch (item.Text("shape"))
        {
            case "upright cylinder" when radius is { } r && depth is { } d:
                return new("upright cylinder", 2 * r, 2 * r, d, Math.PI * r * r * d);
            case "upright cylinder":
                found.Error("P010", item.Span, $"`{item.Name}` is an upright cylinder without a radius or a depth", "write `radius: 45 cm` and `depth: 1.2 m`");
                return null;
            case "lying cylinder" when radius is { } r && length is { } l:
                return new("lying cylinder", l, 2 * r, 2 * r, LyingRoundTank.Volume(r, l));
            case "lying cylinder":
                found.Error("P011", item.Span, $"`{item.Name}` is a lying cylinder without a radius or a length", "write `radius: 45 cm` and `length: 3.6 m`");
                return null;
            case "dip table":
                return OfTable(item, found);
            default:
                if (depth is not { } deep || (area ?? length * width) is not { } floor)
                {
                    found.Error("P012", item.Span, $"`{item.Name}` has no floor or no depth", "write `floor area: 2 m^2`, or `length` and `width`, and `depth: 0.9 m`");
                    return null;
                }

                double side = length ?? Math.Sqrt(floor);
                return new("prismatic", side, floor / side, deep, floor * deep);
        }
    }

    /// <summary>Volume below a level, m³; above the roof that of the full tank.</summary>
    public double VolumeAt(double level)
    {
        double h = Math.Clamp(level, 0, Depth);
        if (_sort == "lying cylinder")
        {
            double r = Depth / 2;
            return Length * ((r * r * Math.Acos((r - h) / r)) - ((r - h) * Math.Sqrt(Math.Max(0, (2 * r * h) - (h * h)))));
        }

        if (_table.Count == 0)
        {
            return Capacity * h / Depth;
        }

        for (int i = 1; i < _table.Count; i++)
        {
            ((double v0, double h0), (double v1, double h1)) = (_table[i - 1], _table[i]);
            if (h <= h1)
            {
                return v0 + ((v1 - v0) * (h - h0) / (h1 - h0));
            }
        }

        return Capacity;
    }

    /// <summary>Adds the store to a network.</summary>
    public StoreHandle Add(NetworkBuilder b, string name, double density, double start)
    {
        double span = density * Physical.Gravity * Depth;
        return _sort switch
        {
            "lying cylinder" => b.AddStore<LyingRoundTank>(name, LyingRoundTank.ParametersOf(Depth / 2, Length, density), [start], [span]),
            "dip table" => b.AddStore<DipTableTank>(name, DipTableTank.ParametersOf(_table, density), [start], [span]),
            _ => b.AddStore<PrismaticTank>(name, PrismaticTank.ParametersOf(Capacity / Depth, Length, Depth, density), [start], [span]),
        };
    }

    private static TankShape? OfTable(Item item, DiagnosticList found)
    {
        (double Volume, double Height)[] rows =
            item.Parameters.TryGetValue("dip table", out ParameterValue? table) ? [.. table.Rows.Select(r => (r[1], r[0]))] : [];
        bool rises = rows.Length is >= 2 and <= DipTableTank.Rows;
        for (int i = 1; i < rows.Length; i++)
        {
            rises &= rows[i].Volume > rows[i - 1].Volume && rows[i].Height > rows[i - 1].Height;
        }

        if (!rises)
        {
            found.Error("P013", table?.Span ?? item.Span, $"the dip table of `{item.Name}` does not rise from row to row", $"write 2 to {DipTableTank.Rows} rows, both columns rising");
            return null;
        }

        double depth = rows[^1].Height;
        double side = Math.Sqrt(rows[^1].Volume / depth);
        return new("dip table", item.Find("length") ?? side, item.Find("width") ?? side, depth, rows[^1].Volume, rows);
    }
}
