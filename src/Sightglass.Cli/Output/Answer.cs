using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Sightglass.Cli.Output;

/// <summary>Writes a verb's answer as JSON: lower-case names with units in them.</summary>
internal static class Answer
{
    public static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        WriteIndented = true,
        TypeInfoResolver = new DefaultJsonTypeInfoResolver(),
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static void Write<T>(TextWriter output, T answer) => output.WriteLine(JsonSerializer.Serialize(answer, Options));
}
