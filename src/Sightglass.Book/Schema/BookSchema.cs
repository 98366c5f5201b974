using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>
/// The JSON Schema (2020-12) of a file of a class book, generated from the kind sheets: for completion and first checks in an editor.
/// It accepts what the reader accepts as far as one file can tell; names in other places only the reader can check.
/// </summary>
public static class BookSchema
{
    private static readonly JsonSerializerOptions s_format = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The schema as a tree.</summary>
    public static JsonObject Generate(KindCatalog kinds)
    {
        ArgumentNullException.ThrowIfNull(kinds);
        QuantityDefinitions quantities = new();
        ItemSchema items = new(kinds, quantities);
        SectionSchema sections = new(quantities);
        JsonObject root = new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$id"] = "urn:sightglass:schema:book",
            ["title"] = "A file of a class book",
            ["description"] = "A book is a folder; every .yaml file below it holds some of these sections.",
            ["type"] = new JsonArray("object", "null"),
        };
        root["properties"] = Properties(new HeadSchema(quantities).Keys().Concat(sections.Keys()).Concat(
        [
            Key("assemblies", Named(new AssemblySchema(sections).Assembly(), "Groups of parts, written once and used several times.")),
            Key("items", Named(Ref("entry"), "Pieces of equipment by name.")),
            Key("road numbers", new RoadNumberSchema(items).Section()),
            Key("cars", new TrainSchema(sections, quantities).Cars()),
            Key("trains", TrainSchema.Trains()),
            Key("recordings", Named(new RecordingSchema(quantities).Recording(), "What stood on machines over time: states that situations draw from.")),
            Key("situations", Named(new SituationSchema(kinds, quantities).Situation(), "Where worlds start, by name.")),
        ]));
        root["additionalProperties"] = false;
        KeyValuePair<string, JsonObject>[] own = [Key("item", items.Item()), Key("use", items.Use()), Key("entry", ItemSchema.Entry())];
        root["$defs"] = Properties(new CommonDefinitions(quantities).All().Concat(own).Concat(quantities.All.Select(q => Key(q.Key, q.Value))).OrderBy(k => k.Key, StringComparer.Ordinal));
        return root;
    }

    /// <summary>The schema as the text of a file, ending in a line break.</summary>
    public static string Write(KindCatalog kinds) => Generate(kinds).ToJsonString(s_format) + "\n";
}
