using System.Globalization;
using System.Text.Json.Nodes;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Sightglass.Book.Tests.Schema;

/// <summary>Takes YAML as an editor does: plain scalars are null, truth values and numbers after the core schema of YAML 1.2, else texts.</summary>
internal static class YamlAsJson
{
    public static IEnumerable<JsonNode?> Documents(string text)
    {
        YamlStream stream = [];
        stream.Load(new StringReader(text));
        return stream.Documents.Select(d => Node(d.RootNode));
    }

    private static JsonNode? Node(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(c => new KeyValuePair<string, JsonNode?>(((YamlScalarNode)c.Key).Value!, Node(c.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Node)]),
        YamlScalarNode { Style: ScalarStyle.Plain } s => Plain(s.Value!),
        YamlScalarNode s => JsonValue.Create(s.Value),
        _ => null,
    };

    private static JsonNode? Plain(string value) => value switch
    {
        "" or "~" or "null" => null,
        "true" => JsonValue.Create(true),
        "false" => JsonValue.Create(false),
        _ => double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) ? JsonValue.Create(number) : JsonValue.Create(value),
    };
}
