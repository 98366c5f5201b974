using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Samples;

namespace Sightglass.Book.Tests.Assemblies;

/// <summary>The reserve cans of the sample book are one assembly used twice; what a use gives is what an author would have written out.</summary>
public class AssemblyTests
{
    private static readonly ClassBook s_heron = SampleBook.Good(SampleBook.Text);

    [Fact]
    public void Read_Use_HasItsPartsUnderTheirNames()
    {
        string[] parts = ["port reserve can", "port reserve drain", "starboard reserve can", "starboard reserve drain"];
        Assert.Equal(parts, s_heron.Items.Keys.Where(n => n.Contains("reserve ", StringComparison.Ordinal) && n != "reserve line"));
        Assert.DoesNotContain("port reserve", s_heron.Items.Keys);
        Assert.Equal("Holds the port reserve.", s_heron.Items["port reserve can"].Purpose);
        Assert.Equal(["fuel panel, left"], s_heron.Items["port reserve drain"].Places);
    }

    /// <summary>12 m and 100 mm, −1 m and 0.2 m, 0.5 m and −5 cm, as one would write them.</summary>
    [Fact]
    public void Read_Positions_AreMeasuredFromTheUse()
    {
        Assert.Equal(new Point3(12.1, -0.8, 0.45), s_heron.Items["port reserve drain"].Position);
        Assert.Equal(12.1, s_heron.Items["port reserve can"].Ports["bottom"].X);
        Assert.Equal(0, s_heron.Items["port reserve can"].Ports["bottom"].Height);
    }

    /// <summary>0.1 + 0.2 is not 0.3 in binary; in an author's book it is.</summary>
    [Fact]
    public void Read_Position_IsAddedInDecimals()
    {
        Assert.NotEqual(0.3, 0.1 + 0.2);
        ClassBook book = SampleBook.Good("""
            book: A
            assemblies: { can: { items: { "{name} tank": { kind: tank, position: { x: 0.2 m, y: 0 m } } } } }
            items: { left: { assembly: can, at: { x: 0.1 m, y: 0 m } } }
            """);
        Assert.Equal(0.3, book.Items["left tank"].Position!.Value.X);
    }

    [Fact]
    public void Read_Parameter_GivenOrUsual()
    {
        Assert.Equal(0.4, s_heron.Items["starboard reserve can"].Parameters["depth"].Number);
        Assert.Equal(0.3, s_heron.Items["port reserve can"].Parameters["depth"].Number);
    }

    [Fact]
    public void Read_Changes_ConcernOneUseOnly()
    {
        Assert.Equal("Closed, sealed and dry.", s_heron.Items["starboard reserve drain"].Normal);
        Assert.Equal("Closed and dry.", s_heron.Items["port reserve drain"].Normal);
    }

    [Fact]
    public void Read_PortShownToTheOutside_IsThePartsPort()
    {
        PortReference from = s_heron.Items["reserve line"].From!;
        Assert.Equal(("port reserve can", "bottom"), (from.Item, from.Port));
    }

    [Fact]
    public void Read_FactsSignsAndHazardsOfUses_StandBesideTheOthers()
    {
        Assert.Equal("level of port reserve can < 20 mm", s_heron.Facts["port reserve is used up"].Formula);
        Assert.Equal(["fuel panel, right"], s_heron.Signs["the starboard reserve is seen to drip"].Places);
        Assert.Equal(["port reserve can"], s_heron.Hazards["wet ground below the port reserve"].Items);
    }

    [Fact]
    public void For_RoadNumber_ChangesAParameterOfAUseAndAPartOfAnother()
    {
        ClassBook own = s_heron.For("207");
        Assert.Equal(0.5, own.Items["port reserve can"].Parameters["depth"].Number);
        Assert.Equal(0.4, own.Items["starboard reserve can"].Parameters["depth"].Number);
        Assert.Equal(2e-4, own.Items["starboard reserve drain"].Parameters["area"].Number, 1e-12);
        Assert.Equal("Closed, sealed and dry.", own.Items["starboard reserve drain"].Normal);
        Assert.Equal(s_heron.Items["port reserve drain"].Position, own.Items["port reserve drain"].Position);
    }

    [Fact]
    public void For_RoadNumber_TakesAUseAway()
    {
        ClassBook book = SampleBook.Good("""
            book: A
            assemblies: { can: { items: { "{name} tank": { kind: tank } } } }
            items: { left: { assembly: can }, right: { assembly: can } }
            road numbers: { "1": { modifications: [ { name: M, changes: { left: removed } } ] } }
            """);
        Assert.Equal(["right tank"], book.For("1").Items.Keys);
    }

    [Fact]
    public void Read_AssemblyInAssembly_NamesAndPlacesAddUp()
    {
        ClassBook book = SampleBook.Good("""
            book: A
            assemblies:
              can: { parameters: { depth: {} }, items: { "{name} tank": { kind: tank, depth: "{depth}", position: { x: 1 m, y: 0 m } } }, ports: { way: "{name} tank" } }
              pair:
                parameters: { deep: {} }
                items:
                  "{name} front": { assembly: can, at: { x: 2 m, y: 0 m }, depth: "{deep}" }
                  "{name} rear": { assembly: can, at: { x: 4 m, y: 0 m }, depth: 2 m, changes: { "{name} rear tank": { label: Last } } }
                ports: { way: "{name} rear, way" }
            items:
              left: { assembly: pair, at: { x: 10 m, y: 0 m }, deep: 1 m }
              hole: { kind: orifice, from: "left, way", to: outside }
            """);
        Assert.Equal(["hole", "left front tank", "left rear tank"], book.Items.Keys);
        Assert.Equal((13.0, 1.0), (book.Items["left front tank"].Position!.Value.X, book.Items["left front tank"].Parameters["depth"].Number));
        Assert.Equal((15.0, 2.0, "Last"), (book.Items["left rear tank"].Position!.Value.X, book.Items["left rear tank"].Parameters["depth"].Number, book.Items["left rear tank"].Label));
        Assert.Equal("left rear tank", book.Items["hole"].From!.Item);
    }

    /// <summary>What is wrong in the assembly: its line, and a use. What is wrong with a value: where it was given, and where it went.</summary>
    [Fact]
    public void Read_Error_PointsToTheAssemblyAndToTheUse()
    {
        string[] lines = Lines("""
            book: A
            assemblies:
              can:
                parameters: { depth: {} }
                items:
                  "{name} tank": { kind: tank, shape: round, depth: "{depth}" }
            items:
              left: { assembly: can, depth: 1 m }
              right: { assembly: can, depth: 1 psi }
            """);
        Assert.Equal(2, lines.Length);
        Assert.StartsWith("book.yaml:6:43: B035: `round` is not possible for `shape` (for `left` at book.yaml:8:3); ", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("book.yaml:9:34: Q003", lines[1], StringComparison.Ordinal);
        Assert.Contains("(put in at book.yaml:6:57)", lines[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("left: { assembly: can }", "B031: `left` lacks `depth`")]
    [InlineData("left: { assembly: can, depth: 1 m, dept: 2 m }", "B030: unknown key `dept` in `left`; did you mean `depth`?")]
    [InlineData("left: { assmbly: can, depth: 1 m }", "B030: unknown key `assmbly` in `left`; did you mean `assembly`?")]
    [InlineData("left: { assembly: can, depth: 1 m, changes: { left tnak: { depth: 2 m } } }", "B073: there is no item `left tnak` to change; did you mean `left tank`?")]
    [InlineData("left: { assembly: can, depth: 1 m }\n  hole: { kind: orifice, from: 'left, wya', to: outside }", "B065: `left` shows no port `wya`; did you mean `way`?")]
    [InlineData("left: { assembly: can, depth: 1 m }\n  hole: { kind: orifice, from: left, to: outside }", "B065: `left` is an assembly; a path ends at one of its ports; it shows: `way`")]
    [InlineData("left: { assembly: can, depth: 1 m }\n  left tank: { kind: tank }", "B033: item `left tank` is declared a second time")]
    public void Read_WrongUse_IsToldThere(string items, string finding)
    {
        string[] lines = Lines($$"""
            book: A
            assemblies: { can: { parameters: { depth: {} }, items: { "{name} tank": { kind: tank, depth: "{depth}" } }, ports: { way: "{name} tank" } } }
            items:
              {{items}}
            """);
        Assert.Contains(lines, l => l.Contains(finding, StringComparison.Ordinal));
        Assert.Single(lines);
    }

    [Fact]
    public void Read_HoleWithoutQuotes_IsToldWhatToDo() => Assert.Contains(
        "book.yaml:3:45: B010: the text goes on behind `{name}`; put quotes round a text that begins with a brace",
        Lines("book: A\nassemblies:\n  can: { items: { \"{name} b\": { for: {name} is good } } }\n"));

    /// <summary>Places sort as the author wrote them: parts stand where their use stands.</summary>
    [Fact]
    public void Span_OfParts_SortsByTheUse()
    {
        Item[] items = [.. s_heron.Items.Values.OrderBy(i => i.Span)];
        string[] order = ["horn", "starboard reserve can", "starboard reserve drain", "port reserve can", "port reserve drain", "reserve line"];
        Assert.Equal(order, items.Select(i => i.Name).Where(order.Contains));
    }

    private static string[] Lines(string text) => [.. SampleBook.Read(text).Found.Select(d => d.ToString())];
}
