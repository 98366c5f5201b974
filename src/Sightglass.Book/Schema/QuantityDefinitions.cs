using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;

namespace Sightglass.Book.Schema;

/// <summary>Definitions of values and ranges, one for each dimension that is used.</summary>
internal sealed class QuantityDefinitions
{
    private readonly SortedDictionary<string, JsonObject> _definitions = new(StringComparer.Ordinal);

    public IEnumerable<KeyValuePair<string, JsonObject>> All => _definitions;

    public JsonObject Value(Dimension dimension, string? description = null, string? usual = null) =>
        Usually(Reference(dimension, $"{NameOf(dimension)}", QuantityPatterns.Value(dimension), description), usual);

    /// <summary>A number that must be whole; what a text says only the reader finds out.</summary>
    public JsonObject Whole(string? description = null, string? usual = null) =>
        Usually(Reference(Dimension.One, "whole number", QuantityPatterns.Value(Dimension.One), description, "integer"), usual);

    public JsonObject WholeRange(string? description = null) =>
        Reference(Dimension.One, "whole number or range", QuantityPatterns.Range(Dimension.One), description, "integer");

    public JsonObject Range(Dimension dimension, string? description = null) =>
        Reference(dimension, $"{NameOf(dimension)} or range", QuantityPatterns.Range(dimension), description);

    private static JsonObject Usually(JsonObject node, string? usual)
    {
        if (usual is not null)
        {
            node["default"] = usual;
        }

        return node;
    }

    private JsonObject Reference(Dimension dimension, string name, string pattern, string? description, string number = "number")
    {
        if (!_definitions.ContainsKey(name))
        {
            JsonObject text = SchemaNodes.Pattern(pattern);
            text["patternErrorMessage"] = $"Expected {name}, such as {(number == "integer" ? "3" : Examples(dimension))}.";
            _definitions[name] = dimension == Dimension.One
                ? new() { ["anyOf"] = new JsonArray(new JsonObject { ["type"] = number }, text, SchemaNodes.Ref("hole")) }
                : SchemaNodes.OrHole(text);
        }

        return SchemaNodes.Ref(name.Replace("/", "~1", StringComparison.Ordinal), description);
    }

    /// <summary>For editors that show it instead of the pattern.</summary>
    private static string Examples(Dimension dimension) =>
        dimension == Dimension.One ? "0.62 or 3 %" : string.Join(" or ", UnitTable.SymbolsOf(dimension).Take(3).Select(s => $"1 {s}"));

    private static string NameOf(Dimension dimension) => dimension == Dimension.One ? "number" : dimension.ToString();
}
