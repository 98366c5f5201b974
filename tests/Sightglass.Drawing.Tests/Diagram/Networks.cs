using CsCheck;
using Sightglass.Drawing.Diagram;

namespace Sightglass.Drawing.Tests.Diagram;

/// <summary>Networks to lay out: small ones by hand, any by chance.</summary>
internal static class Networks
{
    private static readonly DiagramSymbol[] _symbols =
        [DiagramSymbol.Valve, DiagramSymbol.Pump, DiagramSymbol.Filter, DiagramSymbol.Check, DiagramSymbol.Orifice, DiagramSymbol.CutOff];

    public static DiagramNode Tank(string id, double order = 0) => new(id, DiagramRole.Tank, DiagramSymbol.Tank, id) { Order = order, HasVent = true };

    public static DiagramNode Line(string id) => new(id, DiagramRole.Line, DiagramSymbol.Line, id);

    public static DiagramNode Machine(string id, string from) => new(id, DiagramRole.Machine, DiagramSymbol.Engine, id) { From = from };

    public static DiagramNode Path(string id, string? from, string? to, DiagramSymbol symbol = DiagramSymbol.Valve) =>
        new(id, DiagramRole.Path, symbol, id) { From = from, To = to, IsOperated = symbol == DiagramSymbol.Valve, IsSwitch = symbol == DiagramSymbol.Valve, Kind = symbol.ToString().ToLowerInvariant() };

    public static DiagramInput Of(params DiagramNode[] nodes) => new("Any", "fuel", [.. nodes]);

    public static DiagramInput OneTank => Of(Tank("tank"), Path("hole", "tank", null, DiagramSymbol.Orifice));

    /// <summary>A tank, a pump, an engine and what comes back, without headers.</summary>
    public static DiagramInput Circuit => Of(
        Tank("tank"), Line("suction"), Line("rail"), Machine("engine", "rail"),
        Path("tank valve", "tank", "suction"), Path("pump", "suction", "rail", DiagramSymbol.Pump), Path("regulator", "rail", "tank", DiagramSymbol.Check));

    /// <summary>Air: a compressor fills one reservoir, the next hangs behind a check valve and feeds two outlets.</summary>
    public static DiagramInput Air => new("Air", "main",
    [
        Tank("first reservoir", 1), Tank("second reservoir", 2), Line("delivery"), Line("train line"),
        new DiagramNode("compressor", DiagramRole.Machine, DiagramSymbol.Engine, "compressor") { To = "delivery" },
        Path("after check", "delivery", "first reservoir", DiagramSymbol.Check),
        Path("between check", "first reservoir", "second reservoir", DiagramSymbol.Check),
        Path("train cock", "second reservoir", "train line"),
        Path("horn", "train line", null), Path("brakes", "train line", null, DiagramSymbol.Orifice),
    ]);

    /// <summary>Two tanks with two engines on two headers, a cross-over, a bypass round a filter.</summary>
    public static DiagramInput Twin => Of(
        Tank("left tank", 1), Tank("right tank", 2), Line("left header"), Line("right header"), Line("left rail"), Line("right rail"), Line("return header"),
        Machine("left engine", "left rail"), Machine("right engine", "right rail"),
        Path("left supply", "left tank", "left header"), Path("right supply", "right tank", "right header"), Path("left second", "right tank", "left header"),
        Path("cross-over", "left header", "right header"),
        Path("left pump", "left header", "left rail", DiagramSymbol.Pump), Path("left bypass", "left header", "left rail", DiagramSymbol.Check),
        Path("right pump", "right header", "right rail", DiagramSymbol.Pump),
        Path("left spill", "left rail", "return header", DiagramSymbol.Orifice), Path("right spill", "right rail", "return header", DiagramSymbol.Orifice),
        Path("left return", "return header", "left tank"), Path("right return", "return header", "right tank"));

    /// <summary>A line with a spring of its own, and far below it another whose way back to it passes three symbols.</summary>
    public static DiagramInput LongRiser => Of(
        Tank("first", 1), Tank("second", 2), Line("collector"), Line("pumped"), Line("side"), Line("return"),
        Path("in", "first", "collector", DiagramSymbol.Pump), Path("back", "collector", "first"), Path("lift", "collector", "pumped", DiagramSymbol.Pump),
        Path("cut", "pumped", "side", DiagramSymbol.CutOff), Path("clean", "return", "side", DiagramSymbol.Filter),
        Path("well", "second", "return", DiagramSymbol.Filter), Path("drip", "return", "second", DiagramSymbol.Orifice), Path("source", "spring", "return", DiagramSymbol.Pump), Line("spring"),
        Path("whirl", "spring", "spring"), Path("over", "first", "second", DiagramSymbol.Pump));

    /// <summary>Any tanks, lines, machines and paths between them, sensible or not.</summary>
    public static Gen<DiagramInput> Any =>
        from tanks in Gen.Int[0, 4]
        from lines in Gen.Int[0, 6]
        from machines in Gen.Int[0, 2]
        from paths in Gen.Select(Gen.Int[0, 200], Gen.Int[0, 200], Gen.Int[0, 5]).Array[0, 14]
        from gauges in Gen.Select(Gen.Int[0, 200], Gen.Int[0, 200]).Array[0, 3]
        where tanks + lines > 0
        select Build(tanks, lines, machines, paths, gauges);

    /// <summary>The network in words, for a failing test.</summary>
    public static string Words(DiagramInput input) => string.Join("; ", input.Nodes.Select(n => n.Role switch
    {
        DiagramRole.Path or DiagramRole.Machine => $"{n.Id} ({n.Symbol}): {n.From ?? "outside"} > {n.To ?? "outside"}",
        DiagramRole.Gauge => $"{n.Id}: {string.Join(" & ", n.Of)}",
        _ => n.Id,
    }));

    private static DiagramInput Build(int tanks, int lines, int machines, (int From, int To, int Symbol)[] paths, (int A, int B)[] gauges)
    {
        List<DiagramNode> nodes = [];
        nodes.AddRange(Enumerable.Range(0, tanks).Select(i => Tank($"tank {i}", i)));
        nodes.AddRange(Enumerable.Range(0, lines).Select(i => Line($"line {i}")));
        List<string> stores = [.. nodes.Select(n => n.Id)];
        string? End(int n) => n % (stores.Count + 1) == stores.Count ? null : stores[n % (stores.Count + 1)];
        nodes.AddRange(Enumerable.Range(0, machines).Select(i => Machine($"machine {i}", stores[^(1 + (i % stores.Count))])));
        nodes.AddRange(paths.Select((p, i) => Path($"path {i}", End(p.From), End(p.To), _symbols[p.Symbol])));
        nodes.AddRange(gauges.Select((g, i) => new DiagramNode($"gauge {i}", DiagramRole.Gauge, DiagramSymbol.Gauge, $"gauge {i}")
        {
            Of = [.. new[] { stores[g.A % stores.Count], stores[g.B % stores.Count] }.Distinct()],
            Detail = "a formula",
        }));
        return new DiagramInput("Any", "fuel", [.. nodes]);
    }
}
