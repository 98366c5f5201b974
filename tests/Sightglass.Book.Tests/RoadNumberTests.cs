using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Checks;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Samples;
using Sightglass.Book.Tests.Sheets;

namespace Sightglass.Book.Tests;

public class RoadNumberTests
{
    private const string Glass = "forward sight glass, right";
    private static readonly ClassBook s_heron = SampleBook.Good(SampleBook.Text);

    [Fact]
    public void For_RoadNumberWithoutModifications_IsTheClass()
    {
        ClassBook book = s_heron.For("201");
        Assert.Equal("201", book.RoadNumberInUse);
        Assert.Null(s_heron.RoadNumberInUse);
        Assert.Equal(s_heron.Items.Keys, book.Items.Keys);
        Assert.Equal(s_heron.Items[Glass].Reading!.Resolution, book.Items[Glass].Reading!.Resolution);
    }

    [Fact]
    public void For_Modifications_ApplyInOrderOfTheirDates()
    {
        Item glass = s_heron.For("207").Items[Glass];
        Assert.Equal(0.02, glass.Reading!.Resolution, 1e-12);
        Assert.Equal("Shows the level between slots.", glass.Purpose);
    }

    [Fact]
    public void For_KeysNotGiven_Stay()
    {
        Item glass = s_heron.For("207").Items[Glass];
        Assert.Equal((0.05, 0.85), (glass.Reading!.Minimum, glass.Reading.Maximum));
        Assert.Equal(["fuel panel, right"], glass.Places);
    }

    [Fact]
    public void For_Items_CanBeAddedAndRemoved()
    {
        ClassBook book = s_heron.For("207");
        Assert.True(book.Items.ContainsKey("second horn"));
        Assert.False(book.Items.ContainsKey("running lamp"));
        Assert.True(s_heron.Items.ContainsKey("running lamp"));
    }

    [Fact]
    public void For_UnknownRoadNumber_Throws() => Assert.Throws<ArgumentException>(() => s_heron.For("999"));

    [Fact]
    public void For_ChangedPorts_AreSeenByPathsThatStay()
    {
        const string text = """
            book: A
            items:
              tank: { kind: tank, ports: { drain: { height: 1 cm } } }
              hole: { kind: orifice, from: "tank, drain", to: outside }
            road numbers:
              "1": { modifications: [ { name: M-1, changes: { tank: { ports: { drain: { height: 9 cm } } } } } ] }
            """;
        ClassBook one = SampleBook.Good(text).For("1");
        Assert.Equal(("tank", "drain"), (one.Items["hole"].From!.Item, one.Items["hole"].From!.Port));
        Assert.Equal(0.09, one.Items["tank"].Ports["drain"].Height, 1e-12);
        Assert.Contains(
            SampleBook.Read(text.Replace("{ drain: { height: 9 cm } }", "{ outlet: { height: 9 cm } }", StringComparison.Ordinal)).Found,
            d => d.Code == "B065" && d.Message.Contains("road number 1", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_ErrorInAChange_IsReportedAtItsPlaceWithTheRoadNumber()
    {
        const string text = "book: A\nitems:\n  tank: { kind: tank }\nroad numbers:\n  '7': { modifications: [ { name: M, changes: { tank: { depht: 1 m } } } ] }\n";
        Diagnostic d = Assert.Single(SampleBook.Read(text).Found);
        Assert.Equal("book.yaml:5:57: B030: unknown key `depht` in `tank` (road number 7); did you mean `depth`?", d.ToString());
    }

    [Fact]
    public void Read_ErrorOfTheClass_IsNotRepeatedForItsRoadNumbers()
    {
        const string text = "book: A\nitems:\n  tank: { kind: tank, connects to: [hole] }\nroad numbers:\n  '7': { modifications: [ { name: M, changes: { tank: { label: T } } } ] }\n";
        Diagnostic d = Assert.Single(SampleBook.Read(text).Found);
        Assert.Equal("B060", d.Code);
    }

    [Fact]
    public void Read_RemovedItemThatIsStillNamed_IsReportedForTheRoadNumber()
    {
        const string text = "book: A\nitems:\n  pump: {}\n  bell: { connects to: [pump] }\nroad numbers:\n  '7': { modifications: [ { name: M, changes: { pump: removed } } ] }\n";
        Assert.Contains(SampleBook.Read(text).Found, d => d.Code == "B060" && d.Message == "there is no item `pump` (road number 7)");
    }

    [Fact]
    public void Read_SituationOnARoadNumber_SeesItsItems()
    {
        const string text = """
            book: A
            items:
              tank: { kind: tank }
            road numbers:
              "7": { modifications: [ { name: M, changes: { switch: { kind: switch, positions: ["off", "on"] } } } ] }
            situations:
              s: { road number: "7", start: { switch: "on" } }
            """;
        Assert.Equal(["on"], SampleBook.Good(text).Situations["s"].Start[0].OneOf);
    }

    [Fact]
    public void Read_FurtherChecks_RunOnTheClassAndOnEveryRoadNumberWithModifications()
    {
        List<string?> seen = [];
        BookCheck check = (book, found) =>
        {
            seen.Add(book.RoadNumberInUse);
            found.Warn("P999", book.Items[Glass].Span, "seen");
        };
        DiagnosticList found = [];
        BookReader.Read([new("book.yaml", SampleBook.Text)], [], TestKinds.Catalog, found, [check]);
        Assert.Equal([null, "207"], seen);
        Assert.Equal("seen", Assert.Single(found).Message);
    }
}
