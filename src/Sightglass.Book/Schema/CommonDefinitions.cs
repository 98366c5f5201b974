using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;
using static Sightglass.Book.Schema.SchemaNodes;

namespace Sightglass.Book.Schema;

/// <summary>Definitions that several sections use.</summary>
internal sealed class CommonDefinitions(QuantityDefinitions quantities)
{
    private static readonly string[] s_signalWords = ["danger", "warning", "caution", "notice"];

    public IReadOnlyList<KeyValuePair<string, JsonObject>> All() =>
    [
        Key("name", Pattern(@"^[\p{L}\p{Nd}][\p{L}\p{Nd} ,.'’&-]*$", "Words of letters and digits with single spaces; comma, hyphen, point and apostrophe are allowed.")),
        Key("name with holes", Pattern(@"^[\p{L}\p{Nd}{][\p{L}\p{Nd} ,.'’&{}-]*$", "A name with `{name}`, which each use fills with its own.")),
        Key("hole", Pattern(@"\{[^{}]+\}", "In an assembly: a parameter between braces.")),
        Key("names", new JsonObject { ["anyOf"] = new JsonArray(Text(), new JsonObject { ["type"] = "null" }, new JsonObject { ["type"] = "array", ["items"] = Text() }) }),
        Key("yes or no", new JsonObject { ["enum"] = new JsonArray("yes", "no", "true", "false", true, false) }),
        Key("point", Map("x from the front coupler's pulling face rearward, y to the right seen facing forward, z above rail.", Axes(), "x", "y")),
        Key("caution", Caution()),
        Key("ports", Named(Port())),
    ];

    public IEnumerable<KeyValuePair<string, JsonObject>> Axes() =>
    [
        Key("x", quantities.Value(Dimension.Metre, "From the front coupler's pulling face rearward.")),
        Key("y", quantities.Value(Dimension.Metre, "To the right seen facing forward.")),
        Key("z", quantities.Value(Dimension.Metre, "Above rail.")),
    ];

    /// <summary>One signal word with its text, among the keys of a map.</summary>
    public static IEnumerable<KeyValuePair<string, JsonObject>> SignalWords() => s_signalWords.Select(w => Key(w, Text("Hazard. What it does to you. How to avoid it.")));

    public static JsonArray OneSignalWord() => [.. s_signalWords.Select(w => (JsonNode)new JsonObject { ["required"] = new JsonArray(w) })];

    private static JsonObject Caution()
    {
        JsonObject caution = Map(null, SignalWords());
        caution["type"] = "object";
        caution["oneOf"] = OneSignalWord();
        return caution;
    }

    private JsonObject Port() => Map(null,
    [
        Key("height", quantities.Value(Dimension.Metre, "Above the floor of the store.")),
        Key("x", quantities.Value(Dimension.Metre, "In the class's axes; the middle of the store where absent.")),
        Key("y", quantities.Value(Dimension.Metre, "In the class's axes; the middle of the store where absent.")),
    ], "height");
}
