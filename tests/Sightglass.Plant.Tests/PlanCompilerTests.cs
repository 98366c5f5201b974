using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Tests;

public sealed class PlanCompilerTests
{
    private const string Tank = """
        items:
          tank: { kind: tank, position: { x: 5 m, y: 0 m, z: 1 m }, floor area: 1 m^2, depth: 1 m, ports: { outlet: { height: 0 mm } } }
          line: { kind: fuel line, volume: 1 L, height: 1 m }

        """;

    /// <summary>What a situation can begin with, and break: the same where only a label differs, another where a tank is deeper.</summary>
    [Fact]
    public void BeginsAlike_ByWhatDiffers()
    {
        const string Numbers = """
            road numbers:
              "1": {}
              "2": { modifications: [ { name: M, changes: { tank: { label: Drum } } } ] }
              "3": { modifications: [ { name: M, changes: { tank: { depth: 2 m } } } ] }
            """;
        DiagnosticList found = [];
        ClassBook book = BookReader.Read([new SourceText("book.yaml", $"book: A\nlength: 20 m\n{Tank}{Numbers}")], [], KindLibrary.Catalog, found)!;
        Assert.Empty(found);
        Fleet fleet = Fleet.Compile(book, found)!;
        Assert.Equal([true, true, false], book.RoadNumbers.Keys.Select(fleet.BeginsAlike));
    }

    public static TheoryData<string> Kinds => [.. KindLibrary.Catalog.Sheets.Select(s => s.Name)];

    /// <summary>What an author has begun and not finished is told where it stands, and never ends the program: an item of each kind of which nothing else is said, alone and beside others, and with values that cannot be read.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Check_ItemOfAKindThatLacksWhatItNeeds_IsTold(string kind)
    {
        KindSheet sheet = KindLibrary.Find(kind)!.Sheet;
        string[] needed = [.. sheet.Parameters.Where(p => p.Required).Select(p => p.Name)];
        foreach (string item in (string[])[$"x: {{ kind: {kind} }}", $"x: {{ kind: {kind}{string.Concat(needed.Select(n => $", {n}: \"?\""))} }}"])
        {
            DiagnosticList found = [];
            Fleet fleet = new();
            ClassBook? book = BookReader.Read([new SourceText("book.yaml", $"book: A\nlength: 20 m\n{Tank}  {item}\n")], [], KindLibrary.Catalog, found, [fleet.Add]);
            Assert.True(needed.Length == 0 || book is null, kind);
            Assert.All(found.Where(d => d.Severity == Severity.Error), d => Assert.Equal(6, d.Span.Line));
        }
    }

    /// <summary>Every error says where it is and what would be right.</summary>
    [Theory]
    [InlineData("P005", 9, "  valve: { kind: hand valve, from: tank, to: line }")]
    [InlineData("P006", 9, "  pump: { kind: displacement pump, from: tank, to: line, flow: 1 L/min, driven by: line }")]
    [InlineData("P007", 9, "  engine: { kind: engine, from: tank, to: outside, consumption: { running: 1 L/h } }")]
    [InlineData("P009", 10, "  throttle: { kind: handle, positions: [idle, full] }\n  engine: { kind: engine, from: line, to: outside, throttle: throttle, consumption: { idle: 1 L/h } }")]
    [InlineData("P010", 9, "  barrel: { kind: tank, shape: upright cylinder, depth: 1 m }")]
    [InlineData("P011", 9, "  barrel: { kind: tank, shape: lying cylinder, radius: 1 m }")]
    [InlineData("P012", 9, "  barrel: { kind: tank, depth: 1 m }")]
    [InlineData("P013", 9, "  barrel: { kind: tank, shape: dip table, dip table: [ { height: 0 mm, volume: 0 L }, { height: 10 mm, volume: 0 L } ] }")]
    [InlineData("P014", 9, "  glass: { kind: sight glass, of: line, top: 1 m, scale: 0 cm .. 100 cm }")]
    public void Compile_OneMistake_NamesItAtItsLine(string code, int line, string items)
    {
        Assert.Null(Plants.Compile(Tank + items + "\n", out DiagnosticList found));
        Diagnostic error = Assert.Single(found, d => d.Severity == Severity.Error && d.Code == code);
        Assert.Equal(line, error.Span.Source!.Locate(error.Span.Start).Line);
        Assert.False(string.IsNullOrWhiteSpace(error.Fix));
    }

    /// <summary>The same of compressed air.</summary>
    [Theory]
    [InlineData("P016", "  compressor: { kind: compressor, to: vessel, displacement: 1 m^3/min, loaded by: vessel }")]
    [InlineData("P017", "  valve: { kind: hand valve, from: vessel, to: line, area: 1 cm^2 }\n  line: { kind: fuel line, volume: 1 L }")]
    [InlineData("P018", "  governor: { kind: governor, senses: governor, cuts in: 130 psi, cuts out: 140 psi }")]
    [InlineData("P019", "  pipe: { kind: air line, length: 3 m }")]
    [InlineData("P020", "  governor: { kind: governor, senses: vessel, cuts in: 140 psi, cuts out: 130 psi }")]
    [InlineData("P021", "  relay: { kind: relay valve, from: vessel, to: other, follows: other, diameter: 8 mm, cut out by: other }")]
    [InlineData("P022", "  regulator: { kind: regulating valve, from: vessel, to: other, diameter: 2 mm }")]
    [InlineData("P023", "  cylinder: { kind: brake cylinder, diameter: 200 mm, travel: 100 mm, moves at: 9 psi, out at: 8 psi }")]
    [InlineData("P031", "  cylinder: { kind: brake cylinder, diameter: 200 mm, travel: 100 mm, radius ratio: 0.5 }")]
    [InlineData("P015", "  relay: { kind: relay, picks up when: pressure of vessel + pressure of line > 9 psi, drops when: pressure of vessel < 8 psi }\n  line: { kind: fuel line, volume: 1 L }")]
    [InlineData("P026", "  joint: { kind: hose coupling, from: vessel, to: other }")]
    [InlineData("P024", "  pull: { kind: spring brake release, releases: [vessel], arms at: 60 psi }")]
    public void Compile_OneMistakeInAir_NamesItAtItsLine(string code, string items)
    {
        const string Vessels = "items:\n  vessel: { kind: reservoir, volume: 1 m^3 }\n  other: { kind: reservoir, volume: 1 L }\n";
        Assert.Null(Plants.Compile(Vessels + items + "\n", out DiagnosticList found));
        Diagnostic error = Assert.Single(found, d => d.Severity == Severity.Error && d.Code == code);
        Assert.Equal(9, error.Span.Source!.Locate(error.Span.Start).Line);
        Assert.False(string.IsNullOrWhiteSpace(error.Fix));
    }

    /// <summary>What the sheets of air say there is can be asked for.</summary>
    [Fact]
    public void Compile_AirKinds_HaveAllQuantitiesOfTheirSheets()
    {
        Plan plan = Plants.Compile("""
            items:
              main: { kind: reservoir, volume: 1 m^3 }
              pipe: { kind: air line, length: 20 m, diameter: 32 mm }
              hose: { kind: hose, length: 0.6 m, diameter: 32 mm }
              auxiliary: { kind: reservoir, volume: 30 L }
              cylinder: { kind: brake cylinder, diameter: 200 mm, travel: 100 mm }
              governor: { kind: governor, senses: main, cuts in: 130 psi, cuts out: 140 psi }
              compressor: { kind: compressor, to: main, displacement: 2 m^3/min, loaded by: governor }
              safety: { kind: safety valve, from: main, diameter: 20 mm, opens at: 150 psi }
              reducer: { kind: regulating valve, from: main, to: pipe, diameter: 5 mm, set: 110 psi }
              relay: { kind: relay valve, from: main, to: auxiliary, follows: pipe, diameter: 5 mm, exhaust diameter: 5 mm }
              direct: { kind: control valve, from: auxiliary, to: cylinder, senses: pipe, diameter: 5 mm, exhaust diameter: 5 mm, release: direct }
              graduated: { kind: control valve, from: auxiliary, to: cylinder, senses: pipe, diameter: 5 mm, exhaust diameter: 5 mm }
              vent: { kind: vent valve, from: pipe, diameter: 25 mm }
              spring: { kind: spring brake, volume: 3 L, spring force: 60 kN, begins at: 60 psi, anti-compounded by: cylinder }
              pull: { kind: spring brake release, releases: [spring], arms at: 60 psi }
              shuttle: { kind: double check valve, from: pipe, or from: auxiliary, to: cylinder, diameter: 6 mm }
              dryer: { kind: air dryer, from: main, to: pipe, flow: 2 m^3/min, drop: 2 psi, purge diameter: 2 mm, works with: governor }
              low pressure: { kind: relay, picks up when: pressure of main < 90 psi, drops when: pressure of main > 100 psi }
              bleeder: { kind: actuated valve, from: pipe, to: outside, opened by: low pressure, diameter: 2 mm }
              drain: { kind: drain cock, from: main, to: outside, diameter: 6 mm }
              cock: { kind: cutout cock, from: main, to: auxiliary, diameter: 12 mm, vent diameter: 5 mm }
            """);
        Assert.All(plan.Book.Items.Values, i => Assert.All(i.Kind.Quantities, q => Assert.True(plan.FindSignal($"{q.Name} of {i.Name}") is not null, $"{q.Name} of {i.Name}")));
        Assert.All(plan.Book.Items.Values, i => Assert.All(i.Kind.Faults, f => Assert.True(plan.Items[i.Name].Faults.ContainsKey(f.Name), $"{f.Name} of {i.Name}")));
    }

    /// <summary>All mistakes at once.</summary>
    [Fact]
    public void Compile_ThreeMistakes_TellsAll()
    {
        Assert.Null(Plants.Compile(Tank + "  a: { kind: hand valve, from: tank, to: line }\n  b: { kind: tank, depth: 1 m }\n  c: { kind: tank, shape: lying cylinder, radius: 1 m }\n", out DiagnosticList found));
        Assert.Equal(["P005", "P011", "P012"], found.Where(d => d.Severity == Severity.Error).Select(d => d.Code).Order(StringComparer.Ordinal));
    }

    /// <summary>Names of one item: what its sheet says it has can be asked for.</summary>
    [Fact]
    public void Compile_Tank_HasAllQuantitiesOfItsSheet()
    {
        Plan plan = Plants.Compile(Tank);
        Assert.All(plan.Book.Items["tank"].Kind.Quantities, q => Assert.NotNull(plan.FindSignal($"{q.Name} of tank")));
        Assert.All(plan.Book.Items["line"].Kind.Quantities, q => Assert.NotNull(plan.FindSignal($"{q.Name} of line")));
        Assert.Null(plan.FindSignal("volume of barrel"));
        Assert.Equal(["leak"], plan.Items["tank"].Faults.Keys);
    }

    /// <summary>The same book twice: the same networks, so that a snapshot of one fits the other.</summary>
    [Fact]
    public void Compile_Twice_SameAmountsAndSlots()
    {
        Plan one = Plants.Compile(Tank);
        Plan other = Plants.Compile(Tank);
        Assert.Equal(one.AmountNames.SelectMany(n => n), other.AmountNames.SelectMany(n => n));
        Assert.Equal(one.Slots, other.Slots);
    }

    /// <summary>The order of building is the order in the file: a name that sorts elsewhere moves nothing.</summary>
    [Fact]
    public void Compile_Renamed_SameOrder()
    {
        Plan one = Plants.Compile(Tank);
        Plan other = Plants.Compile(Tank.Replace("tank:", "zzz:", StringComparison.Ordinal).Replace("line:", "aaa:", StringComparison.Ordinal));
        Assert.Equal(
            one.AmountNames[0],
            other.AmountNames[0].Select(n => n.Replace("zzz", "tank", StringComparison.Ordinal).Replace("aaa", "line", StringComparison.Ordinal)));
    }
}
