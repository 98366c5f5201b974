using System.Text;
using System.Text.Json.Nodes;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Training.WalkDowns;

namespace Sightglass.Training.Tests.WalkDowns;

public sealed class WalkDownReaderTests
{
    private const string Pixel = "/9j/4AAQSkZJRgABAQEASABIAAD/2wBDAP//////////////////////////////////////////////////////////////////////////////////////wgALCAABAAEBAREA/8QAFBABAAAAAAAAAAAAAAAAAAAAAP/aAAgBAQABPxD/2Q==";

    private static readonly ClassBook s_book = BookReader.Read(
        [new SourceText("book.yaml", "book: Heron\nplaces: { yard: { x: 1 m, y: 2.4 m, z: 0 m } }\nitems: { horn: { places: [yard], for: Warns., normal: Loud. } }\nroad numbers: { \"1\": {} }\n")],
        [], KindLibrary.Catalog, [])!;

    [Fact]
    public void Read_AGoodResult_IsAllOfIt()
    {
        List<string> found = [];
        WalkDownResult? result = WalkDownReader.Read(Bytes(Good()), s_book, found);
        Assert.Empty(found);
        WalkDownFinding entry = Assert.Single(result!.Entries);
        Assert.Equal(("1", "Brandt", FoundState.Differs, "HORN", "to the front", "Painted red."), (result.RoadNumber, result.By, entry.State, entry.Label, entry.OpensTowards, entry.Note));
        Assert.Equal("[{\"x\":0.1,\"y\":0.2,\"width\":0.3,\"height\":0.4,\"name\":\"valve\"}]", entry.Marks);
        Assert.Equal(1, entry.Photo!.Width);
        Assert.Empty(result.Notes);
    }

    [Theory]
    [InlineData("format", "\"other 9\"", "format: is `other 9`; this program reads `sightglass walk-down 1`")]
    [InlineData("book", "\"Curlew\"", "book: the walk-down is of `Curlew`, and this book is `Heron`")]
    [InlineData("road_number", "\"7\"", "road_number: the book has no `7`; it has 1")]
    [InlineData("road_number", "7", "road_number: is a number; write a text")]
    [InlineData("phone", "\"mine\"", "phone: is no id")]
    [InlineData("entries", "{}", "entries: is an object; write a list")]
    [InlineData("entries", "[[]]", "entries[0]: is a list; an entry is an object")]
    [InlineData("more", "1", "`more`: is not known; leave it out")]
    [InlineData("entries.0.state", "\"seeen\"", "entries[0].state: is `seeen`; write `seen`, `not_seen` or `differs`")]
    [InlineData("entries.0.revision", "0", "entries[0].revision: is `0`; write a number from 1")]
    [InlineData("entries.0.revision", "1e99", "entries[0].revision: is `1e99`; write a number from 1")]
    [InlineData("entries.0.place", "null", "entries[0].place: is null; write a text")]
    [InlineData("entries.0.label", "[1]", "entries[0].label: is a list; write a text of at most 200")]
    [InlineData("entries.0.note", "\"\\uD83D\"", "entries[0].note: holds half a character")]
    [InlineData("entries.0.at", "\"yesterday\"", "entries[0].at: is no instant")]
    [InlineData("entries.0.photo", "\"abc\"", "entries[0].photo: is a text; write null, or an object")]
    [InlineData("entries.0.photo", "{\"type\":\"image/jpeg\",\"base64\":\"!!\"}", "entries[0].photo.base64: is no base64")]
    [InlineData("entries.0.photo", "{\"type\":\"image/jpeg\",\"base64\":\"PHN2Zz4=\"}", "entries[0].photo: is no picture")]
    [InlineData("entries.0.voice", "{\"type\":\"audio/webm\",\"base64\":\"PHN2Zz4=\"}", "entries[0].voice: is no recording")]
    [InlineData("entries.0.marks", "[{\"x\":2,\"y\":0,\"width\":0,\"height\":0,\"name\":\"\"}]", "entries[0].marks[0].x: is `2`; write a number from 0 to 1")]
    public void Read_WhatIsWrong_IsToldWithItsPlace(string place, string value, string says)
    {
        JsonObject result = Good();
        JsonNode at = result;
        string[] path = place.Split('.');
        foreach (string step in path[..^1])
        {
            at = int.TryParse(step, out int i) ? at[i]! : at[step]!;
        }

        at[path[^1]] = value.Contains("\\uD", StringComparison.Ordinal) ? "HALF" : JsonNode.Parse(value);
        List<string> found = [];
        Assert.Null(WalkDownReader.Read(Encoding.UTF8.GetBytes(result.ToJsonString().Replace("\"HALF\"", value, StringComparison.Ordinal)), s_book, found));
        Assert.Contains(found, f => f.StartsWith(says, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "line 1, byte 1")]
    [InlineData("{\n  \"format\": x", "line 2, byte 13")]
    [InlineData("[]", "the file is a list")]
    [InlineData("{\"format\":1,\"format\":2}", "this is no file of a walk-down")]
    [InlineData("\"\\uD800\"", "the file is a text")]
    public void Read_NoResultAtAll_SaysSo(string text, string says)
    {
        List<string> found = [];
        Assert.Null(WalkDownReader.Read(Encoding.UTF8.GetBytes(text), s_book, found));
        Assert.Contains(says, Assert.Single(found), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_DeepOrEndless_IsRefusedBeforeATreeIsBuilt()
    {
        List<string> found = [];
        Assert.Null(WalkDownReader.Read(Encoding.UTF8.GetBytes(new string('[', 5_000_000)), s_book, found));
        Assert.Contains("this is no file of a walk-down", Assert.Single(found), StringComparison.Ordinal);
        found.Clear();
        byte[] endless = Encoding.UTF8.GetBytes("{\"entries\":[" + string.Join(',', Enumerable.Repeat("0", 3_000_000)) + "]}");
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Null(WalkDownReader.Read(endless, s_book, found));
        Assert.Contains("larger than a walk-down can be", Assert.Single(found), StringComparison.Ordinal);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1 << 20);
    }

    [Fact]
    public void Read_NamesThatTheBookLost_AreKeptAndTold()
    {
        JsonObject result = Good();
        result["entries"]![0]!["item"] = "trumpet";
        List<string> found = [];
        WalkDownResult read = WalkDownReader.Read(Bytes(result), s_book, found)!;
        Assert.Equal("the book has no item `trumpet`; kept, and nothing is proposed for it", Assert.Single(read.Notes));
    }

    [Fact]
    public void Read_ThreeThousandWrongEntries_AreNotAllTold()
    {
        JsonObject result = Good();
        result["entries"] = new JsonArray([.. Enumerable.Range(0, 3000).Select(_ => (JsonNode)new JsonObject())]);
        List<string> found = [];
        Assert.Null(WalkDownReader.Read(Bytes(result), s_book, found));
        Assert.Equal(41, found.Count);
    }

    private static JsonObject Good() => JsonNode.Parse($$"""
        {
          "format": "sightglass walk-down 1", "book": "Heron", "edition": "1", "road_number": "1", "purpose": "the whole machine",
          "phone": "6f2b1b44-6a55-4a3c-9a0e-0d1f2b3c4d5e", "by": "Brandt", "made_at": "2026-11-26T10:42:00Z",
          "entries": [ {
            "id": "11111111-2222-4333-8444-555555555555", "revision": 3, "place": "yard", "item": "horn", "state": "differs", "label": " HORN\u0007", "opens_towards": "to the front",
            "note": "Painted red.", "marks": [ { "x": 0.1, "y": 0.2, "width": 0.3, "height": 0.4, "name": "valve" } ],
            "photo": { "type": "image/jpeg", "base64": "{{Pixel}}" }, "voice": null, "by": "Brandt", "at": "2026-11-26T10:40:00Z" } ]
        }
        """)!.AsObject();

    private static byte[] Bytes(JsonObject result) => Encoding.UTF8.GetBytes(result.ToJsonString());
}
