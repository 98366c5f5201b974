using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>The schema of situations: what a fault may say comes from all kinds that can have it.</summary>
internal sealed class SituationSchema(KindCatalog kinds, QuantityDefinitions quantities)
{
    public JsonObject Situation() => Map("Where a world starts; each value fixed or drawn from a range.",
    [
        Key("text", Text("What has happened, for a person to read.")),
        Key("road number", Ref("names", "A road number of the class, or several: a case draws one of them. One of all where none is given.")),
        Key("train", Text("The train in which the machine runs; alone where absent.")),
        Key("cards", Ref("names", "The cards that are for it, by their file names without `.card`: where they are tried.")),
        Key("people", List(Person(), "Who is there.")),
        Key("answers", Answers()),
        Key("start", Start()),
        Key("states", new RecordingSchema(quantities).States()),
        Key("faults", List(Fault(), "Faults that come.")),
    ]);

    private static JsonObject Person() => Map(null, [Key("role", Text("A role.")), Key("at", Ref("names", "A place, or several of which one is drawn."))], "role", "at");

    private JsonObject Answers() => Map("How those answer who are asked for a protection or a permission; drawn for each question.",
    [
        Key("after", quantities.Range(Dimension.Second, "How long after the question; 5 s .. 60 s where nothing is said.")),
        Key("unanswered", quantities.Value(Dimension.One, "Share of questions that nobody answers.", "5 %")),
    ]);

    private static JsonObject Start() => new()
    {
        ["type"] = new JsonArray("object", "null"),
        ["description"] = "Starting values: a control, `QUANTITY of ITEM`, or the surroundings. A value, a range `30 % .. 95 %`, or `one of idle, notch 1`.",
        ["properties"] = new JsonObject(WorldInput.All.Select(i => KeyValuePair.Create(i.Name, (JsonNode?)new JsonObject { ["description"] = i.Doc }))),
        ["additionalProperties"] = new JsonObject { ["type"] = new JsonArray("string", "number", "boolean", "array") },
    };

    private JsonObject Fault()
    {
        KindFault[] faults = [.. kinds.Sheets.SelectMany(k => k.Faults)];
        ParameterSchema parameters = new(quantities);
        JsonObject fault = Map(null,
        [
            Key("fault", Choice(faults.Select(f => f.Name).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal), "Which fault.")),
            Key("on", Ref("names", "An item, or several of which one is drawn.")),
            Key("after", quantities.Range(Dimension.Second, "When it comes.")),
            Key("chance", quantities.Value(Dimension.One, "How likely it is there at all.", "100 %")),
        ], "fault", "on");
        foreach (IGrouping<string, KindParameter> p in faults.SelectMany(f => f.Parameters).GroupBy(p => p.Name).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            JsonObject[] ways = [.. p.DistinctBy(q => (q.Type, q.Dimension, q.IsWhole)).Select(parameters.InSituation)];
            fault["properties"]![p.Key] = ways.Length == 1 ? ways[0] : new JsonObject { ["anyOf"] = new JsonArray([.. ways]) };
        }

        return fault;
    }
}
