using System.Collections.Immutable;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>The items of a book as written; reads them for the class or, with its modifications, for a road number.</summary>
internal sealed class ItemBodies(IEnumerable<YamlEntry> entries, KindCatalog kinds)
{
    /// <summary>The word that takes an item away.</summary>
    public const string Removed = "removed";

    private readonly ImmutableArray<YamlEntry> _entries = [.. entries];

    public KindCatalog Kinds => kinds;

    /// <summary>The items of the class.</summary>
    public ImmutableSortedDictionary<string, Item> Read(ReadContext context) => Read(_entries.AsEnumerable(), context);

    /// <summary>The items of one road number.</summary>
    public ImmutableSortedDictionary<string, Item> ReadFor(RoadNumber number, ReadContext context)
    {
        Dictionary<string, YamlEntry> bodies = _entries.ToDictionary(e => e.Name, StringComparer.Ordinal);
        foreach (YamlEntry change in number.Modifications.OrderBy(m => m.Since ?? DateOnly.MinValue).SelectMany(m => m.Changes))
        {
            Apply(change, bodies, context);
        }

        return Read(bodies.Values, context);
    }

    private static void Apply(YamlEntry change, Dictionary<string, YamlEntry> bodies, ReadContext context)
    {
        bool isThere = bodies.TryGetValue(change.Name, out YamlEntry? body);
        if (change.Value is YamlScalar { Value: Removed } && isThere)
        {
            bodies.Remove(change.Name);
        }
        else if (isThere && MapReader.AsMap(change.Value, $"`{change.Name}`", context) is { } keys)
        {
            bodies[change.Name] = body! with { Value = body.Value is YamlMap old ? old.ReplacedBy(keys) : keys };
        }
        else if (!isThere && change.Value is YamlMap added && added.Find("kind") is not null)
        {
            bodies.Add(change.Name, change);
        }
        else if (!isThere)
        {
            context.AddMissing(BookMessages.NothingToChange(change.Key.Span, change.Name, bodies.Keys));
        }
    }

    private static ImmutableSortedDictionary<string, Item> Read(IEnumerable<YamlEntry> bodies, ReadContext context)
    {
        var items = ImmutableSortedDictionary.CreateBuilder<string, Item>(StringComparer.Ordinal);
        foreach (YamlEntry entry in bodies)
        {
            if (ItemReader.Read(entry, context) is { } item)
            {
                items[item.Name] = item;
            }
        }

        return new EndSplitter(items, context).SplitAll().ToImmutableSortedDictionary(i => i.Name, i => i, StringComparer.Ordinal);
    }
}
