using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Rules;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>The JSON Schema (2020-12) of a file of published rules: for completion and first checks in an editor.</summary>
public static class RuleSchema
{
    private static readonly JsonSerializerOptions s_format = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The schema as a tree.</summary>
    public static JsonObject Generate()
    {
        QuantityDefinitions quantities = new();
        JsonObject rows = Named(Row(quantities), "Published limits, each named by its paragraph.");
        rows["propertyNames"] = Ref("paragraph");
        JsonObject root = new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$id"] = "urn:sightglass:schema:rules",
            ["title"] = "A file of published rules",
            ["description"] = "A set of rules is a folder; every .yaml file below it holds some of these sections.",
            ["type"] = new JsonArray("object", "null"),
            ["properties"] = Properties(
            [
                Key("rules", Text("The publication.")),
                Key("edition", Text("The edition that was read.")),
                Key("text", Text("What a reader should know of the set as a whole.")),
                Key("quantities", Named(Quantity(), "What rows speak of; a book says under `measures` what each is on its machine.")),
                Key("rows", rows),
            ]),
            ["additionalProperties"] = false,
        };
        KeyValuePair<string, JsonObject>[] common = [.. new CommonDefinitions(quantities).All().Where(d => d.Key is "name" or "hole")];
        root["$defs"] = Properties(common.Append(Key("paragraph", Pattern(@"^[A-Za-z0-9 .,()§-]{1,60}$"))).Concat(quantities.All.Where(q => q.Key == Dimension.Second.ToString()).Select(q => Key(q.Key, q.Value))));
        return root;
    }

    /// <summary>The schema as the text of a file, ending in a line break.</summary>
    public static string Write() => Generate().ToJsonString(s_format) + "\n";

    private static JsonObject Quantity() => Map("What is meant, and in what it is shown; without `shown in` it is something that is true or not.",
        [Key("shown in", Text("A unit.")), Key("text", Text("For whoever writes the measure of a book."))]);

    private static JsonObject Row(QuantityDefinitions quantities) => Map("One published limit.",
    [
        Key("title", Text("What is limited, in a few words.")),
        Key("limit", Text("The limit in words.")),
        Key("condition", Text("When and to what it applies.")),
        Key("method", Text("How it is measured.")),
        Key("our reading", Text("What is not in the paragraph and was decided by whoever wrote the row.")),
        Key("confidence", Choice(["high", "medium"], "Read and not known to be changed; or read, and a later change is possible.")),
        Key("edition", Text("The edition that was read, where it is not that of the set.")),
        Key("value", Text("A formula of quantities: what the book says.")),
        Key("at least", Text("A formula of quantities.")),
        Key("at most", Text("A formula of quantities.")),
        Key("holds", Text("A condition: what must be so.")),
        Key("test", Test(quantities)),
    ], "title", "limit", "confidence");

    private static JsonObject Test(QuantityDefinitions quantities)
    {
        JsonObject test = Map("How the number is measured in a run.",
        [
            Key("begins when", Text("A condition; it begins at the moment at which this comes true.")),
            Key("only while", Text("A condition that must hold to the end of the test.")),
            Key("settles", quantities.Value(Dimension.Second, "From its beginning to the first value that counts.", "0 s")),
            Key("lasts", quantities.Value(Dimension.Second, "From the first value that counts to the last.")),
            .. RuleRowReader.OutcomeKeys.Select(k => Key(k, Text("What is followed; the number of the test is made of its values."))),
        ], "begins when", "lasts");
        test["oneOf"] = new JsonArray([.. RuleRowReader.OutcomeKeys.Select(k => (JsonNode)new JsonObject { ["required"] = new JsonArray(k) })]);
        return test;
    }
}
