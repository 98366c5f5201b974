using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;

namespace Sightglass.Book.Recordings;

/// <summary>A name of the book that a column may be: what it is set to or compared with.</summary>
/// <param name="Name">As the book says it.</param>
/// <param name="Dimension">Of its numbers; null where it has words.</param>
/// <param name="Words">Its words; empty where it has numbers.</param>
public sealed record MappingOffer(string Name, Dimension? Dimension, ImmutableArray<string> Words)
{
    private static readonly ImmutableArray<string> s_yesNo = ["no", "yes"];

    /// <summary>Units in which it can be given.</summary>
    public IEnumerable<string> Units => Dimension is { } dimension ? UnitTable.SymbolsOf(dimension) : [];

    /// <summary>What a situation may set: the surroundings, controls, quantities of items.</summary>
    /// <param name="names">The machine, or its train.</param>
    public static ImmutableArray<MappingOffer> Sets(ClassBook names)
    {
        ArgumentNullException.ThrowIfNull(names);
        return
        [
            .. WorldInput.All.Select(i => new MappingOffer(i.Name, i.Dimension, [])),
            .. names.Items.Values.Where(i => i.Positions.Length > 0).OrderBy(i => i.Span).Select(i => new MappingOffer(i.Name, null, i.Positions)),
            .. Quantities(names),
        ];
    }

    /// <summary>What a machine can be compared by: what indications show, how controls stand, signs, facts and quantities; formulas of all of them beside.</summary>
    public static ImmutableArray<MappingOffer> Compares(ClassBook names)
    {
        ArgumentNullException.ThrowIfNull(names);
        Item[] items = [.. names.Items.Values.OrderBy(i => i.Span)];
        return
        [
            .. items.Where(i => i.Reading is not null).Select(i => new MappingOffer(i.Name, i.Reading!.Unit.Dimension, [])),
            .. items.Where(i => i is { Reading: null, Positions.IsEmpty: true, Kind.Role: KindRole.Indication }).Select(i => new MappingOffer(i.Name, null, s_yesNo)),
            .. items.Where(i => i.Reading is null && !i.Positions.IsEmpty).Select(i => new MappingOffer(i.Name, null, i.Positions)),
            .. names.Signs.Keys.Concat(names.Facts.Keys).Select(n => new MappingOffer(n, null, s_yesNo)),
            .. Quantities(names),
        ];
    }

    private static IEnumerable<MappingOffer> Quantities(ClassBook names) =>
        names.Items.Values.OrderBy(i => i.Span).SelectMany(i => i.Kind.Quantities.Select(q => new MappingOffer($"{q.Name} of {i.Name}", q.IsCondition ? null : q.Dimension, q.IsCondition ? s_yesNo : [])));
}
