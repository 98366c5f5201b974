using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Tests.RunningGear;

/// <summary>What a book can get wrong about what stands on springs: each is told with its line and what would be right.</summary>
public sealed class GearFindingTests
{
    private const string At = "position: { x: 5 m, y: 0 m, z: 1 m }";

    private const string Axle = $"axle: {{ kind: axle, {At} }}\n  ";

    /// <summary>The wrong item stands at line 10, after the axle.</summary>
    [Theory]
    [InlineData("P046", $"a: {{ kind: spring, carries: key, stands on: axle, stiffness: 1 kN/m, {At}, scale: 0 m .. 1 m, places: [cab], for: It., normal: Whole. }}")]
    [InlineData("P046", $"a: {{ kind: spring, carries: axle, stands on: axle, stiffness: 1 kN/m, {At}, scale: 0 m .. 1 m, places: [cab], for: It., normal: Whole. }}")]
    [InlineData("P047", "a: { kind: carried load, lies on: key, full mass: 1 t }")]
    [InlineData("P047", "a: { kind: tank, lies on: key, floor area: 1 m^2, depth: 1 m }")]
    [InlineData("P048", $"a: {{ kind: body, mass: 1 t, {At} }}")]
    [InlineData("P048", $"a: {{ kind: truck frame, mass: 1 t, {At} }}")]
    [InlineData("P050", "a: { kind: body, mass: 1 t }")]
    public void Compile_WrongItem_IsToldAtItsLine(string code, string item) => Check(item, code);

    /// <summary>Two frames, each on the other.</summary>
    [Fact]
    public void Compile_Loop_IsTold() => Check($"a: {{ kind: truck frame, mass: 1 t, {At} }}\n  b: {{ kind: truck frame, mass: 1 t, {At} }}\n{GearMachine.Spring("s", "a", "b", 5, 0, 1e6)}{GearMachine.Spring("t", "b", "a", 5, 0, 1e6)}", "P049");

    /// <summary>A body on one spring, and one whose weight lies outside of its springs.</summary>
    [Theory]
    [InlineData(5)]
    [InlineData(2)]
    public void Compile_FallsOver_IsTold(double x) => Check(FormattableString.Invariant($"a: {{ kind: body, mass: 1 t, position: {{ x: {x} m, y: 0 m, z: 2 m }} }}\n")
        + (x < 5 ? "  second axle: { kind: axle, position: { x: 7 m, y: 0 m, z: 1 m } }\n" + GearMachine.Spring("r", "a", "second axle", 7, 1, 1e6) + GearMachine.Spring("l", "a", "second axle", 7, -1, 1e6) : "")
        + GearMachine.Spring("s", "a", "axle", 5, 1, 1e6) + (x < 5 ? GearMachine.Spring("t", "a", "axle", 5, -1, 1e6) : ""), "P051");

    [Theory]
    [InlineData(", least height: 1 m", "P052")]
    [InlineData(", renewed by: axle", "P053")]
    public void Compile_WrongSpring_IsTold(string more, string code) => Check(
        GearMachine.Spring("s", "a", "axle", 5, 1, 1e6, more)[2..] + $"  a: {{ kind: body, mass: 1 t, {At} }}\n" + GearMachine.Spring("t", "a", "axle", 5, -1, 1e6) + GearMachine.Spring("u", "a", "second axle", 7, -1, 1e6)
        + GearMachine.Spring("v", "a", "second axle", 7, 1, 1e6) + "  second axle: { kind: axle, position: { x: 7 m, y: 0 m, z: 1 m } }\n", code);

    /// <summary>A spring that does not say where it is.</summary>
    [Fact]
    public void Compile_SpringWithoutAPlace_IsTold() => Assert.Contains(
        Found($"b: {{ kind: spring, carries: a, stands on: axle, stiffness: 1 kN/m, scale: 0 m .. 1 m, places: [cab], for: It., normal: Whole. }}\n  a: {{ kind: body, mass: 1 t, {At} }}\n"), d => d.Code == "P050" && d.Span.Line == 10);

    private static void Check(string item, string code)
    {
        Diagnostic[] errors = [.. Found(item).Where(d => d.Severity == Severity.Error)];
        Assert.Contains(errors, e => e.Code == code && e.Span.Line == 10);
        Assert.All(errors, e => Assert.Equal(code, e.Code));
        Assert.All(errors, e => Assert.False(string.IsNullOrEmpty(e.Fix)));
    }

    private static DiagnosticList Found(string item)
    {
        const string Heads = """
            book: Wrong
            length: 20 m
            places: { cab: { x: 5 m, y: 0 m }, pit: { x: 6 m, y: 0 m } }
            roles: { hand: { walks: 1.3 m/s } }


            items:
              key: { kind: switch, who: [hand], places: [cab], for: Nothing., normal: "Off." }

            """;
        DiagnosticList found = new();
        if (BookReader.Read([new SourceText("book.yaml", Heads + "  " + Axle + item)], [], KindLibrary.Catalog, found) is { } book)
        {
            PlanCompiler.Compile(book, found);
        }

        return found;
    }
}
