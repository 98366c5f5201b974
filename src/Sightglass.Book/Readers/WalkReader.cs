using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads walks for a purpose.</summary>
internal static class WalkReader
{
    public static PlannedWalk? Read(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the walk `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        PlannedWalk walk = new(entry.Name, entry.Key.Span, map.Text("text"))
        {
            From = map.Name("from", NameUse.Place),
            To = map.Name("to", NameUse.Place),
            Systems = map.Names("systems", NameUse.System),
            Items = map.Names("items", NameUse.Item),
            Cards = map.Names("cards", NameUse.Card),
            InOrder = map.Names("in order", NameUse.Item),
            Closed = map.Names("closed", NameUse.Place),
            Kit = [.. map.List("kit").Select(k => k.Value.Trim())],
            Role = map.Name("role", NameUse.Role),
        };
        map.Finish();
        if (walk.Systems.IsEmpty && walk.Items.IsEmpty && walk.Cards.IsEmpty && walk.InOrder.IsEmpty)
        {
            map.Required("systems", "[SYSTEM]");
        }

        return walk;
    }
}
