using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Sightglass.Cli;

namespace Sightglass.Cli.Tests;

/// <summary>A walk-down goes out as a file, comes back, and its proposals go into the book.</summary>
public sealed class WalkDownVerbTests
{
    private const string Pixel = "/9j/4AAQSkZJRgABAQEASABIAAD/2wBDAP//////////////////////////////////////////////////////////////////////////////////////wgALCAABAAEBAREA/8QAFBABAAAAAAAAAAAAAAAAAAAAAP/aAAgBAQABPxD/2Q==";

    private const string Book = """
        book: Heron
        places:
          yard: { x: 1 m, y: 2.4 m, z: 0 m }   # right side
        roles: { mechanical: {} }
        items:
          horn: { places: [yard], for: Warns., normal: Loud. }   # two trumpets
          drain:
            positions: [closed, open]
            who: [mechanical]
            places: [yard]
            for: Lets water out.
            normal: Closed.
        road numbers:
          "1": {}
          "2": {}
        """;

    [Fact]
    public async Task WalkDown_AsAFile_StandsAlone()
    {
        using ScratchFolder scratch = new();
        Call call = await Call.Of("walkdown", "fuel", "--road-number", "4107", "--html", scratch.At("w.html"));
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("things at", call.Output, StringComparison.Ordinal);
        string page = await File.ReadAllTextAsync(scratch.At("w.html"));
        Assert.Contains("default-src 'none'; script-src 'sha256-", page, StringComparison.Ordinal);
        Assert.DoesNotContain("http:", page.Replace("http://www.w3.org/2000/svg", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("https:", page, StringComparison.Ordinal);
        JsonNode sheet = JsonNode.Parse(page.Split("id=\"sheet\">")[1].Split("</script>")[0])!;
        Assert.Equal("4107", (string?)sheet["road_number"]);
        Assert.Contains(sheet["stops"]!.AsArray(), s => s!["dangers"]!.AsArray().Any(d => ((string?)d!["protection"])!.Length > 0));
    }

    /// <summary>What an author writes never becomes a part of the page.</summary>
    [Fact]
    public async Task WalkDown_OfABookWithMarkup_ShowsItAsText()
    {
        using ScratchFolder scratch = new();
        scratch.Write("heron/book.yaml", Book.Replace("normal: Loud.", "normal: \"</script><script>alert(1)</script>\"", StringComparison.Ordinal) + "\nnotice: \"<img src=x onerror=alert(1)>\"\n");
        Assert.Equal(ExitCode.Good, (await Call.Of("walkdown", "--book", scratch.At("heron"), "--html", scratch.At("w.html"))).Exit);
        string page = await File.ReadAllTextAsync(scratch.At("w.html"));
        Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<img src=x", page, StringComparison.Ordinal);
        Assert.Equal("</script><script>alert(1)</script>", (string?)JsonNode.Parse(page.Split("id=\"sheet\">")[1].Split("</script>")[0])!["stops"]![0]!["items"]![0]!["normal"]);
    }

    [Fact]
    public async Task Take_AResult_KeepsItOnceAndProposesForTheBook()
    {
        using ScratchFolder scratch = new();
        scratch.Write("heron/book.yaml", Book);
        string[] at = ["--book", scratch.At("heron"), "--data", scratch.At("data")];
        string file = scratch.Write("result.json", Result().ToJsonString());
        Call first = await Call.Of(["walkdown", "--take", file, .. at]);
        Assert.Equal("", first.Error);
        Assert.Contains("2 new, 0 later than what was here, 0 known already. 4 proposals", first.Output, StringComparison.Ordinal);
        Call again = await Call.Of(["walkdown", "--take", file, .. at]);
        Assert.Contains("0 new, 0 later than what was here, 2 known already. Nothing new for the book.", again.Output, StringComparison.Ordinal);
        Call found = await Call.Of(["walkdown", .. at]);
        Assert.Contains("2: 1 as described, 1 not as described, 0 not seen", found.Output, StringComparison.Ordinal);

        JsonNode list = JsonNode.Parse((await Call.Of(["proposals", "--json", .. at])).Output)!;
        int Number(string property) => (int)list["proposals"]!.AsArray().Single(p => (string?)p!["property"] == property)!["number"]!;
        Call shown = await Call.Of(["proposals", "show", $"{Number("label")}", .. at]);
        Assert.Contains("+      - name: As found", shown.Output, StringComparison.Ordinal);
        Assert.Equal(Book, await File.ReadAllTextAsync(scratch.At("heron/book.yaml")));
        foreach (string property in new[] { "label", "operate", "picture" })
        {
            Call accepted = await Call.Of(["proposals", "accept", $"{Number(property)}", "--by", "Weber", .. at]);
            Assert.Equal(("", ExitCode.Good), (accepted.Error, accepted.Exit));
        }

        Call refused = await Call.Of(["proposals", "refuse", $"{Number("know")}", "--why", "Repaired since.", "--by", "Weber", .. at]);
        Assert.Contains("refused by Weber: Repaired since.", refused.Output, StringComparison.Ordinal);
        Assert.Contains("No proposal is open.", (await Call.Of(["proposals", .. at])).Output, StringComparison.Ordinal);
        string book = await File.ReadAllTextAsync(scratch.At("heron/book.yaml"));
        Assert.Contains("            operate: \"Open: handle along the pipe.\"", book, StringComparison.Ordinal);
        string pictures = await File.ReadAllTextAsync(scratch.At("heron/pictures.yaml"));
        Assert.Contains("    file: photos/horn-", pictures, StringComparison.Ordinal);
        Assert.Contains("    place: yard\n", pictures, StringComparison.Ordinal);
        Assert.Contains("   # two trumpets\n", book, StringComparison.Ordinal);
        Assert.Single(Directory.GetFiles(scratch.At("heron/photos")));
        Assert.Equal(ExitCode.Good, (await Call.Of("check", scratch.At("heron"))).Exit);
        Assert.Equal("It is decided already.", (await Call.Of(["proposals", "accept", "1", .. at])).Error.Trim().Split(": ")[1]);
    }

    [Fact]
    public async Task Take_ALaterRevision_TakesThePlaceOfTheFirst()
    {
        using ScratchFolder scratch = new();
        scratch.Write("heron/book.yaml", Book);
        string[] at = ["--book", scratch.At("heron"), "--data", scratch.At("data")];
        JsonObject result = Result();
        await Call.Of(["walkdown", "--take", scratch.Write("1.json", result.ToJsonString()), .. at]);
        result["entries"]![0]!["revision"] = 9;
        result["entries"]![0]!["label"] = "DRAIN 2";
        result["entries"]![0]!["note"] = "";
        Call later = await Call.Of(["walkdown", "--take", scratch.Write("2.json", result.ToJsonString()), .. at]);
        Assert.Contains("0 new, 1 later than what was here, 1 known already. 1 proposal ", later.Output, StringComparison.Ordinal);
        result["entries"]![0]!["revision"] = 4; // comes late, over a slow way
        await Call.Of(["walkdown", "--take", scratch.Write("3.json", result.ToJsonString()), .. at]);
        string open = (await Call.Of(["proposals", .. at])).Output;
        Assert.Contains("drain on 2, label: DRAIN 2", open, StringComparison.Ordinal);
        Assert.DoesNotContain("know", open, StringComparison.Ordinal);
        Assert.Equal(3, open.Split('\n').Count(l => l.Contains(". ", StringComparison.Ordinal) && char.IsDigit(l[0])));
    }

    [Fact]
    public async Task Take_WhatIsNoResult_SaysWhereAndTakesNothing()
    {
        using ScratchFolder scratch = new();
        scratch.Write("heron/book.yaml", Book);
        JsonObject result = Result();
        result["entries"]![1]!["state"] = "lost";
        Call call = await Call.Of("walkdown", "--take", scratch.Write("bad.json", result.ToJsonString()), "--book", scratch.At("heron"), "--data", scratch.At("data"));
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains("bad.json: entries[1].state: is `lost`; write `seen`, `not_seen` or `differs`", call.Error, StringComparison.Ordinal);
        Assert.Contains("Nothing was taken in.", call.Error, StringComparison.Ordinal);
        Assert.Contains("cannot be read", (await Call.Of("walkdown", "--take", scratch.At("none.json"), "--book", scratch.At("heron"))).Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Accept_WhenTheBookSaysSomethingElseByNow_IsNotDone()
    {
        using ScratchFolder scratch = new();
        string book = scratch.Write("heron/book.yaml", Book);
        string[] at = ["--book", scratch.At("heron"), "--data", scratch.At("data")];
        await Call.Of(["walkdown", "--take", scratch.Write("1.json", Result().ToJsonString()), .. at]);
        File.WriteAllText(book, Book.Replace("normal: Closed.", "normal: Closed.\n    operate: A quarter turn.", StringComparison.Ordinal));
        JsonNode list = JsonNode.Parse((await Call.Of(["proposals", "--json", .. at])).Output)!;
        int number = (int)list["proposals"]!.AsArray().Single(p => (string?)p!["property"] == "operate")!["number"]!;
        Call call = await Call.Of(["proposals", "accept", $"{number}", .. at]);
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains("is by now `A quarter turn.`, and was not there", call.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("there is no folder", "walkdown", "--book", "nowhere")]
    [InlineData("Say which: 'proposals accept N'", "proposals", "accept")]
    [InlineData("--why TEXT", "proposals", "refuse", "1")]
    [InlineData("cannot be written", "walkdown", "fuel", "--html", "no/such/folder/w.html")]
    public async Task Verbs_UsedWrongly_SayWhatWouldBeRight(string says, params string[] arguments)
    {
        Call call = await Call.Of(arguments);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(says, call.Error, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>The published schema and the strict reader speak of the same file: what the reader takes keeps to the schema, and the schema names every key.</summary>
    [Fact]
    public void Schema_OfAResult_IsKeptByOne()
    {
        JsonSchema schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Call.Root, "docs", "schemas", "walk-down.schema.json")));
        Assert.True(schema.Evaluate(JsonDocument.Parse(Result().ToJsonString()).RootElement).IsValid);
        JsonObject wrong = Result();
        wrong["entries"]![0]!.AsObject().Remove("revision");
        Assert.False(schema.Evaluate(JsonDocument.Parse(wrong.ToJsonString()).RootElement).IsValid);
    }

    internal static JsonObject Result() => JsonNode.Parse($$"""
        {
          "format": "sightglass walk-down 1", "book": "Heron", "edition": "1", "road_number": "2", "purpose": "the whole machine",
          "phone": "6f2b1b44-6a55-4a3c-9a0e-0d1f2b3c4d5e", "by": "Brandt", "made_at": "2001-01-01T00:00:00Z",
          "entries": [
            { "id": "11111111-2222-4333-8444-555555555555", "revision": 3, "place": "yard", "item": "drain", "state": "differs", "label": "DRAIN: 1", "opens_towards": "handle along the pipe",
              "note": "Handle bent.", "marks": [], "photo": null, "voice": null, "by": "Brandt", "at": "2001-01-01T00:00:00Z" },
            { "id": "11111111-2222-4333-8444-555555555556", "revision": 2, "place": "yard", "item": "horn", "state": "seen", "label": "", "opens_towards": "",
              "note": "", "marks": [{ "x": 0.1, "y": 0.2, "width": 0.3, "height": 0.4, "name": "bell" }], "photo": { "type": "image/jpeg", "base64": "{{Pixel}}" }, "voice": null, "by": "Brandt", "at": "2001-01-01T00:00:00Z" } ]
        }
        """)!.AsObject();
}
