using System.Text.Json.Nodes;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;

namespace Sightglass.Book.Schema;

/// <summary>The schema of one parameter of a kind.</summary>
internal sealed class ParameterSchema(QuantityDefinitions quantities)
{
    public JsonObject Of(KindParameter p)
    {
        string doc = Doc(p);
        return p.Type switch
        {
            ParameterType.Quantity when p.IsWhole => quantities.Whole(doc, p.Default),
            ParameterType.Quantity => quantities.Value(p.Dimension, doc, p.Default),
            ParameterType.Choice => p.Choices.IsDefaultOrEmpty ? SchemaNodes.Text(doc) : SchemaNodes.OrHole(SchemaNodes.Choice(p.Choices, doc, p.Default)),
            ParameterType.YesNo => SchemaNodes.OrHole(SchemaNodes.Ref("yes or no", doc)),
            ParameterType.Items => SchemaNodes.Ref("names", doc),
            ParameterType.Pins => SchemaNodes.OrHole(Pins(doc)),
            ParameterType.Table => SchemaNodes.OrHole(SchemaNodes.List(Row(TableColumn.Of(p)), doc)),
            ParameterType.ByPosition => ByPosition(p, doc),
            _ => SchemaNodes.Text(doc),
        };
    }

    /// <summary>A value of a situation's fault: fixed, a range, or words.</summary>
    public JsonObject InSituation(KindParameter p) =>
        p.IsWhole ? quantities.WholeRange(Doc(p)) : p.Type == ParameterType.Quantity ? quantities.Range(p.Dimension, Doc(p)) : SchemaNodes.Ref("names", Doc(p));

    private static string Doc(KindParameter p)
    {
        string limits = (p.Minimum, p.Maximum) switch
        {
            ({ } low, { } high) => $" {low} to {high}.",
            ({ } low, null) => $" At least {low}.",
            (null, { } high) => $" At most {high}.",
            _ => "",
        };
        string dimension = p.Type is ParameterType.Quantity or ParameterType.ByPosition && p.Dimension != Dimension.One ? $" ({p.Dimension})" : "";
        return $"{p.Doc}{dimension}{limits}";
    }

    private static JsonObject Pins(string doc)
    {
        JsonObject node = SchemaNodes.Named(SchemaNodes.Text(), doc);
        node["propertyNames"] = SchemaNodes.Pattern("^[1-9][0-9]{0,2}$|\\{[^{}]+\\}", "The number of a pin, or a hole.");
        return node;
    }

    private JsonObject ByPosition(KindParameter p, string doc)
    {
        JsonObject node = SchemaNodes.Named(quantities.Value(p.Dimension));
        node["description"] = doc;
        return SchemaNodes.OrHole(node);
    }

    private JsonObject Row(IReadOnlyList<TableColumn> columns)
    {
        JsonObject byName = SchemaNodes.Map(null, columns.Select(c => SchemaNodes.Key(c.Name, quantities.Value(c.Dimension))), [.. columns.Select(c => c.Name)]);
        JsonObject inOrder = new()
        {
            ["type"] = "array",
            ["prefixItems"] = new JsonArray([.. columns.Select(c => (JsonNode)quantities.Value(c.Dimension))]),
            ["items"] = false,
            ["minItems"] = columns.Count,
        };
        return new() { ["anyOf"] = new JsonArray(byName, inOrder) };
    }
}
