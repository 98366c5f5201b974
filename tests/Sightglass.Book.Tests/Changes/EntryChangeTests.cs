using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Changes;
using Sightglass.Book.Recordings;
using Sightglass.Book.Tests.Sheets;

namespace Sightglass.Book.Tests.Changes;

/// <summary>An entry that is changed where its author wrote it. Expected: the author's text with the one place changed, by hand.</summary>
public sealed class EntryChangeTests
{
    private const string Csv = "Time,Speed [mph],Grade,Outside\n0,20,1,10\n1,19,1,10\n";

    private const string Block = """
        # At the top.
        recordings:
          other: { file: other.csv, time: Time, columns: [ { column: "Speed [mph]", sets: speed, unit: mph } ] }
          a run: # what was seen
            text: Invented.   # ours
            file: a.csv
            missing: "---"
            time: Time
            columns:
              # by the maker's sheet
              - { column: "Speed [mph]", sets: speed } # of the axle
              - column: Grade
                sets: [grade]
                unit: "%"
        # The end.

        """;

    private const string Flow = """
        recordings: { a run: { text: Invented., file: a.csv, time: Time, columns: [ { column: "Speed [mph]", sets: speed }, { column: Grade, sets: grade, unit: "%" } ] } }

        """;

    [Theory]
    [InlineData("text", "text: Invented.   # ours", "text: Seen by us.   # ours")]
    [InlineData("unit", "unit: \"%\"", "unit: \"1\"")]
    [InlineData("compares", "sets: speed }", "sets: speed, compares: speed }")]
    [InlineData("missing", "missing: \"---\"", "missing: \"none\"")]
    [InlineData("more", "unit: \"%\"\n", "unit: \"%\"\n      - column: Outside\n        sets: ambient temperature\n        unit: degC\n")]
    [InlineData("fewer", "      - column: Grade\n        sets: [grade]\n        unit: \"%\"\n", "")]
    public void Plan_OneThingOfABlock_ChangesThatPlaceAlone(string what, string text, string becomes)
    {
        string before = "book: Heron\n" + Block;
        Assert.Equal(before.Replace(text, becomes, StringComparison.Ordinal), Changed(before, what).File?.After);
    }

    [Theory]
    [InlineData("text", "text: Invented.", "text: Seen by us.")]
    [InlineData("compares", "sets: speed }", "sets: speed, compares: speed }")]
    [InlineData("more", "unit: \"%\" } ]", "unit: \"%\" }, { column: Outside, sets: ambient temperature, unit: degC } ]")]
    [InlineData("fewer", ", { column: Grade, sets: grade, unit: \"%\" } ]", " ]")]
    public void Plan_OneThingBetweenBraces_ChangesThatPlaceAlone(string what, string text, string becomes)
    {
        string before = "book: Heron\n" + Flow;
        Assert.Equal(before.Replace(text, becomes, StringComparison.Ordinal), Changed(before, what).File?.After);
    }

    /// <summary>No comment is lost: the change is refused with its place, and what would be right.</summary>
    [Theory]
    [InlineData("fewer speed", "holds a comment of its author; write the change in the file")]
    [InlineData("nothing", "says so already")]
    [InlineData("wrong", "with it the book would have an error")]
    [InlineData("no entry", "has no entry `another`")]
    public void Plan_WhatCannotBe_IsRefused(string what, string why)
    {
        ChangePlan plan = Changed("book: Heron\n" + Block, what);
        Assert.Null(plan.File);
        Assert.Contains(why, plan.Refused, StringComparison.Ordinal);
    }

    private static ChangePlan Changed(string yaml, string what)
    {
        BookText book = new([new SourceText("book.yaml", yaml)], [], TestKinds.Catalog);
        RecordingLook look = RecordingLook.At(new SourceText("a.csv", Csv), [])!;
        RecordingMapping was = RecordingMapping.Of(look, book.Book!.Recordings["a run"]);
        RecordingMapping becomes = what switch
        {
            "text" => was with { Text = "Seen by us." },
            "unit" => With(was, "Grade", c => c with { Unit = "1" }),
            "compares" => With(was, "Speed [mph]", c => c with { Compares = "speed" }),
            "missing" => was with { Missing = ["none"] },
            "more" => With(was, "Outside", c => c with { Sets = ["ambient temperature"], Unit = "degC" }),
            "fewer" => With(was, "Grade", c => c with { Sets = [] }),
            "fewer speed" => With(was, "Speed [mph]", c => c with { Sets = [] }),
            "wrong" => With(was, "Grade", c => c with { Unit = "parsec" }),
            _ => was,
        };
        return book.PlanEntry(new("recordings", what == "no entry" ? "another" : "a run", was.Addition.Body, becomes.Addition.Body));
    }

    private static RecordingMapping With(RecordingMapping mapping, string head, Func<ColumnMapping, ColumnMapping> change) =>
        mapping with { Columns = [.. mapping.Columns.Select(c => c.Head == head ? change(c) : c)] };
}
