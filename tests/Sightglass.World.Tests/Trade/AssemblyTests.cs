using Sightglass.Basics.Time;

namespace Sightglass.World.Tests.Trade;

/// <summary>An assembly used twice and the same parts written out in the place of the uses are one plant, to the last bit.</summary>
public sealed class AssemblyTests
{
    private const string Rest = """
        book: Pair
        length: 20 m
        places: { panel: { x: 5 m, y: 2.4 m } }
        roles: { hand: { walks: 1.3 m/s } }
        situations:
          leaking:
            people: [ { role: hand, at: panel } ]
            start: { fill of front tank: 80 %, fill of rear tank: 30 %, grade: 1 % }
            faults: [ { fault: leak, on: front tank, diameter: 8 mm, height: 10 mm } ]

        """;

    private const string Assembled = Rest + """
        assemblies:
          joined tank:
            parameters: { floor: {}, usual: { usual: open }, far: {} }
            items:
              "{name} tank": { kind: tank, position: { x: 0 m, y: 0.2 m, z: 0 m }, floor area: "{floor}", depth: 1 m, ports: { low: { height: 50 mm, x: 0.1 m, y: 0.3 m } } }
              "{name} valve": { kind: hand valve, from: "{name} tank, low", to: "{far}", area: 4 cm^2, usual: "{usual}", who: [hand], places: [panel] }
            ports: { way: "{name} tank, low" }
            facts: { "{name} is low": { is: "level of {name} tank < 10 cm" } }
        items:
          line: { kind: fuel line, volume: 2 L }
          front: { assembly: joined tank, at: { x: 0.2 m, y: 0.1 m, z: 0.5 m }, floor: 2 m^2, far: line }
          rear: { assembly: joined tank, at: { x: 8.07 m, y: -0.1 m, z: 0.5 m }, floor: 1 m^2, usual: closed, far: line, changes: { rear valve: { usual: open } } }
          drip: { kind: orifice, from: "rear, way", to: outside, diameter: 2 mm }
        """;

    private const string WrittenOut = Rest + """
        items:
          line: { kind: fuel line, volume: 2 L }
          front tank: { kind: tank, position: { x: 0.2 m, y: 0.3 m, z: 0.5 m }, floor area: 2 m^2, depth: 1 m, ports: { low: { height: 50 mm, x: 0.3 m, y: 0.4 m } } }
          front valve: { kind: hand valve, from: "front tank, low", to: line, area: 4 cm^2, usual: open, who: [hand], places: [panel] }
          rear tank: { kind: tank, position: { x: 8.07 m, y: 0.1 m, z: 0.5 m }, floor area: 1 m^2, depth: 1 m, ports: { low: { height: 50 mm, x: 8.17 m, y: 0.2 m } } }
          rear valve: { kind: hand valve, from: "rear tank, low", to: line, area: 4 cm^2, usual: open, who: [hand], places: [panel] }
          drip: { kind: orifice, from: "rear tank, low", to: outside, diameter: 2 mm }
        facts:
          front is low: { is: level of front tank < 10 cm }
          rear is low: { is: level of rear tank < 10 cm }
        """;

    [Fact]
    public void Run_AssemblyOrWrittenOut_SameHash()
    {
        using Rig assembled = new(Rig.Compile(Assembled), "leaking");
        using Rig written = new(Rig.Compile(WrittenOut), "leaking");
        foreach (Rig rig in new[] { assembled, written })
        {
            rig.Do(600, "rear valve", "closed");
            rig.World.RunTo(SimTime.FromSeconds(3600));
        }

        Assert.Equal(written.World.Steps, assembled.World.Steps);
        Assert.Equal(written.World.Hash, assembled.World.Hash);
        Assert.Equal(written.Plan.Facts.Keys, assembled.Plan.Facts.Keys);
    }

    /// <summary>The test could fail: another position of a port is another plant.</summary>
    [Fact]
    public void Run_PortElsewhere_OtherHash()
    {
        using Rig one = new(Rig.Compile(WrittenOut), "leaking");
        using Rig other = new(Rig.Compile(Assembled.Replace("x: 0.1 m, y: 0.3 m", "x: 0.5 m, y: 0.3 m", StringComparison.Ordinal)), "leaking");
        one.World.RunTo(SimTime.FromSeconds(3600));
        other.World.RunTo(SimTime.FromSeconds(3600));
        Assert.NotEqual(one.World.Hash, other.World.Hash);
    }
}
