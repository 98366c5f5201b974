using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Assemblies;

/// <summary>Writes out the uses of assemblies: the parts stand as if the author had written them in the place of the use.</summary>
internal sealed class AssemblyExpander(ImmutableDictionary<string, Assembly> assemblies, ExpansionBudget budget, ReadContext context)
{
    private const int Deepest = 8;
    private readonly bool _wasDamaged = context.Found.AnyDamage;
    private readonly Stack<string> _within = new();

    /// <summary>Assemblies that some use names.</summary>
    public HashSet<string> Used { get; } = new(StringComparer.Ordinal);

    /// <summary>Writes out the items of a book.</summary>
    /// <param name="items">As written.</param>
    /// <param name="changes">What a road number changes, in order: of items, of uses or of their parts.</param>
    /// <param name="written">Uses already written out that may be taken as they are.</param>
    public Expansion Expand(IReadOnlyDictionary<string, YamlEntry> items, IEnumerable<YamlEntry> changes, IDictionary<YamlEntry, Expansion> written)
    {
        Expansion into = new();
        Expand(items, changes, written, into);
        return into;
    }

    /// <summary>Changes of what is written here come first; what is left concerns the parts of uses, or is new.</summary>
    private void Expand(IReadOnlyDictionary<string, YamlEntry> items, IEnumerable<YamlEntry> changes, IDictionary<YamlEntry, Expansion>? written, Expansion into)
    {
        Dictionary<string, YamlEntry> own = new(items, StringComparer.Ordinal);
        List<YamlEntry> left = [];
        foreach (YamlEntry change in changes)
        {
            if (items.ContainsKey(change.Name))
            {
                ItemChange.Apply(change, own, context);
            }
            else
            {
                left.Add(change);
            }
        }

        foreach (YamlEntry entry in own.Values)
        {
            if (!Assembly.IsUse(entry))
            {
                Add(entry, into);
            }
            else
            {
                Take(Write(entry, written), into);
            }
        }

        foreach (YamlEntry change in left)
        {
            ItemChange.Apply(change, into.Items, context);
        }
    }

    private void Add(YamlEntry entry, Expansion into)
    {
        if (!into.Items.TryAdd(entry.Name, entry))
        {
            context.Add(BookMessages.DeclaredTwice(entry.Key.Span, "item", entry.Name, into.Items[entry.Name].Key.Span));
        }
    }

    private void Take(Expansion part, Expansion into)
    {
        foreach (YamlEntry entry in part.Items.Values)
        {
            Add(entry, into);
        }

        into.Others.AddRange(part.Others);
        foreach ((string use, ImmutableArray<YamlEntry> ports) in part.Ports)
        {
            into.Ports[use] = ports;
        }
    }

    private Expansion Write(YamlEntry use, IDictionary<YamlEntry, Expansion>? written)
    {
        if (written is not null && written.TryGetValue(use, out Expansion? done))
        {
            return done;
        }

        Expansion into = new();
        Write(use, into);
        written?.Add(use, into);
        return into;
    }

    private void Write(YamlEntry use, Expansion into)
    {
        MapReader map = new((YamlMap)use.Value, use.Key.Span, $"`{use.Name}`", context);
        Assembly? assembly = Find(map);
        if (assembly is null || assembly.IsBroken || !MayEnter(assembly, use) || ValuesOf(map, assembly, use) is not { } values)
        {
            // Without its parts many names would seem to be missing.
            Incomplete(use.Key.Span);
            return;
        }

        into.Ports[use.Name] = [];
        HoleFiller filler = new(use, values, budget, context);
        Offset offset = Offset.Read(map.Take("at"), context);
        ImmutableArray<YamlEntry> changes = map.Take("changes") is { } c && MapReader.AsMap(c, "`changes`", context) is { } body ? body.Entries : [];
        map.Finish();
        _within.Push(assembly.Name);
        Expand(Parts(assembly, "items", filler, offset), changes, null, into);
        _within.Pop();
        into.Ports[use.Name] = [.. assembly.Ports.Select(filler.Fill)];
        foreach (string section in Assembly.Sections.Where(s => s != "items"))
        {
            into.Others.AddRange(Parts(assembly, section, filler, offset: null).Values.Select(e => (section, e)));
        }

        if (budget.IsSpent)
        {
            // The book is refused: what was written out so far need not be read as well.
            into.Items.Clear();
            into.Others.Clear();
            context.Add(BookMessages.TooManyNodes(use.Key.Span, budget.Limits.Nodes));
            Incomplete(use.Key.Span);
        }
    }

    private Assembly? Find(MapReader map)
    {
        if (map.Scalar(Assembly.Key) is not { } name)
        {
            return null;
        }

        Used.Add(name.Value);
        Assembly? found = assemblies.GetValueOrDefault(name.Value);
        if (found is null && !_wasDamaged)
        {
            context.Add(BookMessages.NotDeclared(NameUse.Assembly, name.Span, name.Value, context.Found.Similar(assemblies.Keys)));
        }

        return found;
    }

    private bool MayEnter(Assembly assembly, YamlEntry use)
    {
        if (_within.Contains(assembly.Name) || _within.Count >= Deepest)
        {
            context.Add(BookMessages.WithinItself(use.Key.Span, assembly.Name, _within.Contains(assembly.Name), Deepest));
            return false;
        }

        return !budget.IsSpent;
    }

    private void Incomplete(Span span)
    {
        if (span.Source is { } source)
        {
            context.Found.Damaged(source, span.Line);
        }
    }

    /// <summary>What goes into the holes, or null where the use lacks something.</summary>
    private static Dictionary<string, YamlNode>? ValuesOf(MapReader map, Assembly assembly, YamlEntry use)
    {
        Dictionary<string, YamlNode> values = new(StringComparer.Ordinal) { [Assembly.NameOfUse] = use.Key };
        bool lacks = false;
        foreach ((string name, YamlNode? usual) in assembly.Parameters.Where(p => p.Key != Assembly.NameOfUse).OrderBy(p => p.Key, StringComparer.Ordinal))
        {
            if ((usual is not null || map.Required(name, "VALUE")) && (map.Take(name) ?? usual) is { } value)
            {
                values[name] = value;
            }
            else
            {
                lacks = true;
            }
        }

        if (lacks)
        {
            map.Take("at");
            map.Take("changes");
            map.Finish();
        }

        return lacks ? null : values;
    }

    private Dictionary<string, YamlEntry> Parts(Assembly assembly, string section, HoleFiller filler, Offset? offset)
    {
        Dictionary<string, YamlEntry> parts = new(StringComparer.Ordinal);
        foreach (YamlEntry written in assembly.Parts[section])
        {
            YamlEntry part = filler.Fill(written);
            NameRules.Check(part.Key, context);
            if (!parts.TryAdd(part.Name, offset?.Move(part) ?? part))
            {
                context.Add(BookMessages.DeclaredTwice(part.Key.Span, Sections.NounOf(section), part.Name, parts[part.Name].Key.Span));
            }
        }

        return parts;
    }
}
