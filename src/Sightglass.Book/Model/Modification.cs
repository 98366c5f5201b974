using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Model;

/// <summary>A dated change to items, applied over the class.</summary>
public sealed record Modification(string Name, Span Span, DateOnly? Since, string Text, ImmutableArray<string> ChangedItems)
{
    /// <summary>The bodies as written: keys given replace, others stay; the word <c>removed</c> takes the item away.</summary>
    internal ImmutableArray<YamlEntry> Changes { get; init; } = [];
}
