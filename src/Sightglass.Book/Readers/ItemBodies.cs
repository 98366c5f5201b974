using System.Collections.Immutable;
using Sightglass.Book.Assemblies;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>The items of a book as written; reads them for the class or, with its modifications, for a road number.</summary>
internal sealed class ItemBodies
{
    private readonly ImmutableDictionary<string, YamlEntry> _written;
    private readonly ImmutableDictionary<string, Assembly> _assemblies;
    private readonly Expansion _class;
    private readonly ImmutableDictionary<YamlEntry, Expansion> _uses;

    /// <summary>Items with their ends not yet split, so that a road number reads only what it changes.</summary>
    private readonly ImmutableDictionary<string, Item> _unsplit;

    /// <param name="entries">The items as written.</param>
    /// <param name="assemblies">What they may use.</param>
    /// <param name="used">Takes the names of assemblies that are used.</param>
    /// <param name="context">Takes findings and names.</param>
    public ItemBodies(IEnumerable<YamlEntry> entries, ImmutableDictionary<string, Assembly> assemblies, ISet<string> used, ReadContext context)
    {
        _written = entries.ToImmutableDictionary(e => e.Name, StringComparer.Ordinal);
        _assemblies = assemblies;
        Kinds = context.Kinds;
        AssemblyExpander expander = new(_assemblies, new(context.Found.Limits, 1), context);
        Dictionary<YamlEntry, Expansion> uses = new(ReferenceEqualityComparer.Instance);
        _class = expander.Expand(InOrder(_written.Values), [], uses);
        _uses = ImmutableDictionary.CreateRange<YamlEntry, Expansion>(ReferenceEqualityComparer.Instance, uses);
        _unsplit = _class.Items.Values.Select(e => Read(e, context)).OfType<Item>().ToImmutableDictionary(i => i.Name, StringComparer.Ordinal);
        used.UnionWith(expander.Used);
        Items = Split(_unsplit, _class, context);
    }

    public KindCatalog Kinds { get; }

    /// <summary>The items of the class.</summary>
    public ImmutableSortedDictionary<string, Item> Items { get; }

    /// <summary>Every name under which an item or a use is written.</summary>
    public IEnumerable<string> Names => _written.Keys.Concat(_class.Items.Keys);

    /// <summary>The facts, signs or hazards of uses.</summary>
    public IEnumerable<YamlEntry> OfUses(string section) => _class.Others.Where(o => o.Section == section).Select(o => o.Entry);

    /// <summary>
    /// The items of one road number: its modifications in the order of their dates, those without a date first. With the names of those that were
    /// read anew or are gone.
    /// </summary>
    public (ImmutableSortedDictionary<string, Item> Items, ImmutableHashSet<string> Changed) ReadFor(RoadNumber number, ReadContext context, ExpansionBudget budget)
    {
        Expansion own = Expanded(number, context, budget);
        Dictionary<string, Item> items = new(_unsplit, StringComparer.Ordinal);
        HashSet<string> changed = [.. _class.Items.Keys.Where(n => !own.Items.ContainsKey(n))];
        foreach (string gone in changed)
        {
            items.Remove(gone);
        }

        foreach (YamlEntry body in own.Items.Values.Where(b => !ReferenceEquals(b, _class.Items.GetValueOrDefault(b.Name))))
        {
            changed.Add(body.Name);
            items.Remove(body.Name);
            if (Read(body, context) is { } item)
            {
                items[item.Name] = item;
            }
        }

        return (Split(items, own, context), [.. changed]);
    }

    /// <summary>What is written of an item in the end, of the class or of a road number; null where it has no such item.</summary>
    public YamlMap? BodyOf(string item, RoadNumber? number)
    {
        Expansion expansion = number is null ? _class : Expanded(number, new ReadContext(new Findings([], YamlLimits.Default), Kinds), new(YamlLimits.Default, 1));
        return expansion.Items.TryGetValue(item, out YamlEntry? entry) ? entry.Value as YamlMap ?? new YamlMap(entry.Value.Span, []) : null;
    }

    private Expansion Expanded(RoadNumber number, ReadContext context, ExpansionBudget budget)
    {
        Dictionary<YamlEntry, Expansion> uses = new(_uses, ReferenceEqualityComparer.Instance);
        IEnumerable<YamlEntry> changes = number.Modifications.OrderBy(m => m.Since ?? DateOnly.MinValue).SelectMany(m => m.Changes);
        return new AssemblyExpander(_assemblies, budget, context).Expand(InOrder(_written.Values), changes, uses);
    }

    private static Dictionary<string, YamlEntry> InOrder(IEnumerable<YamlEntry> entries) =>
        entries.OrderBy(e => e.Key.Span).ToDictionary(e => e.Name, StringComparer.Ordinal);

    private static Item? Read(YamlEntry entry, ReadContext context)
    {
        context.Owner = entry.Name;
        Item? item = ItemReader.Read(entry, context);
        context.Owner = "";
        return item;
    }

    private static ImmutableSortedDictionary<string, Item> Split(IReadOnlyDictionary<string, Item> items, Expansion expansion, ReadContext context) =>
        new EndSplitter(items, expansion.Ports, context).SplitAll().ToImmutableSortedDictionary(i => i.Name, i => i, StringComparer.Ordinal);
}
