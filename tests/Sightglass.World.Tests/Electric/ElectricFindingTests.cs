using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.World.Situations;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Electric;

/// <summary>What a book can get wrong about circuits, feeders and plugs: each is told with its line and what would be right.</summary>
public sealed class ElectricFindingTests
{
    [Theory]
    [InlineData("P035", "a: { kind: cable, from: bars, to: plus }")]
    [InlineData("P035", "a: { kind: three-phase cable, from: bars, to: plus, resistance: 1 mOhm }")]
    [InlineData("P035", "a: { kind: three-phase breaker, from: bars, to: frame, rating: 1 A }")]
    [InlineData("P037", "a: { kind: contactor, from: plus, to: minus, picks at: 10 V, drops at: 20 V }")]
    [InlineData("P038", "a: { kind: contact, from: plus, to: minus }")]
    [InlineData("P038", "a: { kind: contact, from: plus, to: minus, coil: key }")]
    [InlineData("P039", "a: { kind: starter, from: plus, to: minus, turns: key, cranks while: on of key, resistance: 1 Ohm, needs: 1 V }")]
    [InlineData("P040", "a: { kind: receptacle, pins: { 1: key }, places: [cab], who: [hand] }")]
    [InlineData("P040", "a: { kind: receptacle, pins: { 1: bars, 2: far bars }, places: [cab], who: [hand] }")]
    [InlineData("P041", "a: { kind: receptacle, pins: { 1: plus }, cover joins: [plus], places: [cab], who: [hand] }")]
    [InlineData("P041", "a: { kind: receptacle, pins: { 1: plus }, cover joins: [plus, bars], places: [cab], who: [hand] }")]
    [InlineData("P016", "a: { kind: door, opened by: key, places: [cab], who: [hand] }")]
    [InlineData("P016", "a: { kind: door, closed by: plus, places: [cab], who: [hand] }")]
    [InlineData("P016", "a: { kind: door, opened by: coil, locked by: plus, places: [cab], who: [hand] }\n  coil: { kind: contactor, from: plus, to: minus, picks at: 40 V, drops at: 20 V }")]
    [InlineData("P045", "a: { kind: notch decoder, governor wires: [plus, bars], minus: minus, codes: { idle: 0 } }")]
    [InlineData("P042", "a: { kind: receptacle, pins: { 1: plus }, jumper crosses: 1 and 2, places: [cab], who: [hand] }")]
    [InlineData("P042", "a: { kind: receptacle, pins: { 1: plus }, jumper crosses: \"1 with 2, 2 with 3\", places: [cab], who: [hand] }")]
    public void Compile_WrongItem_IsToldAtItsLine(string code, string item)
    {
        Diagnostic[] errors = [.. Found(Text + item).Where(d => d.Severity == Severity.Error)];
        Assert.NotEmpty(errors);
        Assert.All(errors, e => Assert.Equal((code, 12), (e.Code, e.Span.Line)));
        Assert.All(errors, e => Assert.False(string.IsNullOrEmpty(e.Fix)));
    }

    [Fact]
    public void Compile_EngineWithAForeignSource_IsTold()
    {
        const string engine = """
              tank: { kind: tank, position: { x: 2 m, y: 0 m, z: 1 m }, floor area: 2 m^2, depth: 1 m, ports: { low: { height: 10 mm } } }
              rail: { kind: fuel line, volume: 2 L, position: { x: 2 m, y: 0 m, z: 1 m } }
              pump: { kind: displacement pump, from: "tank, low", to: rail, flow: 15 L/min }
              engine: { kind: engine, from: rail, to: outside, consumption: { running: 19 L/h }, head-end source: plus }
            """;
        Assert.Contains(Found(Text.TrimEnd(' ') + engine), d => d.Code == "P044" && d.Span.Line == 15);
    }

    /// <summary>Two receptacles that do not agree which wires change places between them: only a train can show it.</summary>
    [Fact]
    public void Compile_CrossesDiffer_IsToldOfTheTrain()
    {
        DiagnosticList found = new();
        ClassBook book = BookReader.Read([new SourceText("book.yaml", PoweredTrain.Text.Replace("pins: { 1: minus, 5: left doors, 6: right doors }, jumper crosses: 5 with 6", "pins: { 1: minus, 5: left doors, 6: right doors }", StringComparison.Ordinal))], [], KindLibrary.Catalog, found)!;
        PlanCompiler.Compile(book.Coupled("two coaches"), found);
        Assert.Contains(found, d => d.Code == "P043");
    }

    /// <summary>A pin that the jumper lacks would be a fault that does nothing: the situation is refused where it stands, with the pins that there are.</summary>
    [Theory]
    [InlineData(900, 900, false)]
    [InlineData(15, 18, false)]
    [InlineData(15, 17, true)]
    public void Bind_APinThatTheJumperLacks_IsTold(int from, int to, bool takes)
    {
        using Rig rig = DemoTrains.At("second machine without sand");
        Situation whole = rig.Plan.Book.Situations["second machine without sand"];
        FaultStart broken = whole.Faults.First(f => f.Fault == "open pin");
        FaultStart other = broken with { Values = [broken.Values.Single() with { From = from, To = to }] };
        DiagnosticList found = new();
        Assert.Equal(takes, SituationStart.Bind(rig.Plan, whole with { Faults = [other] }, found) is not null);
        Assert.Equal(takes ? 0 : 1, found.Count);
        Assert.All(found, d => Assert.Equal(("W017", broken.Values[0].Span), (d.Code, d.Span)));
        Assert.All(found, d => Assert.Contains($"has no pin {(from > 26 ? from : 18)}", d.Message, StringComparison.Ordinal));
        Assert.All(found, d => Assert.Equal("it has 2, 3, 4, 6, 7, 8, 9, 10, 12, 15, 16, 17, 23, 26", d.Fix));
    }

    private const string Text = """
        book: Wrong
        length: 20 m
        places: { cab: { x: 5 m, y: 0 m } }
        roles: { hand: { walks: 1.3 m/s } }
        items:
          plus: { kind: wire }
          minus: { kind: wire }
          bars: { kind: busbar }
          far bars: { kind: busbar }
          key: { kind: switch, who: [hand], places: [cab], for: Nothing., normal: "Off." }
          source: { kind: three-phase source, to: bars, power: 10 kW }

        """ + "  ";

    private static DiagnosticList Found(string text)
    {
        DiagnosticList found = new();
        if (BookReader.Read([new SourceText("book.yaml", text)], [], KindLibrary.Catalog, found) is { } book)
        {
            PlanCompiler.Compile(book, found);
        }

        return found;
    }
}
