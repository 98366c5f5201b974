using System.Collections.Immutable;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads what people bring with them from older machines.</summary>
internal static class HabitReader
{
    public static Habit? Read(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the habit `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("lines", "[ { item: …, was: …, here: … } ]");
        ImmutableArray<HabitLine> lines = map.Take("lines") switch
        {
            YamlList list => [.. list.Items.Select(n => Line(n, context)).OfType<HabitLine>()],
            null or YamlScalar { IsNull: true } => [],
            { } other => Wrong(other, context),
        };
        Habit habit = new(entry.Name, entry.Key.Span, map.Text("text"), lines);
        map.Finish();
        return whole ? habit : null;
    }

    private static ImmutableArray<HabitLine> Wrong(YamlNode node, ReadContext context)
    {
        context.Add(BookMessages.WrongShape(node.Span, "`lines`", "a list", node.Described));
        return [];
    }

    private static HabitLine? Line(YamlNode node, ReadContext context)
    {
        if (MapReader.Of(node, node.Span, "the line", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("item", "ITEM") & map.Required("was", "One handle for all.") & map.Required("here", "One handle for each.");
        string? item = map.Name("item", NameUse.Item);
        HabitLine line = new(item ?? "", map.Text("was"), map.Text("here"), map.Text("hurts"));
        map.Finish();
        return whole && item is not null ? line : null;
    }
}
