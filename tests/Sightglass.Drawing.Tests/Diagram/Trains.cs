using CsCheck;
using Sightglass.Drawing.Diagram;

namespace Sightglass.Drawing.Tests.Diagram;

/// <summary>Networks of vehicles with lines that go through them.</summary>
internal static class Trains
{
    private static readonly DiagramSymbol[] _symbols =
    [
        DiagramSymbol.Valve, DiagramSymbol.Check, DiagramSymbol.Regulator, DiagramSymbol.Relay, DiagramSymbol.ControlValve, DiagramSymbol.Filter, DiagramSymbol.Compressor, DiagramSymbol.Pipe,
    ];

    /// <summary>One to four vehicles, each with lines from end to end or from one end only, and any vessels, lines, paths and gauges on them, sensible or not.</summary>
    public static Gen<DiagramInput> Any =>
        from vehicles in Vehicle.Array[1, 4]
        select Build(vehicles);

    private static Gen<(int Buses, int Ends, int Reservoirs, int Cylinders, int Lines, (int From, int To, int Symbol)[] Paths, int[] Gauges)> Vehicle =>
        from buses in Gen.Int[1, 3]
        from ends in Gen.Int[0, 2]
        from reservoirs in Gen.Int[0, 3]
        from cylinders in Gen.Int[0, 3]
        from lines in Gen.Int[0, 4]
        from paths in Gen.Select(Gen.Int[0, 200], Gen.Int[0, 200], Gen.Int[0, 7]).Array[0, 12]
        from gauges in Gen.Int[0, 200].Array[0, 3]
        select (buses, ends, reservoirs, cylinders, lines, paths, gauges);

    /// <summary>A machine that feeds a brake pipe, and cars on it.</summary>
    public static DiagramInput Of(int cars)
    {
        List<DiagramNode> nodes =
        [
            Part(0, "", Networks.Tank("main reservoir") with { Symbol = DiagramSymbol.Reservoir, HasVent = false }),
            Part(0, "", Networks.Path("relay valve", "main reservoir", "brake pipe", DiagramSymbol.Relay)),
        ];
        for (int v = 0; v <= cars; v++)
        {
            string name = v == 0 ? "" : $"car {v}";
            string Own(string own) => v == 0 ? own : $"{own} of {name}";
            Bus(nodes, v, name, Own("brake pipe"), Own("front hose"), Own("front cock"), Own("rear cock"), Own("rear hose"));
            if (v > 0)
            {
                nodes.Add(Part(v, name, Networks.Tank(Own("auxiliary reservoir")) with { Symbol = DiagramSymbol.Reservoir, HasVent = false }));
                nodes.Add(Part(v, name, Networks.Tank(Own("cylinder")) with { Symbol = DiagramSymbol.Cylinder, HasVent = false }));
                nodes.Add(Part(v, name, Networks.Path(Own("charging valve"), Own("brake pipe"), Own("auxiliary reservoir"), DiagramSymbol.Check)));
                nodes.Add(Part(v, name, Networks.Path(Own("control valve"), Own("auxiliary reservoir"), Own("cylinder"), DiagramSymbol.ControlValve) with { Feels = [("senses", Own("brake pipe"))] }));
                nodes.Add(Networks.Path($"coupling before car {v}", v == 1 ? "rear hose" : $"rear hose of car {v - 1}", Own("front hose"), DiagramSymbol.Coupling));
            }
        }

        return new("Train", "brake", [.. nodes]);
    }

    private static DiagramInput Build((int Buses, int Ends, int Reservoirs, int Cylinders, int Lines, (int From, int To, int Symbol)[] Paths, int[] Gauges)[] vehicles)
    {
        List<DiagramNode> nodes = [];
        for (int v = 0; v < vehicles.Length; v++)
        {
            (int buses, int ends, int reservoirs, int cylinders, int lines, (int From, int To, int Symbol)[] paths, int[] gauges) = vehicles[v];
            int here = nodes.Count;
            string name = $"car {v + 1}";
            string Own(string own) => $"{own} of {name}";
            for (int b = 0; b < buses; b++)
            {
                Bus(nodes, v, name, Own($"pipe {b}"), Own($"front hose {b}"), Own($"front cock {b}"), ends > b ? null : Own($"rear cock {b}"), Own($"rear hose {b}"));
            }

            nodes.AddRange(Enumerable.Range(0, reservoirs).Select(i => Part(v, name, Networks.Tank(Own($"reservoir {i}")) with { Symbol = DiagramSymbol.Reservoir, HasVent = false })));
            nodes.AddRange(Enumerable.Range(0, cylinders).Select(i => Part(v, name, Networks.Tank(Own($"cylinder {i}")) with { Symbol = DiagramSymbol.Cylinder, HasVent = false })));
            nodes.AddRange(Enumerable.Range(0, lines).Select(i => Part(v, name, Networks.Line(Own($"line {i}")))));
            List<string> stores = [.. nodes.Skip(here).Where(n => n.Role is DiagramRole.Tank or DiagramRole.Line && !n.IsEnd).Select(n => n.Id)];
            string? End(int n) => n % (stores.Count + 1) == stores.Count ? null : stores[n % (stores.Count + 1)];
            nodes.AddRange(paths.Select((p, i) => Part(v, name, Networks.Path(Own($"path {i}"), End(p.From), End(p.To), _symbols[p.Symbol]))));
            nodes.AddRange(gauges.Select((g, i) => Part(v, name, new DiagramNode(Own($"gauge {i}"), DiagramRole.Gauge, DiagramSymbol.Gauge, $"gauge {i}") { Of = [stores[g % stores.Count]] })));
            for (int b = 0; v > 0 && b < Math.Min(buses, vehicles[v - 1].Buses); b++)
            {
                nodes.Add(Networks.Path($"coupling {b} before {name}", $"rear hose {b} of car {v}", Own($"front hose {b}"), DiagramSymbol.Coupling));
            }
        }

        return new("Any train", "brake", [.. nodes]);
    }

    private static void Bus(List<DiagramNode> nodes, int vehicle, string name, string pipe, string frontHose, string frontCock, string? rearCock, string rearHose)
    {
        DiagramNode Cock(string id, string hose) => Networks.Path(id, pipe, hose, DiagramSymbol.Valve) with { IsOperated = true, IsSwitch = true };
        nodes.Add(Part(vehicle, name, Networks.Line(pipe)));
        nodes.Add(Part(vehicle, name, Networks.Line(frontHose) with { IsEnd = true }, 1));
        nodes.Add(Part(vehicle, name, Cock(frontCock, frontHose), 1));
        nodes.Add(Part(vehicle, name, Networks.Line(rearHose) with { IsEnd = true }, 24));
        if (rearCock is not null)
        {
            nodes.Add(Part(vehicle, name, Cock(rearCock, rearHose), 24));
        }
    }

    private static DiagramNode Part(int vehicle, string name, DiagramNode node, double at = 12) => node with { Vehicle = vehicle, VehicleName = name, Order = (vehicle * 25) + at };
}
