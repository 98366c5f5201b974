using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Yaml;

/// <summary>Keys with values in the order of the file; no key stands twice.</summary>
public sealed record YamlMap(Span Span, ImmutableArray<YamlEntry> Entries) : YamlNode(Span)
{
    public override string Described => "a map of keys";

    public YamlEntry? Find(string key) => Entries.FirstOrDefault(e => e.Name == key);

    /// <summary>This map with the keys of another put in place of its own; keys that only the other has follow.</summary>
    public YamlMap ReplacedBy(YamlMap other)
    {
        ArgumentNullException.ThrowIfNull(other);
        IEnumerable<YamlEntry> kept = Entries.Select(e => other.Find(e.Name) ?? e);
        IEnumerable<YamlEntry> added = other.Entries.Where(e => Find(e.Name) is null);
        return this with { Entries = [.. kept, .. added] };
    }
}
