using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Schema;
using Sightglass.Book.Tests.Samples;
using Sightglass.Book.Tests.Sheets;

namespace Sightglass.Book.Tests.Schema;

public class BookSchemaTests
{
    private static readonly JsonSchema s_schema = Schemas.Of(TestKinds.Catalog);

    [Fact]
    public void Generate_Schema_IsValidAgainstItsMetaschema()
    {
        JsonElement schema = JsonSerializer.SerializeToElement(BookSchema.Generate(TestKinds.Catalog));
        Assert.True(MetaSchemas.Draft202012.Evaluate(schema).IsValid);
    }

    [Fact]
    public void Generate_GoodBook_IsAccepted() =>
        Assert.All(YamlAsJson.Documents(SampleBook.Text), d => Assert.True(Accepts(d), d?.ToJsonString()));

    [Theory]
    [InlineData("lenght: 20 m")]
    [InlineData("length: 20 psi")]
    [InlineData("length: long")]
    [InlineData("walk starts: front")]
    [InlineData("places: { yard: { x: 1 m } }")]
    [InlineData("places: { yard: { x: 1 m, y: 2 m, w: 3 m } }")]
    [InlineData("places: { 'a/b': { x: 1 m, y: 2 m } }")]
    [InlineData("legs: [ { from: a, to: b } ]")]
    [InlineData("items: { a: { kind: tnak } }")]
    [InlineData("items: { a: { kind: tank, depht: 1 m } }")]
    [InlineData("items: { a: { kind: tank, depth: 1 L } }")]
    [InlineData("items: { a: { kind: tank, shape: round } }")]
    [InlineData("items: { a: { kind: tank, from: b } }")]
    [InlineData("items: { a: { depth: 1 m } }")]
    [InlineData("items: { a: { kind: orifice, from: b } }")]
    [InlineData("items: { a: { kind: fuel line } }")]
    [InlineData("items: { a: { kind: hand valve, from: b, to: outside, usual: shut } }")]
    [InlineData("items: { a: { kind: handle } }")]
    [InlineData("items: { a: { kind: tank, dip table: [ { height: 1 m } ] } }")]
    [InlineData("items: { a: { kind: tank, dip table: [ [1 m] ] } }")]
    [InlineData("items: { a: { kind: gauge, shows: x, scale: full } }")]
    [InlineData("items: { a: { kind: tank, ports: { drain: {} } } }")]
    [InlineData("items: { a: { cautions: [ { caution: x, danger: y } ] } }")]
    [InlineData("hazards: { a: { places: [b] } }")]
    [InlineData("road numbers: { '1': { modifications: [ { name: M, since: May } ] } }")]
    [InlineData("road numbers: { '1': { modifications: [ { name: M, changes: { a: { 'de/pth': 1 m } } } ] } }")]
    [InlineData("situations: { s: { faults: [ { fault: leek, on: a } ] } }")]
    [InlineData("situations: { s: { faults: [ { fault: leak, on: a, diameter: 3 kg } ] } }")]
    [InlineData("silhouettes: { top: [] }")]
    [InlineData("assemblies: { a: { itmes: {} } }")]
    [InlineData("assemblies: { a: { items: { '{name} b': { kind: tank, depth: 1 L } } } }")]
    [InlineData("assemblies: { a: { items: { '{name} b': { kind: tnak } } } }")]
    [InlineData("assemblies: { a: { parameters: { depth: 1 m } } }")]
    [InlineData("items: { a: { assembly: b, at: { x: 1 psi, y: 2 m } } }")]
    [InlineData("items: { a: { assembly: b, changes: { c: gone } } }")]
    public void Generate_BadFile_IsRejected(string yaml) => Assert.False(Accepts(YamlAsJson.Documents(yaml).Single()));

    /// <summary>What the reader takes for a length, the pattern takes, and the other way round.</summary>
    [Theory]
    [InlineData("1 m")]
    [InlineData("1m")]
    [InlineData("-1.5 cm")]
    [InlineData("−2 in")]
    [InlineData("1 1/4 in")]
    [InlineData("3/4 in")]
    [InlineData("1½ ft")]
    [InlineData("½ ft")]
    [InlineData("2\u2009000 mm")]
    [InlineData("1e-3 km")]
    [InlineData(".5 m")]
    [InlineData("m")]
    [InlineData("1")]
    [InlineData("1 m m")]
    [InlineData("1 mn")]
    [InlineData("1 psi")]
    [InlineData("1,5 m")]
    [InlineData("1..2 m")]
    [InlineData("one m")]
    public void Generate_Length_AcceptsWhatTheReaderReads(string value)
    {
        bool reads = QuantityText.TryParse(value, default, Dimension.Metre, [], out _);
        Assert.Equal(reads, Accepts(new JsonObject { ["length"] = value }));
    }

    [Theory]
    [InlineData("4 mm .. 30 mm", true)]
    [InlineData("4 .. 30 mm", true)]
    [InlineData("4…30 mm", true)]
    [InlineData("30 mm", true)]
    [InlineData("4 mm ..", false)]
    [InlineData("4 L .. 30 mm", false)]
    public void Generate_Range_AcceptsOneOrTwoValues(string value, bool good)
    {
        JsonObject fault = new() { ["fault"] = "leak", ["on"] = "tank", ["diameter"] = value };
        JsonObject file = new() { ["situations"] = new JsonObject { ["s"] = new JsonObject { ["faults"] = new JsonArray(fault) } } };
        Assert.Equal(good, Accepts(file));
    }

    [Fact]
    public void Generate_KeysAndKinds_AreDescribed()
    {
        JsonObject schema = BookSchema.Generate(TestKinds.Catalog);
        JsonNode kind = schema["$defs"]!["item"]!["properties"]!["kind"]!["anyOf"]!.AsArray().Single(k => (string?)k!["const"] == "tank")!;
        Assert.Equal("Holds liquid with a free surface.", (string?)kind["description"]);
        Assert.All(schema["properties"]!.AsObject(), p => Assert.NotNull(p.Value!["description"]));
    }

    [Fact]
    public void Write_Twice_GivesTheSameText() => Assert.Equal(BookSchema.Write(TestKinds.Catalog), BookSchema.Write(TestKinds.Catalog));

    private static bool Accepts(JsonNode? document) => s_schema.Evaluate(JsonSerializer.SerializeToElement(document)).IsValid;
}
