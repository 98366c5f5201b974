using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads searches. The fact is looked for where they are bound to a plant, because a train has names of its own.</summary>
internal static class SearchReader
{
    public static Search? Read(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the search `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("wanted", "FACT") & map.Required("situation", "SITUATION");
        YamlScalar? wanted = map.Scalar("wanted");
        Search search = new(entry.Name, entry.Key.Span)
        {
            Text = map.Text("text"),
            Wanted = wanted?.Value.Trim() ?? "",
            WantedSpan = wanted?.Span ?? default,
            Situation = map.Name("situation", NameUse.Situation) ?? "",
            Within = map.Positive("within", Dimension.Second, 60),
        };
        map.Finish();
        return whole && search.Wanted.Length > 0 && search.Situation.Length > 0 ? search : null;
    }
}
