using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Consists;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>The JSON Schema (2020-12) of the file of a train that somebody makes up: for completion and first checks in an editor.</summary>
public static class ConsistSchema
{
    private static readonly JsonSerializerOptions s_format = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The schema as a tree.</summary>
    public static JsonObject Generate()
    {
        QuantityDefinitions quantities = new();
        string which = $"A class of cars of the book, or `{ConsistReader.Machine}`.";
        JsonObject vehicle = Map(null,
        [
            Key("vehicle", Text(which)),
            Key("count", new JsonObject { ["type"] = "integer", ["minimum"] = 1, ["description"] = "How many of them follow each other." }),
            Key("turned", Ref("yes or no", "Whether its front faces the rear of the train.")),
            Key("number", Text("The number on its side; of a machine one of the book's road numbers.")),
            Key("mass", quantities.Value(Dimension.Kilogram, "As it is now; that of its class where absent.")),
            Key("dead", Ref("yes or no", "Whether a machine is hauled dead.")),
            Key("stands", MakingUpSchema.Settings("Its controls that do not stand as the book sets a train up.")),
            Key("not coupled behind", Ref("names", "Lines that are not coupled to the vehicle behind it.")),
        ], "vehicle");
        JsonObject root = new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$id"] = "urn:sightglass:schema:consist",
            ["title"] = "A train that is made up",
            ["type"] = "object",
            ["properties"] = Properties(
            [
                Key("consist", Text("What the train is called.")),
                Key("grade", quantities.Value(Dimension.One, "The steepest grade of its way, upward.", "0 %")),
                Key("curve", quantities.Value(Dimension.One, "The sharpest curve on it, in degrees of 100 ft.", "0")),
                Key("adhesion", quantities.Value(Dimension.One, "Share of the weight on driven axles that the rail holds.", "20 %")),
                Key("vehicles", List(new JsonObject { ["anyOf"] = new JsonArray(Text(which), vehicle) }, "From the head of the train.")),
            ]),
            ["additionalProperties"] = false,
            ["required"] = new JsonArray("vehicles"),
        };
        KeyValuePair<string, JsonObject>[] common = [.. new CommonDefinitions(quantities).All().Where(d => d.Key is "name" or "names" or "hole" or "yes or no")];
        root["$defs"] = Properties(common.Concat(quantities.All.Where(q => q.Key == "number" || q.Key == Dimension.Kilogram.ToString()).Select(q => Key(q.Key, q.Value))));
        return root;
    }

    /// <summary>The schema as the text of a file, ending in a line break.</summary>
    public static string Write() => Generate().ToJsonString(s_format) + "\n";
}
