using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Changes;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Sheets;

namespace Sightglass.Book.Tests.Changes;

public sealed class BookChangeTests
{
    private const string Valves = """
        # The book of the tests.
        book: Heron
        places:
          yard: { x: 1 m, y: 2.4 m, z: 0 m, text: "Beside it, right." }   # where one stands
        roles: { mechanical: {} }
        items:
          valve:               # opened by hand
            positions: [shut, open]
            who: [mechanical]
            places: [yard]
            label: 'Valve'     # as painted
            for: >-
              Lets fuel out of the compartment, and
              back into it.
            normal: Shut.      # always
          horn: { places: [yard], for: Warns., normal: "Loud, clean." }
          bell:
        road numbers:
          "1": {}
          "2": { modifications: [{ name: M-1, since: 2020-01-01, changes: { horn: { label: Old horn } } }] }
        """;

    [Theory]
    [InlineData("valve", "label", "Fuel, right", "    label: 'Fuel, right'     # as painted")]
    [InlineData("valve", "label", "Driver's", "    label: 'Driver''s'     # as painted")]
    [InlineData("valve", "normal", "Shut: always", "    normal: \"Shut: always\"      # always")]
    [InlineData("valve", "for", "Lets fuel out.", "    for: >-\n      Lets fuel out.\n    normal: Shut.      # always")]
    [InlineData("valve", "operate", "A quarter turn.", "    normal: Shut.      # always\n    operate: A quarter turn.\n  horn")]
    [InlineData("valve", "photo", "photos/valve.jpg", "    normal: Shut.      # always\n    photo: photos/valve.jpg\n")]
    [InlineData("horn", "label", "Horn, loud", "places: [yard], label: \"Horn, loud\", for: Warns.,")]
    [InlineData("horn", "normal", "Loud and clean.", "normal: \"Loud and clean.\" }")]
    [InlineData("bell", "label", "Bell", "  bell:\n    label: Bell\nroad numbers:")]
    [InlineData("yard", "text", "Right of it.", "text: \"Right of it.\" }   # where one stands")]
    public void Plan_AText_IsWrittenAsTheAuthorWrites(string target, string property, string becomes, string expected)
    {
        ChangePlan plan = Text(Valves).Plan(new(target, property, becomes));
        Assert.Null(plan.Refused);
        Assert.Contains(expected, plan.File!.After, StringComparison.Ordinal);
        Assert.Equal(Valves.Count(c => c == '#'), plan.File.After.Count(c => c == '#'));
    }

    [Theory]
    [InlineData("1", "horn", "\"1\":\n    modifications:\n      - name: As found\n        text: What was found on the machine and is not in the class.\n        changes:\n          horn:\n            label: New\n")]
    [InlineData("2", "horn", "changes: { horn: { label: New } } }] }")]
    [InlineData("2", "valve", "{ horn: { label: Old horn } } }, { name: As found, text: What was found on the machine and is not in the class., changes: { valve: { label: New } } }] }")]
    public void Plan_OnARoadNumber_IsWrittenUnderItsModifications(string number, string target, string expected)
    {
        BookText text = Text(Valves);
        ChangePlan plan = text.Plan(new(target, "label", "New") { RoadNumber = number });
        Assert.Null(plan.Refused);
        Assert.Contains(expected, plan.File!.After, StringComparison.Ordinal);
        ClassBook after = Text(plan.File.After).Book!;
        Assert.Equal("New", after.For(number).Items[target].Label);
        Assert.Equal(text.Book!.Items[target].Label, after.Items[target].Label);
        ChangePlan again = Text(plan.File.After).Plan(new(target, "normal", "As now.") { RoadNumber = number });
        Assert.Null(again.Refused);
        Assert.Equal("As now.", Text(again.File!.After).Book!.For(number).Items[target].Normal);
    }

    [Theory]
    [InlineData("valve", "normal", "# always", "    for: >-\n      Lets fuel out of the compartment, and\n      back into it.\n  horn:")]
    [InlineData("horn", "for", "for: Warns.", "places: [yard], normal:")]
    [InlineData("horn", "normal", "Loud", "for: Warns. }")]
    public void Plan_OfNothing_TakesTheKeyOut(string target, string property, string gone, string left)
    {
        ChangePlan plan = Text(Valves).Plan(new(target, property, null));
        Assert.Null(plan.Refused);
        Assert.Contains(left, plan.File!.After, StringComparison.Ordinal);
        Assert.DoesNotContain(gone, plan.File.After[plan.File.After.IndexOf("items:", StringComparison.Ordinal)..], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("vavle", "label", "x", null, "did you mean `valve`?")]
    [InlineData("valve", "labell", "x", null, "did you mean `label`?")]
    [InlineData("valve", "kind", "pump it", null, "there is no kind `pump it`")]
    [InlineData("valve", "positions", "open", null, "a change replaces a single value")]
    [InlineData("valve", "photo", "../../secret.jpg", null, "does not lie in the book's folder")]
    [InlineData("valve", "normal", "Open.", "Ajar.", "by now `Shut.`, and was `Ajar.`")]
    [InlineData("valve", "normal", "Shut.", null, "already says so")]
    [InlineData("valve", "normal", "nothing \0", null, "no file of a book can hold")]
    [InlineData("yard", "room", "3", null, "only its `text`")]
    public void Plan_ThatCannotBe_SaysWhy(string target, string property, string becomes, string? was, string why)
    {
        ChangePlan plan = Text(Valves).Plan(new(target, property, becomes) { Was = was });
        Assert.Null(plan.File);
        Assert.Contains(why, plan.Refused, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_OfAnUnknownRoadNumber_NamesThoseThereAre() =>
        Assert.Contains("it has 1, 2", Text(Valves).Plan(new("valve", "label", "x") { RoadNumber = "3" }).Refused, StringComparison.Ordinal);

    [Fact]
    public void Plan_OfABookWithErrors_IsRefusedWithTheFirst() =>
        Assert.Contains("mend them first: book.yaml:1:1: B0", Text("itmes: {}").Plan(new("a", "label", "b")).Refused, StringComparison.Ordinal);

    [Fact]
    public void Plan_InAFileOfOtherLineEnds_KeepsThem()
    {
        string text = Valves.ReplaceLineEndings("\r\n");
        foreach (string? becomes in new[] { "Wide.", null })
        {
            string after = Text(text).Plan(new("valve", "normal", becomes)).File!.After;
            Assert.DoesNotContain('\n', after.Replace("\r\n", "", StringComparison.Ordinal));
            Assert.DoesNotContain('\r', after.Replace("\r\n", "", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Diff_OfOneLine_ShowsItAmongItsNeighbours() => Assert.Equal(
        """
        --- book.yaml
        +++ book.yaml
        @@ -13,7 +13,7 @@
               Lets fuel out of the compartment, and
               back into it.
             normal: Shut.      # always
        -  horn: { places: [yard], for: Warns., normal: "Loud, clean." }
        +  horn: { places: [yard], for: Warns., normal: "Quiet." }
           bell:
         road numbers:
           "1": {}

        """.ReplaceLineEndings("\n"),
        Text(Valves).Plan(new("horn", "normal", "Quiet.")).File!.Diff);

    private static BookText Text(string yaml) => new([new SourceText("book.yaml", yaml.ReplaceLineEndings("\n") is var plain && yaml.Contains('\r', StringComparison.Ordinal) ? yaml : plain)], [], TestKinds.Catalog);
}
