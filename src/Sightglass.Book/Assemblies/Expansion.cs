using System.Collections.Immutable;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Assemblies;

/// <summary>The entries of a book with the parts of every use in the place of the use.</summary>
internal sealed class Expansion
{
    public Dictionary<string, YamlEntry> Items { get; } = new(StringComparer.Ordinal);

    /// <summary>Facts, signs and hazards of uses, in order.</summary>
    public List<(string Section, YamlEntry Entry)> Others { get; } = [];

    /// <summary>What each use shows to the outside: use → port → part, or part and port.</summary>
    public Dictionary<string, ImmutableArray<YamlEntry>> Ports { get; } = new(StringComparer.Ordinal);
}
