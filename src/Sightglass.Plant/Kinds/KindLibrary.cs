using System.Collections.Immutable;
using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds;

/// <summary>Every kind of equipment there is.</summary>
public static class KindLibrary
{
    private static readonly ImmutableSortedDictionary<string, KindBuilder> s_byName =
        AllKinds.Create().ToImmutableSortedDictionary(k => k.Sheet.Name, k => k, StringComparer.Ordinal);

    /// <summary>Their sheets, for the book's reader and schema.</summary>
    public static KindCatalog Catalog { get; } = new(s_byName.Values.Select(k => k.Sheet));

    public static KindBuilder? Find(string name) => s_byName.GetValueOrDefault(name);
}
