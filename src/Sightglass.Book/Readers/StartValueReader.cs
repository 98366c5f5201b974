using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads a value that is fixed, a range, or <c>one of a, b, c</c>.</summary>
internal static class StartValueReader
{
    private const string OneOf = "one of ";

    /// <summary>A number of a dimension, fixed or a range.</summary>
    public static StartValue? Number(YamlEntry entry, Dimension dimension, ReadContext context) =>
        Values.Scalar(entry.Value, $"`{entry.Name}`", context) is { } s && Values.Range(s, dimension, context) is { } r
            ? new(entry.Name, entry.Key.Span) { From = r.From, To = r.To, Unit = r.Unit }
            : null;

    /// <summary>Words: one, a list, or <c>one of</c> with commas.</summary>
    public static StartValue? Choice(YamlEntry entry, ReadContext context)
    {
        ImmutableArray<YamlScalar> words = Values.List(entry.Value, $"`{entry.Name}`", context);
        if (words.Length == 0)
        {
            return null;
        }

        IEnumerable<string> choices = words is [{ } only] && only.Value.StartsWith(OneOf, StringComparison.Ordinal)
            ? only.Value[OneOf.Length..].Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            : words.Select(w => w.Value);
        return new(entry.Name, entry.Key.Span) { OneOf = [.. choices] };
    }
}
