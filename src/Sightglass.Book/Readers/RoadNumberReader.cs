using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads road numbers with their modifications.</summary>
internal static class RoadNumberReader
{
    public static RoadNumber? Read(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the road number `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        ImmutableArray<Modification> modifications = map.Take("modifications") switch
        {
            YamlList list => [.. list.Items.Select(n => Modification(n, context)).OfType<Modification>()],
            null or YamlScalar { IsNull: true } => [],
            { } other => None(other, context),
        };
        map.Finish();
        return new(entry.Name, entry.Key.Span, modifications);
    }

    private static ImmutableArray<Modification> None(YamlNode other, ReadContext context)
    {
        context.Add(BookMessages.WrongShape(other.Span, "`modifications`", "a list", other.Described));
        return [];
    }

    private static Modification? Modification(YamlNode node, ReadContext context)
    {
        if (MapReader.Of(node, node.Span, "the modification", context) is not { } map)
        {
            return null;
        }

        map.Required("name", "M-12 guarded sight glasses");
        DateOnly? since = map.Scalar("since") is { } s ? Date(s, context) : null;
        ImmutableArray<YamlEntry> changes = map.Take("changes") is { } c && MapReader.AsMap(c, "`changes`", context) is { } body ? body.Entries : [];
        Modification modification = new(map.Text("name"), node.Span, since, map.Text("text"), [.. changes.Select(e => e.Name)]) { Changes = changes };
        map.Finish();
        return modification;
    }

    private static DateOnly? Date(YamlScalar s, ReadContext context)
    {
        if (DateOnly.TryParseExact(s.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date))
        {
            return date;
        }

        context.Add(BookMessages.NotADate(s.Span, s.Value));
        return null;
    }
}
