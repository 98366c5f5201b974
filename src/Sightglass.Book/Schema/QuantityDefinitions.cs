using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;

namespace Sightglass.Book.Schema;

/// <summary>Definitions of values and ranges, one for each dimension that is used.</summary>
internal sealed class QuantityDefinitions
{
    private readonly SortedDictionary<string, JsonObject> _definitions = new(StringComparer.Ordinal);

    public IEnumerable<KeyValuePair<string, JsonObject>> All => _definitions;

    public JsonObject Value(Dimension dimension, string? description = null, string? usual = null)
    {
        JsonObject node = Reference(dimension, $"{NameOf(dimension)}", QuantityPatterns.Value(dimension), description);
        if (usual is not null)
        {
            node["default"] = usual;
        }

        return node;
    }

    public JsonObject Range(Dimension dimension, string? description = null) =>
        Reference(dimension, $"{NameOf(dimension)} or range", QuantityPatterns.Range(dimension), description);

    private JsonObject Reference(Dimension dimension, string name, string pattern, string? description)
    {
        if (!_definitions.ContainsKey(name))
        {
            JsonObject text = SchemaNodes.Pattern(pattern);
            text["patternErrorMessage"] = $"Expected {name}, such as {Examples(dimension)}.";
            _definitions[name] = dimension == Dimension.One
                ? new() { ["anyOf"] = new JsonArray(new JsonObject { ["type"] = "number" }, text, SchemaNodes.Ref("hole")) }
                : SchemaNodes.OrHole(text);
        }

        return SchemaNodes.Ref(name.Replace("/", "~1", StringComparison.Ordinal), description);
    }

    /// <summary>For editors that show it instead of the pattern.</summary>
    private static string Examples(Dimension dimension) =>
        dimension == Dimension.One ? "0.62 or 3 %" : string.Join(" or ", UnitTable.SymbolsOf(dimension).Take(3).Select(s => $"1 {s}"));

    private static string NameOf(Dimension dimension) => dimension == Dimension.One ? "number" : dimension.ToString();
}
