using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;

namespace Sightglass.Book.Tests.Consists;

/// <summary>What a class says of making up a train, and what is wrong with it.</summary>
public class MakingUpReaderTests
{
    private const string Book = """
        book: Small
        roles: { hand: { walks: 1.3 m/s } }
        places: { yard: { x: 1 m, y: 2.4 m } }
        items:
          lever: { kind: handle, positions: [off, "on"], who: [hand], places: [yard], for: Does it., normal: "Off." }
          pipe: { kind: air line, volume: 10 L }
          hose: { kind: hose, length: 1 m, diameter: 30 mm, places: [yard], for: Joins., normal: Whole. }
          cock: { kind: hand valve, from: pipe, to: hose, diameter: 30 mm, who: [hand], places: [yard], for: Shuts., normal: Shut. }
        facts: { it is done: { is: "on of lever" } }
        ends: { rear: { faces: rear, joins: { brake pipe: hose } } }

        """;

    [Fact]
    public void Read_AWholeSection_SaysAll()
    {
        (ClassBook? book, DiagnosticList found) = Read("""
            making up:
              text: Air first.
              lines: { brake pipe: { needed: yes, lost: No brake. } }
              lead: { lever: "off" }
              brakes: { set: lever, to: "on", within: 20 s }
              commands: { the lever: { set: lever, to: "on", answers: it is done, pulls: yes } }
            hauling: { mass: 12 t, axles: 2, driven axles: 2, power: 300 kW, hand brake: 9 kN, resistance: modified }
            """);
        Assert.Empty(found);
        MakingUp made = book!.MakingUp!;
        Assert.True(made.Lines[0] is { Line: "brake pipe", IsNeeded: true, Lost: "No brake.", BetweenMachines: false });
        Assert.Equal(("lever", "on", 20.0), (made.Brakes!.Item, made.Brakes.Position, made.BrakesWithin));
        Assert.True(made.Commands[0] is { Name: "the lever", Answers: "it is done", AnswersTurned: null, Pulls: true });
        Assert.Equal((12_000, 2, 2, 300_000, 9_000, ResistanceSort.Modified), (book.Hauling!.Mass!.Value, book.Hauling.Axles, book.Hauling.DrivenAxles, book.Hauling.Power!.Value, book.Hauling.HandBrake!.Value, book.Hauling.Resistance));
    }

    [Theory]
    [InlineData("making up: { lead: { lever: up } }", "`lever` has no position `up`; it has: `off`, `on`")]
    [InlineData("making up: { lead: { levr: \"on\" } }", "there is no item `levr`; did you mean `lever`?")]
    [InlineData("making up: { lines: { break pipe: {} } }", "`break pipe` is not possible for `lines`: what ends join; did you mean `brake pipe`?")]
    [InlineData("making up: { commands: { the lever: { set: lever, to: \"on\", answers: it is don } } }", "`it is don` is not possible for `answers`: a fact of the machine; did you mean `it is done`?")]
    [InlineData("making up: { commands: { the lever: { to: \"on\", answers: it is done } } }", "the command `the lever` lacks `set`")]
    [InlineData("making up: { brakes: { set: lever } }", "`brakes` lacks `to`")]
    [InlineData("hauling: { driven axles: 6 }", "`driven axles` is `6`; it must be no more than its 4 axles")]
    [InlineData("hauling: { mass: 0 t }", "`mass` is `0 t`; it must be more than zero")]
    [InlineData("hauling: { efficiency: 120 % }", "`efficiency` is `120 %`; it must be 0 % to 100 %")]
    public void Read_AMistake_IsTold(string section, string says)
    {
        (ClassBook? book, DiagnosticList found) = Read(section);
        Assert.Null(book);
        Assert.Contains(found, d => d.ToString().Contains(says, StringComparison.Ordinal));
    }

    private static (ClassBook? Book, DiagnosticList Found) Read(string section)
    {
        DiagnosticList found = [];
        return (BookReader.Read([new SourceText("book.yaml", Book + section + "\n")], [], KindLibrary.Catalog, found), found);
    }
}
