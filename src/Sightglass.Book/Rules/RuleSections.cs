using Sightglass.Book.Messages;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Rules;

/// <summary>The files of a set of rules put together: what stands once, and the entries of each section in the order of the files.</summary>
internal sealed class RuleSections(ReadContext context)
{
    public static readonly IReadOnlyList<string> Once = ["rules", "edition", "text"];

    public static readonly IReadOnlyList<(string Section, string Noun)> Named = [("quantities", "quantity"), ("rows", "row")];

    private readonly Dictionary<string, YamlEntry> _once = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<YamlEntry>> _named = Named.ToDictionary(n => n.Section, _ => new List<YamlEntry>(), StringComparer.Ordinal);

    public IReadOnlyList<YamlEntry> this[string section] => _named[section];

    /// <summary>The keys that stand once, as one map.</summary>
    public YamlMap Head => new(_once.Values.FirstOrDefault()?.Key.Span ?? default, [.. _once.Values]);

    public void Add(YamlNode document)
    {
        foreach (YamlEntry e in MapReader.AsMap(document, "a file of rules", context)?.Entries ?? [])
        {
            if (Named.FirstOrDefault(n => n.Section == e.Name) is { Noun: { } noun })
            {
                AddNamed(e, noun);
            }
            else if (!Once.Contains(e.Name))
            {
                context.Add(BookMessages.UnknownKey(e.Key.Span, e.Name, "a file of rules", [.. Once, .. Named.Select(n => n.Section)]));
            }
            else if (!_once.TryAdd(e.Name, e))
            {
                context.Add(BookMessages.DeclaredTwice(e.Key.Span, "the key", e.Name, _once[e.Name].Key.Span));
            }
        }
    }

    private void AddNamed(YamlEntry section, string noun)
    {
        List<YamlEntry> entries = _named[section.Name];
        foreach (YamlEntry e in MapReader.AsMap(section.Value, $"`{section.Name}`", context)?.Entries ?? [])
        {
            if (entries.Find(other => other.Name == e.Name) is { } first)
            {
                context.Add(BookMessages.DeclaredTwice(e.Key.Span, noun, e.Name, first.Key.Span));
            }
            else
            {
                entries.Add(e);
            }
        }
    }
}
