using Sightglass.Book.Messages;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>The sections of all files put together: for each the entries in the order of the files.</summary>
/// <param name="contents">What may stand there.</param>
internal sealed class Sections(SectionList contents, ReadContext context)
{
    private static readonly Dictionary<string, string> s_nouns = new(StringComparer.Ordinal)
    {
        ["places"] = "place",
        ["roles"] = "role",
        ["systems"] = "system",
        ["assemblies"] = "assembly",
        ["items"] = "item",
        ["facts"] = "fact",
        ["signs"] = "sign",
        ["hazards"] = "hazard",
        ["protections"] = "protection",
        ["measures"] = "measure",
        ["walks"] = "walk",
        ["bets"] = "bet",
        ["drills"] = "drill",
        ["searches"] = "search",
        ["routes"] = "route",
        ["habits"] = "habit",
        ["pictures"] = "picture",
        ["ends"] = "end",
        ["road numbers"] = "road number",
        ["silhouettes"] = "silhouette",
        ["cars"] = "car",
        ["trains"] = "train",
        ["recordings"] = "recording",
        ["situations"] = "situation",
    };

    private readonly Dictionary<string, YamlEntry> _once = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<YamlEntry>> _named = contents.Named.ToDictionary(n => n, _ => new List<YamlEntry>(), StringComparer.Ordinal);
    private readonly Dictionary<(string Section, string Name), YamlEntry> _first = [];

    /// <summary>Elements of all <c>legs</c> lists.</summary>
    public List<YamlNode> Legs { get; } = [];

    /// <summary>The top-level keys that may stand once, as one map.</summary>
    public YamlMap Head { get; private set; } = new(default, []);

    public IReadOnlyList<YamlEntry> this[string section] => _named[section];

    public static string NounOf(string section) => s_nouns[section];

    /// <summary>Takes in one document.</summary>
    public void Add(YamlNode document)
    {
        if (MapReader.AsMap(document, contents.Owner, context) is not { } map)
        {
            return;
        }

        foreach (YamlEntry e in map.Entries)
        {
            if (_named.TryGetValue(e.Name, out List<YamlEntry>? section))
            {
                AddNamed(e, section);
            }
            else if (e.Name == "legs")
            {
                AddLegs(e.Value);
            }
            else if (contents.Once.Contains(e.Name))
            {
                AddOnce(e);
            }
            else if (!context.Found.IsDamagedAround(e.Key.Span))
            {
                context.Add(BookMessages.UnknownKey(e.Key.Span, e.Name, contents.Owner == SectionList.Book.Owner ? "the book" : contents.Owner, [.. contents.Once, .. contents.Named, "legs"]));
            }
        }
    }

    public void Close() => Head = new(_once.Values.FirstOrDefault()?.Key.Span ?? default, [.. _once.Values]);

    private void AddOnce(YamlEntry e)
    {
        if (_once.TryGetValue(e.Name, out YamlEntry? first))
        {
            context.Add(BookMessages.DeclaredTwice(e.Key.Span, "the key", e.Name, first.Key.Span));
            return;
        }

        _once.Add(e.Name, e);
    }

    private void AddLegs(YamlNode node)
    {
        if (node is YamlList list)
        {
            Legs.AddRange(list.Items);
        }
        else if (node is not YamlScalar { IsNull: true })
        {
            context.Add(BookMessages.WrongShape(node.Span, "`legs`", "a list", node.Described));
        }
    }

    private void AddNamed(YamlEntry section, List<YamlEntry> entries)
    {
        if (MapReader.AsMap(section.Value, $"`{section.Name}`", context) is not { } map)
        {
            return;
        }

        foreach (YamlEntry e in map.Entries)
        {
            NameRules.Check(e.Key, context);
            if (_first.TryAdd((section.Name, e.Name), e))
            {
                entries.Add(e);
            }
            else
            {
                context.Add(BookMessages.DeclaredTwice(e.Key.Span, s_nouns[section.Name], e.Name, _first[(section.Name, e.Name)].Key.Span));
            }
        }
    }
}
