using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Sightglass.Training.WalkDowns;

/// <summary>Reads one object of a file that may hold anything: every value is checked, every key must be known, and each complaint says where and what would be right.</summary>
/// <param name="element">The object.</param>
/// <param name="path">Where it stands: <c>entries[3]</c>.</param>
/// <param name="found">Takes complaints.</param>
internal sealed class JsonReading(JsonElement element, string path, List<string> found)
{
    private readonly HashSet<string> _known = new(StringComparer.Ordinal);

    public string Path => path;

    /// <summary>One value, or null after saying that it is missing.</summary>
    public JsonElement? Take(string key, JsonValueKind kind, string wanted, bool nullable = false)
    {
        _known.Add(key);
        if (element.TryGetProperty(key, out JsonElement value) && (value.ValueKind == kind || (nullable && value.ValueKind == JsonValueKind.Null)))
        {
            return value.ValueKind == JsonValueKind.Null ? null : value;
        }

        found.Add($"{At(key)}: {(value.ValueKind == JsonValueKind.Undefined ? "is missing" : $"is {Described(value)}")}; {wanted}");
        return null;
    }

    /// <summary>A text without invisible characters, trimmed; empty where it is null or wrong.</summary>
    public string Text(string key, int longest, bool nullable = false, bool required = false)
    {
        if (Take(key, JsonValueKind.String, $"write a text of at most {longest} characters", nullable) is not { } value)
        {
            return "";
        }

        string text;
        try
        {
            text = value.GetString()!;
        }
        catch (InvalidOperationException)
        {
            found.Add($"{At(key)}: holds half a character; leave it out");
            return "";
        }

        text = new string([.. text.ReplaceLineEndings("\n").Select(c => c != '\n' && char.IsControl(c) ? ' ' : c)]).Trim();
        if (text.Length > longest || (required && text.Length == 0))
        {
            found.Add($"{At(key)}: {(text.Length == 0 ? "is empty" : $"has {text.Length.ToString(CultureInfo.InvariantCulture)} characters")}; write {(required ? "1 to" : "at most")} {longest}");
            return "";
        }

        return text;
    }

    public Guid Id(string key)
    {
        string text = Text(key, 40);
        if (text.Length > 0 && Guid.TryParseExact(text, "D", out Guid id))
        {
            return id;
        }

        found.Add($"{At(key)}: is no id; write 32 hexadecimal digits as 8-4-4-4-12");
        return default;
    }

    public double Number(string key, double least, double most)
    {
        if (Take(key, JsonValueKind.Number, $"write a number from {least.ToString(CultureInfo.InvariantCulture)} to {most.ToString(CultureInfo.InvariantCulture)}") is not { } value)
        {
            return least;
        }

        if (value.TryGetDouble(out double number) && number >= least && number <= most)
        {
            return number;
        }

        found.Add($"{At(key)}: is {Short(value.GetRawText())}; write a number from {least.ToString(CultureInfo.InvariantCulture)} to {most.ToString(CultureInfo.InvariantCulture)}");
        return least;
    }

    public DateTimeOffset Instant(string key)
    {
        string text = Text(key, 40);
        if (DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset instant))
        {
            return instant;
        }

        found.Add($"{At(key)}: is no instant; write it as 2026-11-26T10:42:00Z");
        return default;
    }

    /// <summary>The bytes of a file that stands in the text as <c>{ type, base64 }</c>; null where there is none or it is wrong.</summary>
    public byte[]? File(string key, int largest)
    {
        if (Take(key, JsonValueKind.Object, "write null, or an object of `type` and `base64`", nullable: true) is not { } value)
        {
            return null;
        }

        JsonReading file = new(value, At(key), found);
        file.Text("type", 80);
        JsonElement? data = file.Take("base64", JsonValueKind.String, "write the file in base64");
        file.Finish();
        if (data is not { } text)
        {
            return null;
        }

        if (!text.TryGetBytesFromBase64(out byte[]? bytes) || bytes.Length > largest)
        {
            found.Add($"{At(key)}.base64: {(bytes is null ? "is no base64" : $"is larger than {largest >> 20} MiB")}; make the file anew on the phone");
            return null;
        }

        return bytes;
    }

    /// <summary>Complains about keys that nobody asked for.</summary>
    public void Finish()
    {
        foreach (JsonProperty p in element.EnumerateObject().Where(p => !_known.Contains(p.Name)).Take(3))
        {
            found.Add($"{At(Short(p.Name))}: is not known; leave it out");
        }
    }

    public string At(string key) => path.Length == 0 ? key : $"{path}.{key}";

    public static string Described(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Null => "null",
        JsonValueKind.Number => "a number",
        _ => Short(value.GetRawText()),
    };

    public static string Short(string text) => text.Length <= 40 ? $"`{text}`" : $"`{text[..40]}…`";
}
