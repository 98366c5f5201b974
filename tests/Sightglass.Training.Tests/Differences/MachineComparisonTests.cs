using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Training.Differences;

namespace Sightglass.Training.Tests.Differences;

public sealed class MachineComparisonTests
{
    private static readonly ClassBook s_book = Books.Curlew.Book;

    /// <summary>The demo's modifications, as its road-numbers.yaml says.</summary>
    [Theory]
    [InlineData("4104", DifferenceSort.ShowsOtherwise, "cab fuel gauge", "shows", true)]
    [InlineData("4107", DifferenceSort.ShowsOtherwise, "forward sight glass, right", "read to", false)]
    [InlineData("4112", DifferenceSort.BuiltOtherwise, "aft compartment", "supply pickup", false)]
    public void Of_RoadNumber_TellsItsModification(string number, DifferenceSort sort, string item, string what, bool habit)
    {
        ItemDifference difference = MachineComparison.Of(s_book, s_book.For(number)).Single(d => d.Item.Name == item);
        Assert.Equal(sort, difference.Sort);
        Assert.Contains(difference.Changes, c => c.What == what && c.Was != c.Is);
        Assert.Equal(habit, difference.Habit is not null);
    }

    [Fact]
    public void Of_TheSameMachine_Nothing()
    {
        Assert.Empty(MachineComparison.Of(s_book, s_book));
        Assert.Empty(MachineComparison.Of(s_book, s_book.For("4101")));
    }

    /// <summary>Forwards and backwards: what is new one way is gone the other, and every change is turned round.</summary>
    [Fact]
    public void Of_BothWays_Mirrored()
    {
        (ClassBook one, ClassBook two) = (Book(Valve), Book(Valve.Replace("usual: open", "usual: closed", StringComparison.Ordinal) + Gauge));
        ItemDifference[] there = [.. MachineComparison.Of(one, two)];
        ItemDifference[] back = [.. MachineComparison.Of(two, one)];
        Assert.Equal([("valve", DifferenceSort.WorksOtherwise), ("dial", DifferenceSort.New)], there.Select(d => (d.Item.Name, d.Sort)));
        Assert.Equal([("valve", DifferenceSort.WorksOtherwise), ("dial", DifferenceSort.Gone)], back.Select(d => (d.Item.Name, d.Sort)));
        Assert.Equal("A hand that leaves it open leaves it wrong: here it stands closed.", there[0].Habit);
        Assert.Equal(new Change("usual position", "closed", "open"), Assert.Single(back[0].Changes));
    }

    [Theory]
    [InlineData("x: 5 m", "x: 5.2 m", null)] // within an arm's length of where it was
    [InlineData("x: 5 m", "x: 7 m", DifferenceSort.Moved)]
    [InlineData("who: [hand]", "who: [other]", DifferenceSort.WorksOtherwise)]
    [InlineData("diameter: 20 mm", "diameter: 25 mm", DifferenceSort.BuiltOtherwise)]
    [InlineData("for: Opens.", "label: COCK, for: Opens.", DifferenceSort.LabelledOtherwise)]
    [InlineData("for: Opens.", "for: Opens it.", null)] // other words are no other machine
    public void Of_OneThingChanged_Sorted(string was, string now, DifferenceSort? sort) =>
        Assert.Equal(sort is { } s ? [s] : Array.Empty<DifferenceSort>(), MachineComparison.Of(Book(Valve), Book(Valve.Replace(was, now, StringComparison.Ordinal))).Select(d => d.Sort));

    [Fact]
    public void Of_AnotherNameAtTheSamePlace_PerhapsTheSame()
    {
        ItemDifference[] all = [.. MachineComparison.Of(Book(Valve), Book(Valve.Replace("  valve:", "  cock:", StringComparison.Ordinal)))];
        Assert.Equal(["cock", "valve"], all.Select(d => d.Item.Name));
        Assert.Equal(["valve", "cock"], all.Select(d => Assert.Single(d.Changes).Is));
    }

    private const string Valve = """
        book: Two
        roles: { hand: { walks: 1.3 m/s }, other: { walks: 1.3 m/s } }
        places: { beside: { x: 5 m, y: 2.4 m } }
        systems: { fuel: { medium: fuel, alive: yes } }
        items:
          tank: { kind: tank, system: fuel, floor area: 1 m^2, depth: 1 m }
          valve: { kind: hand valve, system: fuel, from: tank, to: outside, diameter: 20 mm, usual: open, who: [hand], position: { x: 5 m, y: 1 m, z: 1 m }, places: [beside], for: Opens., normal: Open. }

        """;

    private const string Gauge = """
          dial: { kind: gauge, system: fuel, shows: volume of tank / 1000 L, scale: 0 % .. 100 %, resolution: 1 %, places: [beside], for: Shows., normal: Half. }

        """;

    private static ClassBook Book(string text)
    {
        DiagnosticList found = [];
        ClassBook? book = BookReader.Read([new SourceText("book.yaml", text)], [], KindLibrary.Catalog, found);
        Assert.True(book is not null && !found.HasErrors, string.Join('\n', found));
        return book;
    }
}
