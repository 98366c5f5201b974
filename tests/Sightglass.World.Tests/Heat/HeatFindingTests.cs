using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Tests.Heat;

/// <summary>What a book can get wrong about heat: each is told with its line and what would be right.</summary>
public sealed class HeatFindingTests
{
    private const string Text = """
        book: Warm things
        length: 20 m
        places: { cab: { x: 5 m, y: 2.4 m } }
        roles: { hand: { walks: 1.3 m/s } }
        items:
          block: { kind: thermal mass, heat capacity: 500 kJ/K }
          tank: { kind: tank, position: { x: 2 m, y: 0 m, z: 1 m }, floor area: 2 m^2, depth: 1 m }
          key: { kind: switch, who: [hand], places: [cab] }
        
        """;

    [Theory]
    [InlineData("P055", "a: { kind: heat exchanger, from: block, to: tank, conductance: 1 W/K }")]
    [InlineData("P055", "a: { kind: hand valve, from: tank, to: block, area: 1 cm^2, who: [hand], places: [cab] }")]
    [InlineData("P055", "a: { kind: heat source, to: tank, gives: 1 kW }")]
    [InlineData("P054", "a: { kind: heat exchanger, from: block, to: outside, conductance: 1 W/K, moved by: [tank] }")]
    [InlineData("P054", "a: { kind: heat exchanger, from: block, to: outside, conductance: 1 W/K, through: [key] }")]
    [InlineData("P054", "a: { kind: screen, besides: tank, who: [hand], places: [cab] }\n  b: { kind: heat exchanger, from: block, to: outside, conductance: 1 W/K, through: [a] }")]
    [InlineData("P016", "a: { kind: shutter, opened by: key, who: [hand], places: [cab] }")]
    [InlineData("P016", "a: { kind: fan, switched by: key }")]
    [InlineData("P006", "a: { kind: fan, driven by: tank }")]
    [InlineData("P015", "a: { kind: heat source, to: block, gives: 1 kW * (level of tank / 1 m) * (temperature of block / 300 K) }")]
    public void Compile_WrongItem_IsToldAtItsLine(string code, string item)
    {
        DiagnosticList found = new();
        ClassBook? book = BookReader.Read([new SourceText("book.yaml", $"{Text.TrimEnd()}\n  {item}\n")], [], KindLibrary.Catalog, found);
        Assert.False(found.HasErrors, string.Join('\n', found));
        PlanCompiler.Compile(book!, found);
        Diagnostic[] errors = [.. found.Where(d => d.Severity == Severity.Error)];
        Assert.NotEmpty(errors);
        Assert.All(errors, e => Assert.Equal((code, 9), (e.Code, e.Span.Line)));
        Assert.All(errors, e => Assert.False(string.IsNullOrEmpty(e.Fix)));
    }
}
