using System.Text.Json.Nodes;

namespace Sightglass.Book.Schema;

/// <summary>Small pieces of a schema.</summary>
internal static class SchemaNodes
{
    public static JsonObject Ref(string definition, string? description = null) => Described(new() { ["$ref"] = $"#/$defs/{definition}" }, description);

    /// <summary>A text; YAML readers may take one for a number.</summary>
    public static JsonObject Text(string? description = null) => Described(new() { ["type"] = new JsonArray("string", "number") }, description);

    public static JsonObject Pattern(string pattern, string? description = null) => Described(new() { ["type"] = "string", ["pattern"] = pattern }, description);

    /// <summary>What it says, or a text with a hole that a use of an assembly fills.</summary>
    public static JsonObject OrHole(JsonObject node)
    {
        JsonObject or = [];
        foreach (string outer in new[] { "description", "default" }.Where(node.ContainsKey))
        {
            or[outer] = node[outer]!.DeepClone();
            node.Remove(outer);
        }

        or["anyOf"] = new JsonArray(node, Ref("hole"));
        return or;
    }

    public static JsonObject Choice(IEnumerable<string> choices, string? description = null, string? usual = null)
    {
        JsonObject node = Described(new() { ["enum"] = Array(choices) }, description);
        if (usual is not null)
        {
            node["default"] = usual;
        }

        return node;
    }

    public static JsonObject List(JsonObject element, string? description = null) => Described(new() { ["type"] = new JsonArray("array", "null"), ["items"] = element }, description);

    /// <summary>A map of keys that are all known; nothing written counts as an empty one.</summary>
    public static JsonObject Map(string? description, IEnumerable<KeyValuePair<string, JsonObject>> keys, params ReadOnlySpan<string> required)
    {
        JsonObject node = Described(new() { ["type"] = required.Length == 0 ? new JsonArray("object", "null") : "object" }, description);
        node["properties"] = Properties(keys);
        node["additionalProperties"] = false;
        Require(node, required.ToArray());
        return node;
    }

    /// <summary>A map from names that the author chooses.</summary>
    public static JsonObject Named(JsonObject value, string? description = null) => Described(
        new() { ["type"] = new JsonArray("object", "null"), ["propertyNames"] = Ref("name"), ["additionalProperties"] = value }, description);

    public static JsonObject Properties(IEnumerable<KeyValuePair<string, JsonObject>> keys)
    {
        JsonObject properties = [];
        foreach ((string key, JsonObject value) in keys)
        {
            properties[key] = value;
        }

        return properties;
    }

    public static void Require(JsonObject node, IReadOnlyCollection<string> keys)
    {
        if (keys.Count > 0)
        {
            node["required"] = Array(keys);
        }
    }

    public static JsonArray Array(IEnumerable<string> values) => [.. values.Select(v => (JsonNode)v)];

    public static KeyValuePair<string, JsonObject> Key(string name, JsonObject value) => new(name, value);

    private static JsonObject Described(JsonObject node, string? description)
    {
        if (description is not null)
        {
            node["description"] = description;
        }

        return node;
    }
}
