using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads cautions: maps of one signal word with its text.</summary>
internal static class CautionReader
{
    private static readonly (string Key, SignalWord Word)[] s_words =
        [("danger", SignalWord.Danger), ("warning", SignalWord.Warning), ("caution", SignalWord.Caution), ("notice", SignalWord.Notice)];

    /// <summary>A list of cautions.</summary>
    public static ImmutableArray<Caution> Read(YamlNode? node, ReadContext context)
    {
        switch (node)
        {
            case null or YamlScalar { IsNull: true }:
                return [];
            case YamlList list:
                return [.. list.Items.Select(n => One(n, context)).OfType<Caution>()];
            default:
                context.Add(BookMessages.WrongShape(node.Span, "`cautions`", "a list", node.Described));
                return [];
        }
    }

    /// <summary>The one signal word among the keys of a map that may have others.</summary>
    public static Caution? Among(MapReader map, Span span, ReadContext context)
    {
        (string Key, SignalWord Word)[] given = [.. s_words.Where(w => map.Take(w.Key) is not null)];
        if (given.Length != 1)
        {
            context.Add(BookMessages.BadCaution(span));
        }

        return given.Length > 0 && map.Scalar(given[0].Key) is { } s ? new(given[0].Word, s.Value.Trim(), s.Span) : null;
    }

    private static Caution? One(YamlNode node, ReadContext context)
    {
        if (MapReader.Of(node, node.Span, "a caution", context) is not { } map)
        {
            return null;
        }

        Caution? caution = Among(map, node.Span, context);
        map.Finish();
        return caution;
    }
}
