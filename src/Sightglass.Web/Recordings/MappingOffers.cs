using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;

namespace Sightglass.Web.Recordings;

/// <summary>What a book offers for columns: what they may set and be compared with, by name.</summary>
/// <param name="Sets">In the order in which they are offered.</param>
/// <param name="Compares">In the order in which they are offered.</param>
public sealed record MappingOffers(ImmutableArray<MappingOffer> Sets, ImmutableArray<MappingOffer> Compares)
{
    private readonly Dictionary<string, MappingOffer> _sets = Sets.DistinctBy(o => o.Name).ToDictionary(o => o.Name, StringComparer.Ordinal);
    private readonly Dictionary<string, MappingOffer> _compares = Compares.DistinctBy(o => o.Name).ToDictionary(o => o.Name, StringComparer.Ordinal);

    /// <param name="names">The machine, or its train.</param>
    public static MappingOffers Of(ClassBook names) => new(MappingOffer.Sets(names), MappingOffer.Compares(names));

    /// <summary>What a column is of this book; null where it is nothing that is offered, such as a formula.</summary>
    public MappingOffer? For(ColumnMapping column)
    {
        ArgumentNullException.ThrowIfNull(column);
        return column.Sets.Select(s => _sets.GetValueOrDefault(s)).FirstOrDefault(o => o is not null) ?? _compares.GetValueOrDefault(column.Compares);
    }
}
