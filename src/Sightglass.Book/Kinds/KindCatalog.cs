using System.Collections.Immutable;

namespace Sightglass.Book.Kinds;

/// <summary>The kinds a book may use. The plant supplies it; the reader only needs the sheets.</summary>
public sealed class KindCatalog(IEnumerable<KindSheet> sheets)
{
    private readonly ImmutableSortedDictionary<string, KindSheet> _byName =
        sheets.ToImmutableSortedDictionary(s => s.Name, s => s, StringComparer.Ordinal);

    public IEnumerable<KindSheet> Sheets => _byName.Values;

    public IEnumerable<string> Names => _byName.Keys;

    public KindSheet? Find(string name) => _byName.GetValueOrDefault(name);
}
