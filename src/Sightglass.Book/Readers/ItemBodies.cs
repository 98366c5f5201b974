using System.Collections.Immutable;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>The items of a book as written; reads them for the class or, with its modifications, for a road number.</summary>
internal sealed class ItemBodies
{
    /// <summary>The word that takes an item away.</summary>
    public const string Removed = "removed";

    private readonly ImmutableDictionary<string, YamlEntry> _entries;

    /// <summary>Items with their ends not yet split, so that a road number reads only what it changes.</summary>
    private readonly ImmutableDictionary<string, Item> _unsplit;

    public ItemBodies(IEnumerable<YamlEntry> entries, ReadContext context)
    {
        _entries = entries.ToImmutableDictionary(e => e.Name, StringComparer.Ordinal);
        Kinds = context.Kinds;
        _unsplit = _entries.Values.OrderBy(e => e.Key.Span.Path, StringComparer.Ordinal).ThenBy(e => e.Key.Span.Start)
            .Select(e => Read(e, context)).OfType<Item>().ToImmutableDictionary(i => i.Name, StringComparer.Ordinal);
        Items = Split(_unsplit, context);
    }

    public KindCatalog Kinds { get; }

    /// <summary>The items of the class.</summary>
    public ImmutableSortedDictionary<string, Item> Items { get; }

    /// <summary>The items of one road number: its modifications in the order of their dates, those without a date first.</summary>
    public ImmutableSortedDictionary<string, Item> ReadFor(RoadNumber number, ReadContext context)
    {
        Dictionary<string, YamlEntry> bodies = new(_entries, StringComparer.Ordinal);
        Dictionary<string, Item> items = new(_unsplit, StringComparer.Ordinal);
        foreach (YamlEntry change in number.Modifications.OrderBy(m => m.Since ?? DateOnly.MinValue).SelectMany(m => m.Changes))
        {
            if (Apply(change, bodies, context))
            {
                items.Remove(change.Name);
            }
        }

        foreach (YamlEntry body in bodies.Values.Where(b => !ReferenceEquals(b, _entries.GetValueOrDefault(b.Name))))
        {
            if (Read(body, context) is { } item)
            {
                items[item.Name] = item;
            }
        }

        return Split(items, context);
    }

    /// <returns>True when the item is another now, or gone.</returns>
    private static bool Apply(YamlEntry change, Dictionary<string, YamlEntry> bodies, ReadContext context)
    {
        if (bodies.TryGetValue(change.Name, out YamlEntry? body))
        {
            return Change(change, body, bodies, context);
        }

        if (change.Value is YamlMap added && added.Find("kind") is not null)
        {
            bodies.Add(change.Name, change);
            return NameRules.Check(change.Key, context);
        }

        context.AddMissing(BookMessages.NothingToChange(change.Key.Span, change.Name, context.Found.Similar(bodies.Keys)));
        return false;
    }

    private static bool Change(YamlEntry change, YamlEntry body, Dictionary<string, YamlEntry> bodies, ReadContext context)
    {
        if (change.Value is YamlScalar { Value: Removed })
        {
            return bodies.Remove(change.Name);
        }

        if (MapReader.AsMap(change.Value, $"`{change.Name}`", context) is not { } keys)
        {
            return false;
        }

        bodies[change.Name] = body with { Value = body.Value is YamlMap old ? old.ReplacedBy(keys) : keys };
        return true;
    }

    private static Item? Read(YamlEntry entry, ReadContext context)
    {
        context.Owner = entry.Name;
        Item? item = ItemReader.Read(entry, context);
        context.Owner = "";
        return item;
    }

    private static ImmutableSortedDictionary<string, Item> Split(IReadOnlyDictionary<string, Item> items, ReadContext context) =>
        new EndSplitter(items, context).SplitAll().ToImmutableSortedDictionary(i => i.Name, i => i, StringComparer.Ordinal);
}
