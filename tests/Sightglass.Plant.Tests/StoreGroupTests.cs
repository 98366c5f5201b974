using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Tests;

/// <summary>Which stores are worked out together.</summary>
public sealed class StoreGroupTests
{
    private const string Systems = """
        systems:
          first: { medium: main, alive: yes, text: One. }
          second: { medium: brake, alive: yes, text: Another. }
          third: { medium: fuel, alive: yes, text: A third. }

        """;

    private const string Stores = Systems + """
        items:
          main: { kind: reservoir, system: first, volume: 1 m^3 }
          pipe: { kind: air line, system: second, length: 20 m, diameter: 32 mm }
          line: { kind: fuel line, system: third, volume: 1 L }

        """;

    /// <summary>What nothing joins stands apart.</summary>
    [Fact]
    public void Compile_NothingBetween_EachSystemApart() => Assert.Equal([["main"], ["pipe"], ["line"]], Named(Stores));

    /// <summary>A path between systems, whatever its own system, and a valve that follows a store of another join them.</summary>
    [Theory]
    [InlineData("  cock: { kind: hand valve, from: main, to: pipe, diameter: 12 mm }")]
    [InlineData("  cock: { kind: hand valve, system: third, from: main, to: pipe, diameter: 12 mm }")]
    [InlineData("  spare: { kind: reservoir, system: first, volume: 1 L }\n  relay: { kind: relay valve, from: main, to: spare, follows: pipe, diameter: 12 mm }")]
    [InlineData("  spring: { kind: spring brake, system: first, volume: 3 L, spring force: 60 kN, begins at: 60 psi, anti-compounded by: cylinder }\n  cylinder: { kind: brake cylinder, system: second, diameter: 200 mm, travel: 100 mm }")]
    public void Compile_SomethingBetween_Together(string items)
    {
        string[][] named = Named(Stores + items + "\n");
        Assert.Equal(2, named.Length);
        Assert.Contains("main", named[0]);
        Assert.Contains("pipe", named[0]);
        Assert.Equal(["line"], named[1]);
    }

    /// <summary>Systems joined one after the other, the last joint first.</summary>
    [Fact]
    public void Compile_AChainOfSystems_Together()
    {
        const string Chain = """
            systems:
              a: { medium: main, alive: yes, text: One. }
              b: { medium: main, alive: yes, text: One. }
              c: { medium: main, alive: yes, text: One. }
              d: { medium: main, alive: yes, text: One. }
            items:
              third to fourth: { kind: orifice, from: three, to: four, diameter: 1 mm }
              first to second: { kind: orifice, from: one, to: two, diameter: 1 mm }
              four: { kind: reservoir, system: d, volume: 1 L }
              two: { kind: reservoir, system: b, volume: 1 L }
              one: { kind: reservoir, system: a, volume: 1 L }
              three: { kind: reservoir, system: c, volume: 1 L }
              second to third: { kind: orifice, from: two, to: three, diameter: 1 mm }

            """;
        Assert.Equal([["four", "two", "one", "three"]], Named(Chain));
    }

    /// <summary>Two fluids of one system stand apart.</summary>
    [Fact]
    public void Compile_LiquidAndGasInOneSystem_Apart() =>
        Assert.Equal([["main"], ["pipe"], ["line"]], Named(Stores.Replace("system: third", "system: first", StringComparison.Ordinal)));

    /// <summary>The stores of each network; not its leaks and boundaries.</summary>
    private static string[][] Named(string yaml)
    {
        Plan plan = Plants.Compile(yaml);
        return [.. plan.AmountNames.Select(names => names.Where(plan.Book.Items.ContainsKey).ToArray())];
    }
}
